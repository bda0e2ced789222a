// What is watched in a run, one function a limit: readings row by row, what happens when it is passed, and a cure. What is watched in the
// column stands in column-watches.ts, at the spout in strength-watches.ts.

import type { EthanolWater } from '../../equilibrium/ethanol-water.js';
import { capacityOf } from '../../still/condensers.js';
import { liquidDensity, molarMass } from '../../still/fluids.js';
import type { Still } from '../../still/still.js';
import { packing, plates } from './column-watches.js';
import { holds, leastRefluxes } from './strength-watches.js';
import { holderAt, valueAt, type Watch, type WatchedRun, within } from './watch.js';

/** Everything that is watched. */
export function watches(run: WatchedRun, system: EthanolWater): readonly Watch[] {
  const { still } = run.problem;
  return [
    ...plates(run),
    ...packing(still, run),
    heater(still, run),
    kettle(still, run),
    ...doublers(still, run),
    condenser(still, run),
    ...holds(run),
    ...leastRefluxes(run, system),
  ];
}

function heater({ kettle: { power_W } }: Still, run: WatchedRun): Watch {
  return {
    kind: 'heaterShort',
    holder: 0,
    high: true,
    read: (place) => {
      const share = valueAt(run.power_W, place) / Math.max(1, power_W);
      return { worst: share, passed: share > 1 + 1e-9, extrapolated: false };
    },
    message: 'The run takes more heat than the kettle’s heater can give.',
    cure: 'Less heat, or a larger heater.',
  };
}

function kettle(still: Still, run: WatchedRun): Watch {
  const { diameter_m, heatingSurfaceHeight_m: least_m } = still.kettle;
  return {
    kind: 'kettleLow',
    holder: 0,
    high: false,
    read: (place) => {
      const share = height(run, place, 0, diameter_m) / Math.max(1e-6, least_m);
      return { worst: share, passed: share < 1, extrapolated: false };
    },
    message:
      'The kettle’s level has sunk below its heating surface: what is bare burns what it touches and can light vapour.',
    cure: 'Stop before, or fill more.',
  };
}

function doublers(still: Still, run: WatchedRun): Watch[] {
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
        read: (place) => {
          const share = height(run, place, holder, diameter_m) / Math.max(1e-6, mouth_m);
          return { worst: share, passed: mouth_m > 1e-6 && share < 1, extrapolated: false };
        },
        message: `The ${name} has run down to the mouth of its pipe: vapour passes over its liquid, not through it.`,
        cure: 'A larger charge, or a weaker one.',
      },
      {
        kind: 'doublerOver',
        holder,
        high: true,
        read: (place) => {
          const share = (height(run, place, holder, diameter_m) * area_m2) / volume_m3;
          const runs = holderAt(run, run.holderLiquidRate_mol_s, place, holder) > 1e-6;
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

function condenser({ productCondenser: { flow_kg_s, transfer_W_K, inlet_K } }: Still, run: WatchedRun): Watch {
  return {
    kind: 'condenserShort',
    holder: null,
    high: true,
    read: (place) => {
      const head_K = valueAt(run.headTemperature_K, place);
      const capacity = capacityOf(flow_kg_s, transfer_W_K, inlet_K, head_K);
      const share = valueAt(run.condenserDuty_W, place) / Math.max(1e-9, capacity);
      return { worst: share, passed: share > 1, extrapolated: false };
    },
    message: 'More vapour comes than the condenser can take: it escapes at the spout and can light.',
    cure: 'Less heat, more water, colder water, or a larger condenser.',
  };
}

/** Height of the hot liquid in an upright vessel, m. */
function height(run: WatchedRun, place: number, holder: number, diameter_m: number): number {
  const x = within(holderAt(run, run.holderLiquid, place, holder));
  const mass_kg = holderAt(run, run.holderAmount_mol, place, holder) * molarMass(x);
  const volume_m3 = mass_kg / liquidDensity(x, holderAt(run, run.holderTemperature_K, place, holder));
  return volume_m3 / ((Math.PI * diameter_m ** 2) / 4);
}
