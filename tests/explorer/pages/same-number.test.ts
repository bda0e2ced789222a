// The same question has the same number on every page: results that pages offer by name, for the same still, charge and
// sheet, are equal, or say by their label how they were simplified.

import { describe, expect, it, onTestFinished, vi } from 'vitest';
import { theCeiling } from '../../../explorer/pages/the-ceiling/record.js';
import { theStillsLimits } from '../../../explorer/pages/the-stills-limits/record.js';
import { ceilingQuestions } from '../../../explorer/state/derive.js';
import { doublerQuestions } from '../../../explorer/pages/the-doubler/questions.js';
import { energyProblem } from '../../../explorer/state/problems.js';
import { sheetQuestion } from '../../../explorer/state/run-sheet.js';
import { simplification } from '../../../explorer/state/simplification.js';
import { startingScenario, type Scenario } from '../../../explorer/state/scenario.js';
import { stillsQuestions } from '../../../explorer/pages/one-charge-three-stills/questions.js';
import { unitSystems } from '../../../explorer/text/unit-systems.js';
import { answersAt, printedBy, readable } from '../../support/printed.js';
import { settings } from '../../support/settings.js';

const { metric } = unitSystems;

/** A still that only a full run can be made of, so that no page simplifies it. */
const partial: Scenario = {
  ...startingScenario,
  still: { ...startingScenario.still, refluxCondenser: { kind: 'partial' } },
};

/** Results by name that two entries call by the same thing. */
const pairs = [
  ['run_collected', 'collected'],
  ['run_pure', 'pureCollected'],
] as const;

async function results(record: typeof theCeiling, scenario: Scenario): Promise<ReadonlyMap<string, [string, number]>> {
  vi.stubGlobal('document', { documentElement: { dataset: {} } });
  onTestFinished(() => void vi.unstubAllGlobals());
  const offered = new Map<string, [string, number]>();
  const entries = await readable(record);
  const watched = entries.map((entry) => ({
    ...entry,
    kind: {
      ...entry.kind,
      provides: (here: Parameters<NonNullable<typeof entry.kind.provides>>[0]) => {
        const found = entry.kind.provides?.(here) ?? [];
        for (const { name, label, value } of found) offered.set(name, [label, value ?? Number.NaN]);
        return found;
      },
    },
  }));
  expect(await printedBy(watched, scenario, metric, answersAt())).not.toBeNull();
  return offered;
}

describe('what a run comes to', () => {
  it('is the same on The ceiling and on The still’s limits where neither simplifies', async () => {
    const [ceiling, limits] = [await results(theCeiling, partial), await results(theStillsLimits, partial)];
    for (const [one, other] of pairs) {
      const [label, value] = ceiling.get(one)!;
      expect(label).not.toContain('without');
      expect(value).toBe(limits.get(other)![1]);
    }
  });

  it('says that it is without heat-up and losses where The ceiling follows the hand', async () => {
    const ceiling = await results(theCeiling, startingScenario);
    for (const [label] of ceiling.values()) expect(label).toMatch(/, without heat-up and losses$/u);
    const limits = await results(theStillsLimits, startingScenario);
    for (const [label] of limits.values()) expect(label).not.toContain('without');
    // Left out is what is said: the litres differ by no more than losses make of them, the hours by heating up and losses.
    const [, quick] = ceiling.get('run_collected')!;
    const [, full] = limits.get('collected')!;
    expect(Math.abs(quick / full - 1)).toBeLessThan(0.05);
    expect(limits.get('runTime')![1]).toBeGreaterThan(ceiling.get('run_time')![1]);
  });
});

describe.each([
  ['as they start', startingScenario],
  ['with other numbers', settings({ plates: 7, reflux: 2, chargeStrength: 0.2, heat: 4000, pressure: 95_000 })],
] as const)('runs of every page, %s', (_, scenario) => {
  it('are one problem for one still, charge and sheet, whoever asks', () => {
    const full = energyProblem({ ...scenario, jars: { kind: 'perStep' } });
    const stills = stillsQuestions(scenario);
    const doubler = doublerQuestions(scenario);
    expect(stills.column.problem).toEqual(full);
    expect(sheetQuestion({ ...scenario, jars: { kind: 'perStep' } }).problem).toEqual(full);
    expect(doubler.pot.problem).toEqual(stills.pot.problem);
    expect(doubler.doubler.problem).toEqual(stills.doubler.problem);
  });

  it('differ from a simplified one in nothing but the model and its jars', () => {
    const { run } = ceilingQuestions(scenario);
    const { model, ...rest } = run.problem;
    expect(model).toBe('equalFlows');
    expect(rest).toEqual(energyProblem({ ...scenario, jars: { kind: 'perStep' } }));
    expect(simplification({ problem: { model: 'equalFlows' } as never })).toBe('without heat-up and losses');
  });
});
