// What a moment of a run is measured against: the most that ever flows, what every part has passed on so far, and the
// most it ever holds. Computed once a run.

import type { Still } from '#lib/index.js';
import type { SheetRun } from './run-sheet.js';

/** Measures of one run; arrays named …Passed are mol since the start, rows × holders where they belong to holders. */
export interface StillMeasures {
  /** Largest flow of vapour anywhere in the run, mol/s. */
  readonly mostFlow_mol_s: number;
  /** The largest of all that is passed on, mol. */
  readonly mostPassed_mol: number;
  readonly vapourPassed_mol: Float64Array;
  readonly liquidPassed_mol: Float64Array;
  readonly refluxRate_mol_s: Float64Array;
  readonly refluxPassed_mol: Float64Array;
  readonly distillatePassed_mol: Float64Array;
  /** Most that each holder holds, mol. */
  readonly mostHeld_mol: readonly number[];
}

const known = new WeakMap<SheetRun, StillMeasures>();

/** Measures of a run, remembered as long as its solution is. */
export function stillMeasures(still: Still, run: SheetRun): StillMeasures {
  const before = known.get(run);
  if (before !== undefined) return before;
  const refluxRate_mol_s = refluxRates(still, run);
  const width = run.holders.length;
  const vapourPassed_mol = passed(run, run.holderVapourRate_mol_s, width);
  const refluxPassed_mol = passed(run, refluxRate_mol_s, 1);
  const liquidPassed_mol = passed(run, run.holderLiquidRate_mol_s, width);
  const measures: StillMeasures = {
    mostFlow_mol_s: Math.max(Number.MIN_VALUE, largest(run.holderVapourRate_mol_s)),
    mostPassed_mol: Math.max(Number.MIN_VALUE, largest(vapourPassed_mol), largest(refluxPassed_mol)),
    vapourPassed_mol,
    liquidPassed_mol,
    refluxRate_mol_s,
    refluxPassed_mol,
    distillatePassed_mol: passed(run, run.distillateRate_mol_s, 1),
    mostHeld_mol: run.holders.map((_holder, j) => largest(run.holderAmount_mol, j, width)),
  };
  known.set(run, measures);
  return measures;
}

/** What runs back from the reflux condenser at each row: what its drum neither keeps nor lets go, or what the partial one condenses. */
function refluxRates(still: Still, run: SheetRun): Float64Array {
  const width = run.holders.length;
  const top = width - 1;
  const rates = new Float64Array(run.rows);
  const { kind } = still.refluxCondenser;
  if (kind === 'none') return rates;
  for (let row = 0; row < run.rows; row++) {
    const here = row * width + top;
    if (kind === 'partial') rates[row] = run.holderLiquidRate_mol_s[here]!;
    else {
      const condensed = run.holderVapourRate_mol_s[here]!;
      rates[row] = Math.max(0, condensed - drumGain(run, row) - run.distillateRate_mol_s[row]!);
    }
  }
  return rates;
}

/** What the drum gains, mol/s, towards the next row (at the last, from the one before). */
function drumGain({ drumAmount_mol, time_s, rows }: SheetRun, row: number): number {
  const from = Math.max(0, Math.min(row, rows - 2));
  const time = (time_s[from + 1] ?? 0) - time_s[from]!;
  return time > 0 ? (drumAmount_mol[from + 1]! - drumAmount_mol[from]!) / time : 0;
}

/** Running sum of rates over time by trapezia. */
function passed({ rows, time_s }: SheetRun, rate: Float64Array, width: number): Float64Array {
  const sum = new Float64Array(rows * width);
  for (let row = 1; row < rows; row++) {
    const half = (time_s[row]! - time_s[row - 1]!) / 2;
    for (let at = row * width; at < (row + 1) * width; at++) {
      sum[at] = sum[at - width]! + half * (rate[at]! + rate[at - width]!);
    }
  }
  return sum;
}

function largest(column: Float64Array, first = 0, step = 1): number {
  let most = 0;
  for (let i = first; i < column.length; i += step) if (column[i]! > most) most = column[i]!;
  return most;
}
