// The limits of a still: where a run of it it would flood, weep, run its heating surface bare, outrun its condenser. The run goes on
// as computed; each limit says when, how much, and what would cure it. Read off the rows of a solution, and by straight lines between them, so
// that moments do not hang on where rows happen to lie.

import { checkRun, checkSystem } from '../check-run.js';
import type { Second } from '../../units/quantities.js';
import type { EthanolWater } from '../../equilibrium/ethanol-water.js';
import { OWN_SYSTEM } from '../../equilibrium/own-system.js';
import { watches } from './limit-watches.js';
import { type LimitKind, type Reading, valueAt, type Watch, type WatchedRun } from './watch.js';

/** This near to its worst, as a share of the limit, a limit counts as standing at it: what no page prints, and a level stretch has none else. */
const NEAR_WORST = 0.005;
/** Halvings of the stretch between two rows. */
const HALVINGS = 16;

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
  /** First moment at which it stands there, to half a per cent of the limit. */
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
 * Equation: plateLoad on every plate, heights of liquid by hot density, condenserCapacity, minimumReflux, at every row of the solution and by straight lines between two.
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
  let [first, last, worstRow] = [-1, -1, -1];
  let worst: Reading | undefined;
  for (let row = 0; row < run.rows; row++) {
    const reading = read(row);
    if (reading?.passed !== true) continue;
    if (first < 0) first = row;
    last = row;
    if (worst !== undefined && !(high ? reading.worst > worst.worst : reading.worst < worst.worst)) continue;
    worst = reading;
    worstRow = row;
  }
  if (worst === undefined) return [];
  const most = worst.worst;
  const passed = (place: number): boolean => read(place)?.passed === true;
  const nearWorst = (place: number): boolean => {
    const reading = read(place);
    return reading?.passed === true && Math.abs(reading.worst - most) <= NEAR_WORST;
  };
  let near = first;
  while (!nearWorst(near)) near += 1;
  const from = begins(passed, first, run);
  const time_s = (place: number): number => valueAt(run.time_s, place);
  return [
    {
      kind,
      holder,
      from_s: time_s(from),
      to_s: time_s(ends(passed, last, run)),
      worst: most,
      worst_s: time_s(begins(nearWorst, near, run)),
      message: typeof message === 'string' ? message : message(from, worstRow),
      cure,
      extrapolated: worst.extrapolated,
    },
  ];
}

/** Where what is so at a row, and not at the one before, begins: there, where a step of the sheet begins with it, else between them. */
function begins(isSo: (place: number) => boolean, row: number, run: WatchedRun): number {
  return row === 0 || run.stepStarts.includes(row) ? row : boundary(isSo, row, row - 1);
}

/** Where what is so at a row, and not at the next, ends: with its step of the sheet, or between them. */
function ends(isSo: (place: number) => boolean, row: number, run: WatchedRun): number {
  if (row === run.rows - 1) return row;
  return run.stepStarts.includes(row + 1) ? row + 1 : boundary(isSo, row, row + 1);
}

/** The place nearest to `outside` at which it is as it is at `inside`. */
function boundary(isSo: (place: number) => boolean, inside: number, outside: number): number {
  for (let halvings = 0; halvings < HALVINGS; halvings++) {
    const middle = (inside + outside) / 2;
    if (isSo(middle)) inside = middle;
    else outside = middle;
  }
  return inside;
}
