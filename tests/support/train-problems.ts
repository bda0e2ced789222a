// Stills and runs for tests of the train; all invented.

import type { Still } from '#lib/still/still.js';
import type { EnergyProblem } from '#lib/run/problem.js';

/** A 150 L kettle under plates with a total condenser; losses and metal as asked. */
export function platedStill(plates: number, efficiency = 0.65, bare = false): Still {
  return {
    kettle: {
      volume_m3: 0.15,
      diameter_m: 0.5,
      heatingSurfaceHeight_m: 0.1,
      power_W: 5500,
      heatLoss_W_K: bare ? 0 : 3,
      metal_J_K: bare ? 0 : 8000,
    },
    doublers: [],
    column:
      plates === 0
        ? { kind: 'none' }
        : {
            kind: 'plates',
            count: plates,
            plateKind: 'sieve',
            diameter_m: 0.1,
            spacing_m: 0.15,
            weirHeight_m: 0.012,
            openAreaShare: 0.1,
            holeDiameter_m: 0.003,
            holdUp: { kind: 'volume', volume_m3: 1e-4 },
            efficiency,
            efficiencyFalls: false,
            heatLoss_W_K: bare ? 0 : 0.15,
            metal_J_K: bare ? 0 : 600,
            drop_Pa: bare ? 0 : 300,
          },
    head: { heatLoss_W_K: 0, metal_J_K: 0, film_m3: 1e-4 },
    refluxCondenser: { kind: 'total', holdUp: { kind: 'volume', volume_m3: 4e-5 }, subcooling_K: 0 },
    productCondenser: {
      holdUp: { kind: 'volume', volume_m3: 1e-5 },
      flow_kg_s: 0.1,
      inlet_K: 288.15,
      transfer_W_K: 300,
    },
    air: { pressure_Pa: 101325, temperature_K: 293.15 },
  };
}

/** A bare pot, or with doublers: no reflux condenser. */
export function pot(doublers: Still['doublers'] = [], head: Partial<Still['head']> = {}): Still {
  const still = platedStill(0);
  return {
    ...still,
    doublers,
    head: { ...still.head, ...head },
    refluxCondenser: { kind: 'none' },
    productCondenser: { ...still.productCondenser, holdUp: { kind: 'volume', volume_m3: 5e-5 } },
  };
}

/** A doubler of 20 L. */
export const doubler: Still['doublers'][number] = {
  volume_m3: 0.02,
  diameter_m: 0.25,
  dipDepth_m: 0.1,
  heatLoss_W_K: 1.5,
  metal_J_K: 1500,
  overflow: 'back',
};

/** A problem in which all that the tests look at is set. */
export type WholeProblem = EnergyProblem &
  Required<Pick<EnergyProblem, 'doublerCharges' | 'activity' | 'heat' | 'outputs'>> & { readonly still: Still };

/** So much power. */
export function power(power_W: number): NonNullable<EnergyProblem['heat']> {
  return { kind: 'power', power_W };
}

/** Total reflux, then 3 : 1, on 120 L of 9.5 % vol; whatever is given replaces it. */
export function trainProblem(changes: Partial<WholeProblem> = {}): WholeProblem {
  return {
    still: platedStill(8),
    charge: { kind: 'volume', volume_m3: 0.12, strength: 0.095 },
    doublerCharges: [],
    activity: 'redlich-kister',
    heat: { kind: 'power', power_W: 5500 },
    sheet: [
      { reflux: 'total', until: [{ kind: 'duration', seconds: 1200 }] },
      { reflux: 3, until: [{ kind: 'duration', seconds: 5400 }] },
    ],
    outputs: { kind: 'every', interval_s: 60 },
    start: 'firstVapour',
    ...changes,
  };
}

/** A kettle under 1.2 m of packing with a partial condenser of set duty. */
export function packedStill(): Still {
  return {
    ...platedStill(0),
    column: {
      kind: 'packing',
      height_m: 1.2,
      hetp_m: 0.2,
      diameter_m: 0.1,
      voidShare: 0.9,
      surface_m2_m3: 300,
      liquidShare: 0.06,
      heatLoss_W_K: 0.8,
      metal_J_K: 1200,
      drop_Pa_m: 300,
    },
    refluxCondenser: {
      kind: 'partial',
      holdUp: { kind: 'volume', volume_m3: 5e-5 },
      coolant: { kind: 'duty', power_W: 3600 },
    },
  };
}
