// Any still there can be, with a run on it, for property tests; within what a distiller could build.

import fc from 'fast-check';
import type { Reflux, RunStep } from '#lib/run/problem.js';
import type { Still } from '#lib/still/still.js';
import { doubler, platedStill, type WholeProblem } from './train-problems.js';

const unit = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

const column: fc.Arbitrary<Still['column']> = fc.oneof(
  fc.constant<Still['column']>({ kind: 'none' }),
  fc
    .record({ count: fc.integer({ min: 1, max: 12 }), efficiency: unit(0.2, 1), litres: unit(0.05, 0.3) })
    .map(({ count, efficiency, litres }): Still['column'] => {
      const section = platedStill(1).column;
      if (section.kind !== 'plates') throw new Error('a plated section');
      return { ...section, count, efficiency, holdUp: { kind: 'volume', volume_m3: litres * 1e-3 } };
    }),
  fc.record({ height_m: unit(0.3, 1.5), hetp_m: unit(0.15, 0.3) }).map(({ height_m, hetp_m }): Still['column'] => ({
    kind: 'packing',
    height_m,
    hetp_m,
    diameter_m: 0.08,
    voidShare: 0.9,
    surface_m2_m3: 300,
    liquidShare: 0.06,
    heatLoss_W_K: 0.8,
    metal_J_K: 1200,
    drop_Pa_m: 300,
  })),
);

const condenser: fc.Arbitrary<Still['refluxCondenser']> = fc.oneof(
  fc.constant<Still['refluxCondenser']>({ kind: 'none' }),
  unit(0, 30).map((subcooling_K): Still['refluxCondenser'] => ({
    kind: 'total',
    holdUp: { kind: 'volume', volume_m3: 5e-5 },
    subcooling_K,
  })),
  unit(500, 6000).map((power_W): Still['refluxCondenser'] => ({
    kind: 'partial',
    holdUp: { kind: 'volume', volume_m3: 5e-5 },
    coolant: { kind: 'duty', power_W },
  })),
  unit(0.002, 0.1).map((flow_kg_s): Still['refluxCondenser'] => ({
    kind: 'partial',
    holdUp: { kind: 'volume', volume_m3: 5e-5 },
    coolant: { kind: 'water', flow_kg_s, inlet_K: 288.15, transfer_W_K: 80 },
  })),
);

/** A still of any kind with a run on it. */
export function anyTrainProblem(): fc.Arbitrary<WholeProblem> {
  return fc
    .record({
      column,
      condenser,
      doublers: fc.integer({ min: 0, max: 2 }),
      over: fc.boolean(),
      headLoss: fc.oneof(fc.constant(0), unit(0.5, 10)),
      strength: unit(0.03, 0.6),
      power: unit(2500, 9000),
      reflux: unit(0, 8),
      cold: fc.boolean(),
    })
    .map((parts): WholeProblem => {
      const base = platedStill(0);
      const still: Still = {
        ...base,
        column: parts.column,
        refluxCondenser: parts.condenser,
        doublers: Array.from({ length: parts.doublers }, () => ({
          ...doubler,
          overflow: parts.over ? 'over' : 'back',
        })),
        head: { heatLoss_W_K: parts.headLoss, metal_J_K: 100 * parts.headLoss, film_m3: 1e-4 },
      };
      const draw: Reflux =
        parts.condenser.kind === 'none' ? 'none' : parts.condenser.kind === 'total' ? parts.reflux : 'asSet';
      const hold: Reflux = parts.condenser.kind === 'none' ? 'none' : 'total';
      const warm: RunStep = {
        reflux: hold,
        until: [{ kind: 'firstVapour' }, { kind: 'duration', seconds: 15_000 }],
      };
      return {
        still,
        charge: { kind: 'volume', volume_m3: 0.12, strength: parts.strength },
        doublerCharges: still.doublers.map(() => ({ charge: { kind: 'volume', volume_m3: 0.008, strength: 0.3 } })),
        activity: 'redlich-kister',
        heat: { kind: 'power', power_W: parts.power },
        sheet: [
          ...(parts.cold ? [warm] : []),
          { reflux: hold, until: [{ kind: 'duration', seconds: 900 }] },
          {
            reflux: draw,
            until: [
              { kind: 'duration', seconds: 7200 },
              { kind: 'alcoholLeftBelow', share: 0.02 },
            ],
          },
        ],
        outputs: { kind: 'every', interval_s: 120 },
        start: parts.cold ? 'cold' : 'firstVapour',
      };
    });
}
