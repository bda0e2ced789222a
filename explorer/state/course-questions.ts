// What the course asks of the solver: boiling at the page's pressure, and the spout after the first measure
// for several plates or several reflux ratios.

import { DEFAULT_ACTIVITY } from '#lib/index.js';
import type { EquilibriumQuestion } from '../worker/kinds/equilibrium.js';
import type { RunQuestion } from '../worker/kinds/run.js';
import type { AnswerTo } from '../worker/questions.js';
import { columnProblem } from './derive.js';
import { readAfterShare } from './compare.js';
import type { Scenario } from './scenario.js';

/** A run until the measure is full. */
export type MeasureQuestion = RunQuestion<'time_s' | 'spoutStrength'>;

/** The measure of spirit whose strength and time are looked at, m³. */
export function measureOf(scenario: Scenario): number {
  return readAfterShare * scenario.chargeVolume;
}

export function boilingAt(pressure_Pa: number): EquilibriumQuestion {
  return { kind: 'equilibrium', activity: DEFAULT_ACTIVITY, pressure_Pa };
}

/** A column from the first vapour, through its spell at total reflux, until the measure is full. */
export function untilMeasure(scenario: Scenario): MeasureQuestion {
  const problem = columnProblem(scenario);
  const [hold, draw] = problem.sheet;
  const until = [{ kind: 'collectedVolume', volume_m3: measureOf(scenario) }] as const;
  const outputs = { kind: 'every', interval_s: 1e9 } as const; // begin and end of each step is all that is read
  return {
    kind: 'run',
    problem: { ...problem, sheet: [hold!, { ...draw!, until }], outputs },
    keep: ['time_s', 'spoutStrength'],
  };
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
