// What can be done to a run sheet, and that whatever is done it stays one that the library takes.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createEthanolWater, problemFaults } from '#lib/index.js';
import * as change from '../../../../explorer/entries/run-sheet/changes.js';
import { ruleKinds, rules } from '../../../../explorer/entries/run-sheet/rules.js';
import { endSaid, stepSaid } from '../../../../explorer/entries/run-sheet/said.js';
import { startingScenario, type SheetSet } from '../../../../explorer/state/scenario.js';
import { mostSteps } from '../../../../explorer/state/inputs-of-run.js';
import { sheetSetOf } from '../../../../explorer/state/notebook-record.js';
import { faultInRunSheet, mostRules } from '../../../../explorer/state/run-sheet-check.js';
import { sheetQuestion } from '../../../../explorer/state/run-sheet.js';
import { unitSystems } from '../../../../explorer/text/unit-systems.js';
import { settings } from '../../../support/settings.js';

const system = createEthanolWater();
const startingSheet = sheetSetOf(startingScenario);
const questionOf = (sheet: SheetSet): ReturnType<typeof sheetQuestion> =>
  sheetQuestion({ ...startingScenario, ...sheet });

type Act = (sheet: SheetSet, index: number, rule: number) => SheetSet;
const acts: readonly Act[] = [
  (sheet, index) => change.withStepAfter(sheet, index),
  (sheet, index) => change.withoutStep(sheet, index),
  (sheet, index) => change.withStepMoved(sheet, index, -1),
  (sheet, index) => change.withStepMoved(sheet, index, 1),
  (sheet, index) => change.withOneMoreRule(sheet, index),
  (sheet, index, rule) => change.withoutRule(sheet, index, rule),
  (sheet, index) => change.withPower(sheet, index, 3000),
  (sheet, index) => change.withPower(sheet, index, undefined),
  ...change.sendsBackKinds.map(
    (kind): Act =>
      (sheet, index) =>
        change.withReflux(sheet, index, kind),
  ),
  ...ruleKinds.map(
    (kind): Act =>
      (sheet, index, rule) =>
        change.withRuleKind(sheet, index, rule, kind),
  ),
];

describe('a run sheet', () => {
  it('stays one that can be run, whatever is done to it', () => {
    const step = fc.tuple(fc.nat(acts.length - 1), fc.nat(), fc.nat());
    fc.assert(
      fc.property(fc.array(step, { maxLength: 25 }), (steps) => {
        const sheet = steps.reduce((now, [act, at, which]) => {
          const index = at % now.sheet.length;
          return acts[act]!(now, index, which % now.sheet[index]!.until.length);
        }, startingSheet);
        expect(faultInRunSheet(JSON.parse(JSON.stringify(sheet)))).toBeUndefined();
        expect(sheet.sheet.length).toBeLessThanOrEqual(mostSteps);
        expect(Math.max(...sheet.sheet.map(({ until }) => until.length))).toBeLessThanOrEqual(mostRules);
        expect(problemFaults(questionOf(sheet).problem, system)).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });

  it.each<[string, unknown, string]>([
    ['an unknown rule', { kind: 'whenItRains' }, 'step 1: a rule is of the kind'],
    ['a rule called as what all objects have', { kind: 'toString' }, 'step 1: a rule is of the kind'],
    ['a rule without its number', { kind: 'duration' }, 'a rule ‘duration’ needs `seconds`, a number'],
    ['a rule whose number is none', { kind: 'refluxAbove', ratio: '3' }, 'needs `ratio`, a number'],
    ['no rule', null, 'step 1: a rule is of the kind'],
  ])('with %s is told by its step and what would be right', (_, rule, says) => {
    expect(faultInRunSheet({ sheet: [{ reflux: 3, until: [rule] }], jars: { kind: 'perStep' } })).toContain(says);
  });

  it.each<[string, object, string]>([
    ['an infinite jar', { jars: { kind: 'size', volume_m3: Infinity } }, '`jars`'],
    ['a field nobody knows in a step', { sheet: [{ ...startingSheet.sheet[0], power_W: 3 }] }, '`power_W`'],
    ['steps that are no list', { sheet: { length: 1 } }, 'a list of 1 to 12'],
    ['thirteen steps', { sheet: Array.from({ length: 13 }, () => startingSheet.sheet[0]) }, 'a list of 1 to 12'],
    ['an unknown reflux', { sheet: [{ ...startingSheet.sheet[0], reflux: { kind: 'some' } }] }, '`reflux`'],
    ['a hold without its strength', { sheet: [{ ...startingSheet.sheet[0], reflux: { kind: 'hold' } }] }, '`strength`'],
    [
      'heat that is no number',
      { sheet: [{ ...startingSheet.sheet[0], heat: { kind: 'power', power_W: '3' } }] },
      '`power_W`',
    ],
  ])('with %s is told, too', (_, change, says) => {
    expect(faultInRunSheet({ ...startingSheet, ...change })).toContain(says);
  });

  it('asks the same question until a number or the sheet changes', () => {
    const first = questionOf(startingSheet);
    expect(questionOf(startingSheet)).toEqual(first);
    expect(questionOf(change.withPower(startingSheet, 2, 3000))).not.toEqual(first);
  });

  it('sends nothing back where there are no plates', () => {
    const { problem } = sheetQuestion(settings({ plates: 0 }));
    expect(problemFaults(problem, system)).toEqual([]);
  });
});

describe('a step in words', () => {
  it('is called by what runs back, and heating up by its name', () => {
    const said = startingSheet.sheet.map((step) => stepSaid(step, unitSystems.metric));
    expect(said).toEqual(['heating up', 'all back', '3\u00a0:\u00a01']);
  });

  it.each(ruleKinds)('%s is said in every system of units', (kind) => {
    for (const units of Object.values(unitSystems)) {
      expect(endSaid(rules[kind].start, units)).toMatch(/\w/u);
      expect(endSaid(rules[kind].start, units)).not.toMatch(/NaN|undefined/u);
    }
  });
});
