// The table 'Plates or reflux?': the spout at one moment for several plates and reflux ratios. Asked cell
// by cell after the figures stand, so that no request of the page waits behind it.

import { comparedPlates, comparedRefluxes } from '../../state/derive.js';
import { untilMeasure, type MeasureQuestion } from '../course/questions.js';
import { numberAt, withValue } from '../../state/paths.js';
import { ratioOf, withRatio } from '../../state/problems.js';
import type { Scenario } from '../../state/scenario.js';

/** Rows, columns and questions of the table; the reader's own plates and reflux are always among them. */
export interface Comparison {
  readonly plates: readonly number[];
  readonly refluxes: readonly number[];
  /** Row by row. */
  readonly questions: readonly MeasureQuestion[];
}

/** The comparison of a scenario. */
export function comparison(scenario: Scenario): Comparison {
  const plates = withOwn(comparedPlates, numberAt(scenario, 'still.column.count') ?? 0);
  const refluxes = withOwn(comparedRefluxes, ratioOf(scenario));
  const questions = plates.flatMap((rows) =>
    refluxes.map((reflux) => untilMeasure(withRatio(withValue(scenario, 'still.column.count', rows), reflux))),
  );
  return { plates, refluxes, questions };
}

function withOwn(listed: readonly number[], own: number): readonly number[] {
  return listed.includes(own) ? listed : [...listed, own].sort((a, b) => a - b);
}
