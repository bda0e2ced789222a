// A run step by step of its sheet: when each began and ended, what it brought, and what it took.

import { checkRun } from '../check-run.js';
import type { Second, VolumeFraction20C } from '../../units/quantities.js';
import type { PlainSolution } from '../solution.js';

/** One step of the run sheet as it was run. */
export interface StepSummary {
  /** Counted from 1, as in messages. */
  readonly step: number;
  readonly from_s: Second;
  readonly to_s: Second;
  /** What came over in it, at 20 °C, m³, its pure alcohol, and its strength as one mixture; null where nothing came. */
  readonly volume_m3: number;
  readonly pureAlcohol_m3: number;
  readonly strength: VolumeFraction20C | null;
  /** Strengths at the spout where it began and ended. */
  readonly spoutFrom: VolumeFraction20C;
  readonly spoutTo: VolumeFraction20C;
  readonly kettleFrom: VolumeFraction20C;
  readonly kettleTo: VolumeFraction20C;
  /** Heat put in during it, J. */
  readonly heat_J: number;
}

/**
 * What each step of the run sheet brought and took.
 *
 * Equation: differences of the run's columns between the rows where steps begin; heat = power × time, constant within a step.
 * @param run A solution, or its plain copy.
 * @returns One summary a step that was begun, in order; a step whose rule was met at once has no length.
 * @throws InputError when it is no run.
 * @example stepSummaries(solve({ model: 'rayleigh', still: { kettle: { volume_m3: 0.1 } }, charge: { kind: 'amount', amount_mol: 100, moleFraction: 0.18 }, heat: { kind: 'power', power_W: 1000 }, sheet: [{ reflux: 'none', until: [{ kind: 'duration', seconds: 600 }] }] }))[0].heat_J // → 600000
 * Source: definition.
 */
export function stepSummaries(run: PlainSolution): readonly StepSummary[] {
  checkRun(run);
  return run.stepStarts.map((first, step) => {
    const last = run.stepStarts[step + 1] ?? run.rows - 1;
    const gained = (column: Float64Array): number => column[last]! - column[first]!;
    const volume_m3 = gained(run.collectedVolume_m3);
    const pureAlcohol_m3 = gained(run.pureAlcoholCollected_m3);
    const [from_s, to_s] = [run.time_s[first]!, run.time_s[last]!];
    return {
      step: step + 1,
      from_s,
      to_s,
      volume_m3,
      pureAlcohol_m3,
      strength: volume_m3 > 0 ? Math.min(1, pureAlcohol_m3 / volume_m3) : null,
      spoutFrom: run.spoutStrength[first]!,
      spoutTo: run.spoutStrength[last]!,
      kettleFrom: run.kettleStrength[first]!,
      kettleTo: run.kettleStrength[last]!,
      heat_J: run.power_W[first]! * (to_s - from_s),
    };
  });
}
