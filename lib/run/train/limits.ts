// What the metal says to a run: where it would flood, weep, run its heating surface bare, outrun its condenser. The run goes on
// as computed; each limit says when, how much, and what would cure it. Read off the rows of a solution.

import { condenserCapacity } from '../../still/condensers.js';
import { liquidDensity, molarMass } from '../../still/fluids.js';
import { plateLoad } from '../../still/plate-load.js';
import type { Still } from '../../still/still.js';
import type { Second } from '../../units/quantities.js';
import type { TrainProblem } from './problem.js';
import type { TrainSolution } from './solution.js';

/** What can be passed. */
export type LimitKind = 'flooding' | 'weeping' | 'kettleLow' | 'doublerLow' | 'doublerOver' | 'condenserShort';

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

/** Driven harder than this share of flooding a plate carries its liquid up. Source: common practice, 80 to 85 % of flooding. */
export const FLOOD_LIMIT = 0.85;
/** Below this share of the usual vapour a plate is warming up or idle, not weeping. */
const IDLE = 0.5;

interface Reading {
  readonly worst: number;
  readonly passed: boolean;
  readonly extrapolated: boolean;
}

interface Watch {
  readonly kind: LimitKind;
  readonly holder: number | null;
  /** Which of two readings is worse. */
  readonly high: boolean;
  readonly read: (row: number) => Reading | null;
  readonly message: string;
  readonly cure: string;
}

/**
 * The limits that a run passes, in order of time.
 *
 * Equation: plateLoad on every plate, heights of liquid by hot density, condenserCapacity, at every row of the solution.
 * @param problem What was run.
 * @param run Its solution; rows close enough to catch what is looked for.
 * @returns Each limit with its time, its worst and a cure; empty when nothing is passed.
 * @example limitsOf({ still: STILL_PRESETS[0].still, power_W: 1500 }, solve({ kind: 'train', still: STILL_PRESETS[0].still, charge: { kind: 'volume', ...STILL_PRESETS[0].charge }, doublerCharges: [], activity: 'raoult', power_W: 1500, sheet: [{ reflux: 'none', until: [{ kind: 'firstVapour' }] }], outputs: { kind: 'every', interval_s: 60 } }, createEthanolWater())).length // → 0
 * Source: this project, docs/theory/train.md; plateLoad and condenserCapacity for the formulas.
 */
export function limitsOf(problem: Pick<TrainProblem, 'still' | 'power_W'>, run: TrainSolution): readonly Limit[] {
  const { still } = problem;
  const watches = [...plates(problem, run), kettle(still, run), ...doublers(still, run), condenser(still, run)];
  return watches.flatMap((watch) => limitOf(watch, run)).sort((one, other) => one.from_s - other.from_s);
}

function limitOf({ kind, holder, high, read, message, cure }: Watch, run: TrainSolution): Limit[] {
  let found: { from_s: number; to_s: number; worst: number; worst_s: number; extrapolated: boolean } | undefined;
  for (let row = 0; row < run.rows; row++) {
    const reading = read(row);
    if (reading?.passed !== true) continue;
    const time_s = run.time_s[row]!;
    const { worst, extrapolated } = reading;
    found ??= { from_s: time_s, to_s: time_s, worst, worst_s: time_s, extrapolated };
    found.to_s = time_s;
    if (high ? worst > found.worst : worst < found.worst) {
      found.worst = worst;
      found.worst_s = time_s;
    }
  }
  return found === undefined ? [] : [{ kind, holder, message, cure, ...found }];
}

/** The plate that is worst off speaks for all. */
function plates({ still, power_W }: Pick<TrainProblem, 'still' | 'power_W'>, run: TrainSolution): Watch[] {
  const { column } = still;
  if (column.kind !== 'plates') return [];
  const width = run.holders.length;
  const first = run.holders.findIndex(({ kind }) => kind === 'plate');
  const idle = (IDLE * power_W) / 40e3;
  const loads = (row: number): { j: number; flood: number; weep: number | null; extrapolated: boolean }[] =>
    Array.from({ length: run.plates }, (_none, i) => {
      const j = first + i;
      const at = row * width + j;
      const { floodShare, weepShare, extrapolated } = plateLoad(column, {
        vapour_mol_s: run.holderVapourRate_mol_s[at]!,
        liquid_mol_s: run.holderLiquidRate_mol_s[at]!,
        vapourMoleFraction: within(run.holderVapour[at]!),
        liquidMoleFraction: within(run.holderLiquid[at]!),
        temperature_K: run.holderTemperature_K[at]!,
        pressure_Pa: run.holders[j]!.pressure_Pa,
      });
      const asleep = run.holderVapourRate_mol_s[at]! < idle;
      return { j, flood: floodShare, weep: asleep ? null : weepShare, extrapolated };
    });
  return [
    {
      kind: 'flooding',
      holder: null,
      high: true,
      read: (row) => {
        const worst = loads(row).reduce((one, other) => (other.flood > one.flood ? other : one));
        return {
          worst: worst.flood / FLOOD_LIMIT,
          passed: worst.flood > FLOOD_LIMIT,
          extrapolated: worst.extrapolated,
        };
      },
      message: 'The plates are driven close to flooding: vapour carries their liquid up and tails into the spirit.',
      cure: 'Less heat, a wider column, or plates farther apart.',
    },
    {
      kind: 'weeping',
      holder: null,
      high: false,
      read: (row) => {
        const shares = loads(row).filter(({ weep }) => weep !== null);
        if (shares.length === 0) return null;
        const worst = shares.reduce((one, other) => (other.weep! < one.weep! ? other : one));
        return { worst: worst.weep!, passed: worst.weep! < 1, extrapolated: worst.extrapolated };
      },
      message:
        'Liquid rains through the holes: vapour is too slow to hold it, and the plates work worse than they should.',
      cure: 'More heat, fewer or smaller holes, or bubble caps, which do not weep.',
    },
  ];
}

function kettle(still: Still, run: TrainSolution): Watch {
  const { diameter_m, heatingSurfaceHeight_m: least_m } = still.kettle;
  return {
    kind: 'kettleLow',
    holder: 0,
    high: false,
    read: (row) => {
      const share = height(run, row, 0, diameter_m) / Math.max(1e-6, least_m);
      return { worst: share, passed: share < 1, extrapolated: false };
    },
    message:
      'The kettle’s level has sunk below its heating surface: what is bare burns what it touches and can light vapour.',
    cure: 'Stop before, or fill more.',
  };
}

function doublers(still: Still, run: TrainSolution): Watch[] {
  return still.doublers.flatMap(({ diameter_m, dipDepth_m, volume_m3, overflow }, index): Watch[] => {
    const holder = index + 1;
    const area_m2 = (Math.PI * diameter_m ** 2) / 4;
    const filled_m = height(run, 0, holder, diameter_m);
    const mouth_m = Math.max(0, filled_m - dipDepth_m);
    const name = still.doublers.length > 1 ? `doubler ${String(holder)}` : 'doubler';
    return [
      {
        kind: 'doublerLow',
        holder,
        high: false,
        read: (row) => {
          const share = height(run, row, holder, diameter_m) / Math.max(1e-6, mouth_m);
          return { worst: share, passed: mouth_m > 1e-6 && share < 1, extrapolated: false };
        },
        message: `The ${name} has run down to the mouth of its pipe: vapour passes over its liquid, not through it.`,
        cure: 'A larger charge, or a weaker one.',
      },
      {
        kind: 'doublerOver',
        holder,
        high: true,
        read: (row) => {
          const share = (height(run, row, holder, diameter_m) * area_m2) / volume_m3;
          const runs = run.holderLiquidRate_mol_s[row * run.holders.length + holder]! > 1e-6;
          return { worst: share, passed: runs, extrapolated: false };
        },
        message:
          overflow === 'over'
            ? `The ${name} is full: its liquid goes over with the vapour into the spirit.`
            : `The ${name} is full and runs back through its drain.`,
        cure: 'A smaller or warmer charge, or a larger vessel.',
      },
    ];
  });
}

function condenser({ productCondenser: { flow_kg_s, transfer_W_K, inlet_K } }: Still, run: TrainSolution): Watch {
  return {
    kind: 'condenserShort',
    holder: null,
    high: true,
    read: (row) => {
      const capacity = condenserCapacity(flow_kg_s, transfer_W_K, inlet_K, run.headTemperature_K[row]!);
      const share = run.condenserDuty_W[row]! / Math.max(1e-9, capacity);
      return { worst: share, passed: share > 1, extrapolated: false };
    },
    message: 'More vapour comes than the condenser can take: it escapes at the spout and can light.',
    cure: 'Less heat, more water, colder water, or a larger condenser.',
  };
}

/** Height of the hot liquid in an upright vessel, m. */
function height(run: TrainSolution, row: number, holder: number, diameter_m: number): number {
  const at = row * run.holders.length + holder;
  const x = within(run.holderLiquid[at]!);
  const mass_kg = run.holderAmount_mol[at]! * molarMass(x);
  const volume_m3 = mass_kg / liquidDensity(x, run.holderTemperature_K[at]!);
  return volume_m3 / ((Math.PI * diameter_m ** 2) / 4);
}

function within(moleFraction: number): number {
  return Math.min(1, Math.max(0, moleFraction));
}
