// The table 'Plates or reflux?': the spout at one moment for several plates and reflux ratios. Asked cell
// by cell after the figures stand, so that no request of the page waits behind it.

import type { RunQuestion } from '../worker/kinds/run.js';
import { columnProblem, comparedPlates, comparedRefluxes } from './derive.js';
import type { Scenario } from './scenario.js';

/** Collected when the spout is read, as a share of the charge's volume. */
export const readAfterShare = 1 / 60;

/** Rows, columns and questions of the table; the reader's own plates and reflux are always among them. */
export interface Comparison {
  readonly plates: readonly number[];
  readonly refluxes: readonly number[];
  /** Row by row. */
  readonly questions: readonly RunQuestion<'spoutStrength'>[];
}

/** The comparison of a scenario. */
export function comparison(scenario: Scenario): Comparison {
  const plates = withOwn(comparedPlates, scenario.plates);
  const refluxes = withOwn(comparedRefluxes, scenario.reflux);
  const questions = plates.flatMap((rows) => refluxes.map((reflux) => cell({ ...scenario, plates: rows, reflux })));
  return { plates, refluxes, questions };
}

function cell(scenario: Scenario): RunQuestion<'spoutStrength'> {
  const problem = columnProblem(scenario);
  const [first, last] = problem.sheet;
  const until = [{ kind: 'collectedVolume', volume_m3: readAfterShare * scenario.chargeVolume }] as const;
  return {
    kind: 'run',
    problem: { ...problem, sheet: [first!, { ...last!, until }], outputs: { kind: 'every', interval_s: 1e9 } },
    keep: ['spoutStrength'],
  };
}

function withOwn(listed: readonly number[], own: number): readonly number[] {
  return listed.includes(own) ? listed : [...listed, own].sort((a, b) => a - b);
}
