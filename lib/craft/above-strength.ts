// What of a run stands above a strength: the part a distiller would keep if strength alone decided.

import { refuse, shapeFault } from '../arguments.js';
import { checkRange } from '../errors.js';
import type { RunColumns, RunFacts } from '../run/solution.js';
import type { CubicMetre, Second, VolumeFraction20C } from '../units/quantities.js';

/** The columns it is read from. */
type AboveColumns = Pick<
  RunColumns,
  'time_s' | 'spoutStrength' | 'collectedVolume_m3' | 'pureAlcoholCollected_m3' | 'pureAlcoholLeft_m3'
>;

/** What came over while the spout stood at or above a strength. */
export interface AboveStrength {
  /** Distillate at 20 °C as one mixture; 0 when the spout never stood so high. */
  readonly volume_m3: CubicMetre;
  readonly pureAlcohol_m3: CubicMetre;
  /** Pure alcohol as a share of the charge's. */
  readonly shareOfCharge: number;
  /** Time during which it was drawn. */
  readonly duration_s: Second;
}

/**
 * What a run brings over while the spout stands at or above a strength.
 *
 * Equation: sums over rows of what is collected between them; a row pair that crosses the strength counts by linear interpolation.
 * @param run A solution of any still.
 * @param strength Strength at the spout, % vol / 100; 0..1; outside, an InputError.
 * @returns Volume and pure alcohol [m³ at 20 °C], share of the charge's pure alcohol, time [s].
 * @throws InputError when the strength is outside 0..1.
 * @example aboveStrength(solve({ model: 'rayleigh', still: { kettle: { volume_m3: 0.1 } }, charge: { kind: 'amount', amount_mol: 100, moleFraction: 0.18 }, activity: 'raoult', sheet: [{ reflux: 'none', until: [{ kind: 'alcoholLeftBelow', share: 0.5 }] }] }), 0).shareOfCharge // → 0.5
 * Source: definition.
 */
export function aboveStrength(run: AboveColumns & Pick<RunFacts, 'rows'>, strength: VolumeFraction20C): AboveStrength {
  const columns = { rows: 'number', spoutStrength: 'numbers', collectedVolume_m3: 'numbers' };
  refuse(shapeFault('run', run, columns, 'a solution as solve gives it, or its plain copy'));
  checkRange('strength', strength, 0, 1, 'a strength from 0 to 1 (0.80 is 80 % vol)');
  let volume_m3 = 0;
  let pureAlcohol_m3 = 0;
  let duration_s = 0;
  for (let row = 1; row < run.rows; row++) {
    const part = partAbove(run.spoutStrength[row - 1]!, run.spoutStrength[row]!, strength);
    const between = (column: Float64Array): number => column[row]! - column[row - 1]!;
    const drawn_m3 = between(run.collectedVolume_m3);
    if (part === 0 || drawn_m3 <= 0) continue;
    volume_m3 += part * drawn_m3;
    pureAlcohol_m3 += part * between(run.pureAlcoholCollected_m3);
    duration_s += part * between(run.time_s);
  }
  const charged_m3 = run.pureAlcoholCollected_m3[0]! + run.pureAlcoholLeft_m3[0]!;
  return { volume_m3, pureAlcohol_m3, shareOfCharge: pureAlcohol_m3 / charged_m3, duration_s };
}

/** Share of a stretch between two strengths that lies at or above a level. */
function partAbove(from: number, to: number, level: number): number {
  if (from >= level && to >= level) return 1;
  if (from < level && to < level) return 0;
  return from >= level ? (from - level) / (from - to) : (to - level) / (to - from);
}
