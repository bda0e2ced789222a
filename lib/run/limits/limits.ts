// What the metal says to a run: where it would flood, weep, run its heating surface bare, outrun its condenser. The run goes on
// as computed; each limit says when, how much, and what would cure it. Read off the rows of a solution.

import type { Second } from '../../units/quantities.js';
import type { EthanolWater } from '../../equilibrium/ethanol-water.js';
import { watches } from './limit-watches.js';
import type { TrainSolution } from '../engines/energy/solution.js';
import type { LimitedProblem, LimitKind, Watch } from './watch.js';

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
 * @param problem What was run.
 * @param run Its solution; rows close enough to catch what is looked for.
 * @param system Equilibrium of ethanol and water, for the least reflux.
 * @returns Each limit with its time, its worst and a cure; empty when nothing is passed.
 * @example limitsOf({ still: STILL_PRESETS[0].still, power_W: 1500, sheet: [], activity: 'raoult' }, solve({ kind: 'train', still: STILL_PRESETS[0].still, charge: { kind: 'volume', ...STILL_PRESETS[0].charge }, doublerCharges: [], activity: 'raoult', power_W: 1500, sheet: [{ reflux: 'none', until: [{ kind: 'firstVapour' }] }], outputs: { kind: 'every', interval_s: 60 } }, createEthanolWater()), createEthanolWater()).length // → 0
 * Source: this project, docs/theory/train.md; plateLoad and condenserCapacity for the formulas.
 */
export function limitsOf(problem: LimitedProblem, run: TrainSolution, system: EthanolWater): readonly Limit[] {
  return watches(problem, run, system)
    .flatMap((watch) => limitOf(watch, run))
    .sort((one, other) => one.from_s - other.from_s);
}

function limitOf({ kind, holder, high, read, message, cure }: Watch, run: TrainSolution): Limit[] {
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
