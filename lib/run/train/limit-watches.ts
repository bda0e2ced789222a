// What is watched in a run, one function a limit: readings row by row, what happens when it is passed, and a cure.

import { condenserCapacity } from '../../still/condensers.js';
import { liquidDensity, molarMass } from '../../still/fluids.js';
import { packingLoad } from '../../still/packing-load.js';
import { plateLoad, type PlateFlows } from '../../still/plate-load.js';
import type { Still } from '../../still/still.js';
import type { TrainProblem } from './problem.js';
import type { TrainSolution } from './solution.js';

/** What can be passed. */
export type LimitKind =
  'flooding' | 'weeping' | 'kettleLow' | 'doublerLow' | 'doublerOver' | 'condenserShort' | 'holdLost';

/** What of a problem its limits depend on. */
export type LimitedProblem = Pick<TrainProblem, 'still' | 'power_W' | 'sheet'>;

/** Driven harder than this share of flooding a plate carries its liquid up. Source: common practice, 80 to 85 % of flooding. */
export const FLOOD_LIMIT = 0.85;
/** Below this share of the usual vapour a plate is warming up or idle, not weeping. */
const IDLE = 0.5;

/** One reading of a limit. */
export interface Reading {
  readonly worst: number;
  readonly passed: boolean;
  readonly extrapolated: boolean;
}

/** A limit and how it is read. */
export interface Watch {
  readonly kind: LimitKind;
  readonly holder: number | null;
  /** Which of two readings is worse. */
  readonly high: boolean;
  readonly read: (row: number) => Reading | null;
  readonly message: string;
  readonly cure: string;
}

/** Everything that is watched. */
export function watches(problem: LimitedProblem, run: TrainSolution): readonly Watch[] {
  const { still, sheet } = problem;
  return [
    ...plates(problem, run),
    ...packing(still, run),
    kettle(still, run),
    ...doublers(still, run),
    condenser(still, run),
    ...holds(sheet, run),
  ];
}

/** What limits say of a plate's load. */
interface Load {
  readonly flood: number;
  readonly weep: number | null;
  readonly extrapolated: boolean;
}
/** Of a plate that no vapour passes. */
const UNLOADED: Load = { flood: 0, weep: null, extrapolated: false };

/** The plate that is worst off speaks for all. */
function plates({ still, power_W }: LimitedProblem, run: TrainSolution): Watch[] {
  const { column } = still;
  if (column.kind !== 'plates') return [];
  const width = run.holders.length;
  const first = run.holders.findIndex(({ kind }) => kind === 'plate');
  const idle = (IDLE * power_W) / 40e3;
  const loadOf = (row: number, i: number): Load => {
    const j = first + i;
    const vapour = run.holderVapourRate_mol_s[row * width + j]!;
    if (vapour <= 0) return UNLOADED;
    const { floodShare, weepShare, extrapolated } = plateLoad(column, flowsAt(run, row, j));
    return { flood: floodShare, weep: vapour < idle ? null : weepShare, extrapolated };
  };
  // Two limits read the same loads, one row after the other.
  const known: Load[][] = [];
  const loads = (row: number): readonly Load[] =>
    (known[row] ??= Array.from({ length: run.plates }, (_none, i) => loadOf(row, i)));
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

function packing({ column }: Still, run: TrainSolution): Watch[] {
  if (column.kind !== 'packing') return [];
  const first = run.holders.findIndex(({ kind }) => kind === 'packing');
  return [
    {
      kind: 'flooding',
      holder: null,
      high: true,
      read: (row) => {
        let worst = 0;
        for (let j = first; j < first + run.plates; j++) {
          const { floodShare } = packingLoad(column, flowsAt(run, row, j));
          worst = Math.max(worst, floodShare);
        }
        return { worst: worst / FLOOD_LIMIT, passed: worst > FLOOD_LIMIT, extrapolated: column.diameter_m < 0.15 };
      },
      message: 'The packing is driven close to flooding: liquid stands in it and goes over.',
      cure: 'Less heat, a wider section, or a coarser packing.',
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

/** A hold is lost when the spout stands this far below what it should hold, % vol / 100, with all the reflux it may use. */
const LOST = 0.005;

function holds(sheet: TrainProblem['sheet'], run: TrainSolution): Watch[] {
  return sheet.flatMap(({ reflux }, step): Watch[] => {
    const first = run.stepStarts[step];
    if (typeof reflux !== 'object' || reflux.kind !== 'hold' || first === undefined) return [];
    const end = run.stepStarts[step + 1] ?? run.rows;
    return [
      {
        kind: 'holdLost',
        holder: null,
        high: false,
        read: (row) => {
          if (row < first || row >= end) return null;
          const strength = run.spoutStrength[row]!;
          const ratio = run.refluxRatio[row]!;
          const spent = ratio / (1 + ratio) >= reflux.mostShare - 1e-6;
          return {
            worst: strength / reflux.strength,
            passed: spent && strength < reflux.strength - LOST,
            extrapolated: false,
          };
        },
        message: 'The strength to be held is lost: the kettle is too weak for these plates at the most reflux allowed.',
        cure: 'More plates or more reflux, until the least reflux is reached, below which no number of plates would do; or stop.',
      },
    ];
  });
}

/** What passes a holder at a row. */
function flowsAt(run: TrainSolution, row: number, j: number): PlateFlows {
  const at = row * run.holders.length + j;
  // Round-off may leave a flow that just begins a hair below nothing.
  return {
    vapour_mol_s: Math.max(0, run.holderVapourRate_mol_s[at]!),
    liquid_mol_s: Math.max(0, run.holderLiquidRate_mol_s[at]!),
    vapourMoleFraction: within(run.holderVapour[at]!),
    liquidMoleFraction: within(run.holderLiquid[at]!),
    temperature_K: run.holderTemperature_K[at]!,
    pressure_Pa: run.holders[j]!.pressure_Pa,
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
