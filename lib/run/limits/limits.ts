// The limits of a still: where a run of it it would flood, weep, run its heating surface bare, outrun its condenser. The run goes on
// as computed; each limit says when, how much, and what would cure it. Read off the rows of a solution.

import { checkRun, checkSystem } from '../check-run.js';
import type { Second } from '../../units/quantities.js';
import type { EthanolWater } from '../../equilibrium/ethanol-water.js';
import { OWN_SYSTEM } from '../../equilibrium/own-system.js';
import { watches } from './limit-watches.js';
import type { LimitKind, Watch, WatchedRun } from './watch.js';

/** A limit that a run passes. */
export interface Limit {
  readonly kind: LimitKind;
  /** Which holder, in the solution's order; null for the condenser. */
  readonly holder: number | null;
  /** First and last moment at which it is passed. */
  readonly from_s: Second;
  readonly to_s: Second;
  /** How far at worst, as a share of the limit: 1.2 is a fifth too much, 0.8 a fifth too little. */
  readonly worst: number;
  readonly worst_s: Second;
  /** What happens, and what would cure it, each a sentence. */
  readonly message: string;
  readonly cure: string;
  /** Whether the formula behind it was made for larger stills. */
  readonly extrapolated: boolean;
}

/**
 * The limits that a run passes, in order of time.
 *
 * Equation: plateLoad on every plate, heights of liquid by hot density, condenserCapacity, minimumReflux, at every row of the solution.
 * @param run A solution, with rows close enough to catch what is looked for.
 * @param system Equilibrium of ethanol and water, for the least reflux; default the library's own.
 * @returns Each limit with its time, its worst and a cure; empty when nothing is passed.
 * @throws InputError when it is no run.
 * @example limitsOf(solve({ still: { kettle: { volume_m3: 0.02, power_W: 1500 } }, charge: { kind: 'volume', volume_m3: 0.015, strength: 0.1 }, sheet: [{ reflux: 'none', until: [{ kind: 'firstVapour' }] }] })).length // → 0
 * Source: this project, docs/theory/train.md; plateLoad and condenserCapacity for the formulas.
 */
export function limitsOf(run: WatchedRun, system: EthanolWater = OWN_SYSTEM): readonly Limit[] {
  checkRun(run);
  checkSystem(system);
  return watches(run, system)
    .flatMap((watch) => limitOf(watch, run))
    .sort((one, other) => one.from_s - other.from_s);
}

function limitOf({ kind, holder, high, read, message, cure }: Watch, run: WatchedRun): Limit[] {
  let found: { from_s: number; to_s: number; worst: number; worst_s: number; extrapolated: boolean } | undefined;
  let firstRow = 0;
  let worstRow = 0;
  for (let row = 0; row < run.rows; row++) {
    const reading = read(row);
    if (reading?.passed !== true) continue;
    const time_s = run.time_s[row]!;
    const { worst, extrapolated } = reading;
    if (found === undefined) firstRow = worstRow = row;
    found ??= { from_s: time_s, to_s: time_s, worst, worst_s: time_s, extrapolated };
    found.to_s = time_s;
    if (high ? worst > found.worst : worst < found.worst) {
      found.worst = worst;
      found.worst_s = time_s;
      worstRow = row;
    }
  }
  if (found === undefined) return [];
  return [
    { kind, holder, message: typeof message === 'string' ? message : message(firstRow, worstRow), cure, ...found },
  ];
}
