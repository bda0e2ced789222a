// What the course asks of the solver: boiling at the page's pressure, and the spout after the first measure
// for several plates or several reflux ratios.

import { DEFAULT_ACTIVITY } from '#lib/index.js';
import type { EquilibriumQuestion } from '../../worker/kinds/equilibrium.js';
import type { RunQuestion } from '../../worker/kinds/run.js';
import type { AnswerTo } from '../../worker/questions.js';
import { quickRun } from '../../state/derive.js';
import { ratioOf, untilCollected, withRatio } from '../../state/problems.js';
import { drawnParts, type DrawnPart } from '../../state/run-results.js';
import type { Scenario } from '../../state/scenario.js';

/** A run until the measure is full. */
export type MeasureQuestion = RunQuestion<'time_s' | 'spoutStrength'>;

/** Collected when the spout is read, as a share of the charge's volume. */
const readAfterShare = 1 / 60;

/** The measure of spirit whose strength and time are looked at, m³. */
export function measureOf({ charge }: Pick<Scenario, 'charge'>): number {
  return readAfterShare * charge.volume_m3;
}

export function boilingAt(pressure_Pa: number): EquilibriumQuestion {
  return { kind: 'equilibrium', activity: DEFAULT_ACTIVITY, pressure_Pa };
}

/** The page's run at its ratio; a sheet that draws otherwise is run at none. */
export function wholeRun(scenario: Scenario): RunQuestion<DrawnPart> {
  return quickRun(withRatio(scenario, ratioOf(scenario)), drawnParts);
}

/** A column from the first vapour, through its spell at total reflux, until the measure is full. */
export function untilMeasure(scenario: Scenario): MeasureQuestion {
  const until = untilCollected(withRatio(scenario, ratioOf(scenario)), measureOf(scenario));
  const { kind, problem, keep } = quickRun(until, ['time_s', 'spoutStrength'] as const);
  const outputs = { kind: 'every', interval_s: 1e9 } as const; // begin and end of each step is all that is read
  return { kind, problem: { ...problem, outputs }, keep };
}

/** What the spout reads when the measure is full, % vol / 100, and how long filling it took, s. */
export function whenFull({ solution }: AnswerTo<MeasureQuestion>): {
  readonly strength: number;
  readonly time_s: number;
} {
  const begun = solution.stepStarts.at(-1) ?? 0;
  return {
    strength: solution.spoutStrength.at(-1)!,
    time_s: solution.time_s.at(-1)! - solution.time_s[begun]!,
  };
}
