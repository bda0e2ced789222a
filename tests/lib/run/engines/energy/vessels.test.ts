// What vessels and packings are to a run: a doubler's liquid presses on its pipe, a packing is a whole number of stages,
// and what stands on the plates is less than half the charge.

import { describe, expect, it } from 'vitest';
import {
  createEthanolWater,
  densityOfMixture,
  InputError,
  massFractionFromStrength,
  solve,
  staircase,
} from '#lib/index.js';
import { STANDARD_GRAVITY } from '#lib/constants.js';
import { doubler, packedStill, platedStill, pot, trainProblem } from '../../../../support/train-problems.js';

const system = createEthanolWater();

describe('a doubler', () => {
  it.each([0, 0.3, 0.6])('charged at strength %d puts its own liquid’s weight on the kettle', (strength) => {
    const run = solve(
      trainProblem({
        still: pot([doubler]),
        charge: { kind: 'volume', volume_m3: 0.1, strength: 0.08 },
        doublerCharges: [{ charge: { kind: 'volume', volume_m3: 0.008, strength } }],
        sheet: [{ reflux: 'none', until: [{ kind: 'duration', seconds: 60 }] }],
      }),
      system,
    );
    const density_kg_m3 = densityOfMixture(massFractionFromStrength(strength), 293.15);
    const pressed_Pa = run.holders[0]!.pressure_Pa - run.holders[1]!.pressure_Pa;
    expect(pressed_Pa).toBeCloseTo(STANDARD_GRAVITY * doubler.dipDepth_m * density_kg_m3, 6);
  });
});

describe('a packing of 4.4 times its HETP', () => {
  it('is five stages, each that much less efficient, and gives what they give at total reflux', () => {
    const settled = 2e-6; // mole fraction
    const base = packedStill();
    if (base.column.kind !== 'packing') throw new Error('packing');
    const column = { ...base.column, height_m: 1.1, hetp_m: 0.25, heatLoss_W_K: 0, metal_J_K: 0, drop_Pa_m: 0 };
    const run = solve(
      trainProblem({
        still: { ...platedStill(0, 1, true), column },
        sheet: [{ reflux: 'total', until: [{ kind: 'duration', seconds: 40_000 }] }],
        tolerance: 1e-6,
      }),
      system,
    );
    expect(run.plates).toBe(5);
    const steps = staircase({
      slice: system.curve().at(101325),
      kettleMoleFraction: run.kettleMoleFraction.at(-1)!,
      plates: 5,
      efficiency: 4.4 / 5,
      reflux: 'total',
    });
    expect(Math.abs(run.spoutMoleFraction.at(-1)! - steps.headMoleFraction)).toBeLessThan(settled);
  });
});

describe('a charge', () => {
  // Eight plates of 100 mL and a condenser hold some 22 mol between them.
  const charged = (amount_mol: number): (() => unknown) => {
    const sheet = [{ reflux: 'total', until: [{ kind: 'duration', seconds: 10 }] }] as const;
    return () => solve(trainProblem({ charge: { kind: 'amount', amount_mol, moleFraction: 0.1 }, sheet }), system);
  };

  it('is to be more than twice what plates, head and condenser hold', () => {
    expect(charged(60)).not.toThrow();
    for (const amount_mol of [40, 33, 28]) {
      expect(charged(amount_mol)).toThrow(InputError);
      expect(charged(amount_mol)).toThrow('plates, head and condenser that hold less than half the charge');
    }
  });
});
