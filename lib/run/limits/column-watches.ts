// What is watched in a column: whether its plates or its packing flood, and whether plates weep.

import { loadOfPacking } from '../../still/packing-load.js';
import { loadOfPlate, type PlateFlows } from '../../still/plate-load.js';
import type { Still } from '../../still/still.js';
import { holderAt, placeAt, valueAt, type Watch, type WatchedRun, within } from './watch.js';

/** Driven harder than this share of flooding a plate carries its liquid up. Source: common practice, 80 to 85 % of flooding. */
export const FLOOD_LIMIT = 0.85;
/** Below this share of the usual vapour a plate is warming up or idle, not weeping; it works once it has had more for so long. */
const IDLE = 0.5;
const WORKS_AFTER_s = 60;

/** Heat that raises a mole of vapour, J/mol; roughly. */
const HEAT_J_mol = 40e3;

/** What limits say of a plate's load. */
interface Load {
  readonly flood: number;
  readonly weep: number | null;
  readonly extrapolated: boolean;
}
/** Of a plate that no vapour passes. */
const UNLOADED: Load = { flood: 0, weep: null, extrapolated: false };

/** The plate that is worst off speaks for all. */
export function plates(run: WatchedRun): Watch[] {
  const { heat, still } = run.problem;
  const { column } = still;
  const power_W = heat.kind === 'power' ? heat.power_W : heat.rate_mol_s * HEAT_J_mol;
  if (column.kind !== 'plates') return [];
  const first = run.holders.findIndex(({ kind }) => kind === 'plate');
  const idle = (IDLE * power_W) / HEAT_J_mol;
  const loadOf = (place: number, i: number): Load => {
    const j = first + i;
    const vapour = holderAt(run, run.holderVapourRate_mol_s, place, j);
    if (vapour <= 0) return UNLOADED;
    const works = Math.min(vapour, holderAt(run, run.holderVapourRate_mol_s, aMinuteBefore(place), j)) >= idle;
    const { floodShare, weepShare, extrapolated } = loadOfPlate(column, flowsAt(run, place, j));
    return { flood: floodShare, weep: works ? weepShare : null, extrapolated };
  };
  const aMinuteBefore = (place: number): number => placeAt(run.time_s, valueAt(run.time_s, place) - WORKS_AFTER_s);
  // Two limits read the same loads, one row after the other.
  const known: Load[][] = [];
  const loadsAt = (place: number): Load[] => Array.from({ length: run.plates }, (_none, i) => loadOf(place, i));
  const loads = (place: number): readonly Load[] =>
    Number.isInteger(place) ? (known[place] ??= loadsAt(place)) : loadsAt(place);
  return [
    {
      kind: 'flooding',
      holder: null,
      high: true,
      read: (place) => {
        const worst = loads(place).reduce((one, other) => (other.flood > one.flood ? other : one));
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
      read: (place) => {
        const shares = loads(place).filter(({ weep }) => weep !== null);
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

export function packing({ column }: Still, run: WatchedRun): Watch[] {
  if (column.kind !== 'packing') return [];
  const first = run.holders.findIndex(({ kind }) => kind === 'packing');
  return [
    {
      kind: 'flooding',
      holder: null,
      high: true,
      read: (place) => {
        let worst = 0;
        for (let j = first; j < first + run.plates; j++) {
          const { floodShare } = loadOfPacking(column, flowsAt(run, place, j));
          worst = Math.max(worst, floodShare);
        }
        return { worst: worst / FLOOD_LIMIT, passed: worst > FLOOD_LIMIT, extrapolated: column.diameter_m < 0.15 };
      },
      message: 'The packing is driven close to flooding: liquid stands in it and goes over.',
      cure: 'Less heat, a wider section, or a coarser packing.',
    },
  ];
}

/** What passes a holder at a place. */
function flowsAt(run: WatchedRun, place: number, j: number): PlateFlows {
  const at = (column: Float64Array): number => holderAt(run, column, place, j);
  // Round-off may leave a flow that just begins a hair below nothing.
  return {
    vapour_mol_s: Math.max(0, at(run.holderVapourRate_mol_s)),
    liquid_mol_s: Math.max(0, at(run.holderLiquidRate_mol_s)),
    vapourMoleFraction: within(at(run.holderVapour)),
    liquidMoleFraction: within(at(run.holderLiquid)),
    temperature_K: at(run.holderTemperature_K),
    pressure_Pa: run.holders[j]!.pressure_Pa,
  };
}
