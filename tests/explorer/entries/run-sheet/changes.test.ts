// What can be done to a run sheet, and that whatever is done it stays one that the library takes.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createEthanolWater, problemFaults } from '#lib/index.js';
import * as change from '../../../../explorer/entries/run-sheet/changes.js';
import { ruleKinds, rules } from '../../../../explorer/entries/run-sheet/rules.js';
import { endSaid, stepSaid } from '../../../../explorer/entries/run-sheet/said.js';
import { startingScenario } from '../../../../explorer/state/parameters.js';
import { faultInRunSheet, mostRules, mostSteps } from '../../../../explorer/state/run-sheet-check.js';
import { runSheetIn, sheetQuestion, startingSheet, type RunSheet } from '../../../../explorer/state/run-sheet.js';
import { unitSystems } from '../../../../explorer/text/unit-systems.js';

const system = createEthanolWater();

type Act = (sheet: RunSheet, index: number, rule: number) => RunSheet;
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
          const index = at % now.steps.length;
          return acts[act]!(now, index, which % now.steps[index]!.until.length);
        }, startingSheet);
        expect(faultInRunSheet(JSON.parse(JSON.stringify(sheet)))).toBeUndefined();
        expect(sheet.steps.length).toBeLessThanOrEqual(mostSteps);
        expect(Math.max(...sheet.steps.map(({ until }) => until.length))).toBeLessThanOrEqual(mostRules);
        expect(problemFaults(sheetQuestion(startingScenario, sheet).problem, system)).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });

  it('is read back from what a page keeps, and anything else is the starting one', () => {
    const kept = JSON.parse(JSON.stringify({ runSheet: change.withoutStep(startingSheet, 0) })) as {
      runSheet: RunSheet;
    };
    expect(runSheetIn(kept)).toBe(kept.runSheet);
    for (const wrong of [undefined, 3, 'sheet', {}, { steps: [], jar_m3: null }, { steps: [{}], jar_m3: 1 }]) {
      expect(runSheetIn({ runSheet: wrong })).toBe(startingSheet);
    }
  });

  it.each<[string, unknown, string]>([
    ['an unknown rule', { kind: 'whenItRains' }, 'step 1: a rule is of the kind'],
    ['a rule called as what all objects have', { kind: 'toString' }, 'step 1: a rule is of the kind'],
    ['a rule without its number', { kind: 'duration' }, 'a rule ‘duration’ needs `seconds`, a number'],
    ['a rule whose number is none', { kind: 'refluxAbove', ratio: '3' }, 'needs `ratio`, a number'],
    ['no rule', null, 'step 1: a rule is of the kind'],
  ])('with %s is told by its step and what would be right', (_, rule, says) => {
    expect(faultInRunSheet({ steps: [{ reflux: 3, until: [rule] }], jar_m3: null })).toContain(says);
  });

  it.each<[string, object, string]>([
    ['an infinite jar', { jar_m3: Infinity }, '`jar_m3`'],
    ['steps that are no list', { steps: { length: 1 } }, 'a list of 1 to 12'],
    ['thirteen steps', { steps: Array.from({ length: 13 }, () => startingSheet.steps[0]) }, 'a list of 1 to 12'],
    ['an unknown reflux', { steps: [{ ...startingSheet.steps[0], reflux: { kind: 'some' } }] }, '`reflux`'],
    ['a hold without its strength', { steps: [{ ...startingSheet.steps[0], reflux: { kind: 'hold' } }] }, '`strength`'],
    [
      'heat that is no number',
      { steps: [{ ...startingSheet.steps[0], heat: { kind: 'power', power_W: '3' } }] },
      '`power_W`',
    ],
  ])('with %s is told, too', (_, change, says) => {
    expect(faultInRunSheet({ ...startingSheet, ...change })).toContain(says);
  });

  it('asks the same question until a number or the sheet changes', () => {
    const first = sheetQuestion(startingScenario, startingSheet);
    expect(sheetQuestion(startingScenario, startingSheet)).toEqual(first);
    expect(sheetQuestion(startingScenario, change.withPower(startingSheet, 2, 3000))).not.toEqual(first);
  });

  it('sends nothing back where there are no plates', () => {
    const { problem } = sheetQuestion({ ...startingScenario, plates: 0 }, startingSheet);
    expect(problemFaults(problem, system)).toEqual([]);
  });
});

describe('a step in words', () => {
  it('is called by what runs back, and heating up by its name', () => {
    const said = startingSheet.steps.map((step) => stepSaid(step, unitSystems.metric));
    expect(said).toEqual(['heating up', 'all back', '3\u00a0:\u00a01', '1\u00a0:\u00a01']);
  });

  it.each(ruleKinds)('%s is said in every system of units', (kind) => {
    for (const units of Object.values(unitSystems)) {
      expect(endSaid(rules[kind].start, units)).toMatch(/\w/u);
      expect(endSaid(rules[kind].start, units)).not.toMatch(/NaN|undefined/u);
    }
  });
});
