// Which thermometer tells first: how early each plate's thermometer moves before the spout has lost strength.

import { checkRun } from '../check-run.js';
import { checkRange, type Outcome } from '../../errors.js';
import type { CubicMetre, Kelvin, KelvinDifference, Second, VolumeFraction20C } from '../../units/quantities.js';
import type { PlainSolution } from '../solution.js';

/** What is read of a run for it. */
export type ToldBy = Pick<
  PlainSolution,
  'rows' | 'holders' | 'time_s' | 'spoutStrength' | 'distillateRate_m3_s' | 'collectedVolume_m3' | 'holderTemperature_K'
>;

/** A plate's thermometer. */
export interface PlateTells {
  /** Counted from the kettle up, from 1. */
  readonly plate: number;
  /** What it stood at when the spout was strongest. */
  readonly stoodAt_K: Kelvin;
  /** When it had risen by `moves_K`; null where it had not before the run ended. */
  readonly moved_s: Second | null;
  /** How long before the spout had lost its strength; below 0 where after it. */
  readonly early_s: Second | null;
  /** What came over between the two. */
  readonly early_m3: CubicMetre | null;
}

/** When the spout fell, and which thermometer said so before. */
export interface FirstToTell {
  /** When the spout was strongest while something ran, and its strength. */
  readonly strongest_s: Second;
  readonly strongest: VolumeFraction20C;
  /** When it had lost `lost`. */
  readonly fell_s: Second;
  /** Plates from the kettle up. */
  readonly plates: readonly PlateTells[];
}

/**
 * How early each plate's thermometer moves before the spout has lost strength.
 *
 * Equation: t_k: T_k(t_k) = T_k(t_top) + ΔT; t_spout: q(t_spout) = q(t_top) − Δq; early = t_spout − t_k; linear between rows.
 * @param run A run with its rows, or a plain copy; the finer the rows, the sharper the times.
 * @param moves_K By how much a thermometer has to rise to be noticed, ΔT, [K]; 0.05..10, default 0.5.
 * @param lost How much strength the spout has to lose, Δq, as a share [volume fraction]; 0.001..0.5, default 0.01 (1 % vol).
 * @returns found true with the times [s] and volumes [m³]; found false with reason 'never-runs' or 'never-falls'.
 * @throws InputError when ΔT or Δq is outside its range.
 * @example foundIn(firstToTell(solve({ model: 'rayleigh', still: { kettle: { volume_m3: 0.1 } }, charge: { kind: 'amount', amount_mol: 100, moleFraction: 0.18 }, sheet: [{ reflux: 'none', until: [{ kind: 'alcoholLeftBelow', share: 0.5 }] }] }))).plates.length // → 0
 * Source: definition; that plate thermometers warn before the spout is common practice, no published source.
 */
export function firstToTell(
  run: ToldBy,
  moves_K: KelvinDifference = 0.5,
  lost = 0.01,
): Outcome<FirstToTell, 'never-runs' | 'never-falls'> {
  checkRun(run);
  checkRange('moves_K', moves_K, 0.05, 10, 'a rise from 0.05 to 10 K');
  checkRange('lost', lost, 0.001, 0.5, 'a loss from 0.001 to 0.5 (0.01 is 1 % vol)');
  const top = strongestRow(run);
  if (top === undefined) return { found: false, reason: 'never-runs', message: 'Nothing runs at the spout.' };
  const strongest = run.spoutStrength[top]!;
  const fell_s = crossing(run, top, (row) => strongest - lost - run.spoutStrength[row]!);
  if (fell_s === null) {
    return { found: false, reason: 'never-falls', message: 'The spout does not lose so much before the run ends.' };
  }
  const width = run.holders.length;
  const collectedAt = (time_s: Second): CubicMetre => at(run.time_s, run.collectedVolume_m3, time_s, run.rows);
  const plates = run.holders.flatMap(({ kind }, holder) => (kind === 'plate' ? [holder] : []));
  return {
    found: true,
    strongest_s: run.time_s[top]!,
    strongest,
    fell_s,
    plates: plates.map((holder, index): PlateTells => {
      const temperature = (row: number): Kelvin => run.holderTemperature_K[row * width + holder]!;
      const stoodAt_K = temperature(top);
      const moved_s = crossing(run, top, (row) => temperature(row) - stoodAt_K - moves_K);
      const early_s = moved_s === null ? null : fell_s - moved_s;
      const early_m3 = moved_s === null ? null : collectedAt(fell_s) - collectedAt(moved_s);
      return { plate: index + 1, stoodAt_K, moved_s, early_s, early_m3 };
    }),
  };
}

/** The row at which the spout is strongest while something runs. */
function strongestRow({ rows, spoutStrength, distillateRate_m3_s }: ToldBy): number | undefined {
  let top: number | undefined;
  for (let row = 0; row < rows; row++) {
    if (distillateRate_m3_s[row]! <= 0) continue;
    if (top === undefined || spoutStrength[row]! > spoutStrength[top]!) top = row;
  }
  return top;
}

/** When a function of the row first rises through 0 after a row, by a straight line between rows; null where it does not. */
function crossing({ rows, time_s }: ToldBy, from: number, height: (row: number) => number): Second | null {
  for (let row = from + 1; row < rows; row++) {
    const after = height(row);
    if (!(after >= 0)) continue;
    const before = height(row - 1);
    const part = after === before ? 1 : -before / (after - before);
    return time_s[row - 1]! + Math.min(1, Math.max(0, part)) * (time_s[row]! - time_s[row - 1]!);
  }
  return null;
}

/** A column at a moment, straight between rows. */
function at(time_s: Float64Array, column: Float64Array, moment_s: Second, rows: number): number {
  let row = 1;
  while (row < rows - 1 && time_s[row]! < moment_s) row++;
  const [before, after] = [time_s[row - 1]!, time_s[row]!];
  const part = after === before ? 1 : Math.min(1, Math.max(0, (moment_s - before) / (after - before)));
  return column[row - 1]! + part * (column[row]! - column[row - 1]!);
}
