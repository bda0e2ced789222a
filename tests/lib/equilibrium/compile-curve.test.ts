import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ACTIVITY_NAMES,
  activityModel,
  compileCurve,
  createEthanolWater,
  type CurvePoint,
  InputError,
  latentHeatOnSlice,
  temperatureOnSlice,
  vapourOnSlice,
} from '#lib/index.js';
import { bubbleSolver } from '#lib/equilibrium/bubble-state.js';
import { latentHeat } from '#lib/equilibrium/latent-heat.js';

const system = createEthanolWater();

function blank(): CurvePoint {
  return {
    vapourMoleFraction: 0,
    vapourByLiquid: 0,
    vapourByPressure_1_Pa: 0,
    temperature_K: 0,
    temperatureByLiquid_K: 0,
    temperatureByPressure_K_Pa: 0,
    latentHeat_J_mol: 0,
    latentHeatByLiquid_J_mol: 0,
    latentHeatByPressure_J_mol_Pa: 0,
  };
}

/** Largest errors against direct bubble points at compositions and pressures that are no knots and no nodes. */
function largestErrors(name: (typeof ACTIVITY_NAMES)[number]): { y: number; temperature: number; heat: number } {
  const solve = bubbleSolver(activityModel(name));
  const curve = system.curve(name);
  const worst = { y: 0, temperature: 0, heat: 0 };
  for (let i = 0; i <= 24; i++) {
    const pressure_Pa = Math.min(300e3, 20e3 * 15 ** (i / 24));
    const slice = curve.at(pressure_Pa);
    for (let k = 0; k <= 1000; k++) {
      const x = k <= 200 ? (0.02 * k) / 200 : 0.02 + (0.98 * (k - 200)) / 800;
      const direct = solve(x, pressure_Pa);
      worst.y = Math.max(worst.y, Math.abs(vapourOnSlice(slice, x) - direct.vapour));
      worst.temperature = Math.max(worst.temperature, Math.abs(temperatureOnSlice(slice, x) - direct.temperature_K));
      worst.heat = Math.max(worst.heat, Math.abs(latentHeatOnSlice(slice, x) - latentHeat(direct)));
    }
  }
  return worst;
}

describe('the compiled curve', () => {
  it.each(ACTIVITY_NAMES)('of %s is within 1e-7 in y, 1e-4 K and 0.05 J/mol of the direct bubble point', (name) => {
    // Found with 256 intervals and 8 nodes: y 9e-9, 1.9e-5 K, 0.0075 J/mol at worst. 128 intervals give 1.3e-7 in y.
    const worst = largestErrors(name);
    expect(worst.y).toBeLessThan(1e-7);
    expect(worst.temperature).toBeLessThan(1e-4);
    expect(worst.heat).toBeLessThan(0.05);
  });

  it('gives the same values through evaluate as through a slice', () => {
    const curve = system.curve();
    for (const pressure_Pa of [20e3, 101325, 300e3]) {
      const slice = curve.at(pressure_Pa);
      for (const x of [0, 0.0123, 0.5, 0.894, 1]) {
        const point = curve.evaluate(x, pressure_Pa, blank());
        expect(Math.abs(point.vapourMoleFraction - vapourOnSlice(slice, x))).toBeLessThan(1e-13);
        expect(Math.abs(point.temperature_K - temperatureOnSlice(slice, x))).toBeLessThan(1e-10);
        expect(Math.abs(point.latentHeat_J_mol - latentHeatOnSlice(slice, x))).toBeLessThan(1e-7);
      }
    }
  });

  it('has derivatives that are those of the compiled functions', () => {
    const curve = system.curve();
    const h = 1e-5;
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        fc.double({ min: 20.1e3, max: 299e3, noNaN: true }),
        (x, pressure_Pa) => {
          const at = (dx: number, dP: number): CurvePoint => curve.evaluate(x + dx, pressure_Pa + dP, blank());
          const point = at(0, 0);
          const [left, right] = [at(-h, 0), at(h, 0)];
          const [low, high] = [at(0, -1), at(0, 1)];
          // A central difference across a knot sees the jump of the third derivative: of order h² times it.
          const near = (slope: number, difference: number, scale: number): void => {
            expect(Math.abs(slope - difference)).toBeLessThan(2e-6 * scale);
          };
          near(point.vapourByLiquid, (right.vapourMoleFraction - left.vapourMoleFraction) / (2 * h), 13);
          near(point.temperatureByLiquid_K, (right.temperature_K - left.temperature_K) / (2 * h), 400);
          near(point.latentHeatByLiquid_J_mol, (right.latentHeat_J_mol - left.latentHeat_J_mol) / (2 * h), 5e4);
          near(point.vapourByPressure_1_Pa, (high.vapourMoleFraction - low.vapourMoleFraction) / 2, 1e-5);
          near(point.temperatureByPressure_K_Pa, (high.temperature_K - low.temperature_K) / 2, 1e-2);
          near(point.latentHeatByPressure_J_mol_Pa, (high.latentHeat_J_mol - low.latentHeat_J_mol) / 2, 1);
        },
      ),
    );
  });

  it('is twice continuously differentiable at its knots', () => {
    const { alpha, intervals } = system.curve().at(87654);
    for (let k = 1; k < intervals; k++) {
      const left = 4 * (k - 1);
      const jump = 2 * alpha[left + 2]! + 6 * alpha[left + 3]! - 2 * alpha[left + 6]!;
      expect(Math.abs(jump)).toBeLessThan(1e-11);
    }
  });

  it('has y(0) = 0 and y(1) = 1 exactly', () => {
    const slice = system.curve('wilson').at(101325);
    expect(vapourOnSlice(slice, 0)).toBe(0);
    expect(vapourOnSlice(slice, 1)).toBe(1);
  });

  it('refuses pressures outside its range and ranges that make no sense', () => {
    const curve = system.curve('nrtl');
    expect(() => curve.at(19e3)).toThrow(/pressure_Pa is 19000; expected a pressure from 20000 to 300000 Pa/);
    expect(() => curve.evaluate(0.5, NaN, blank())).toThrow(InputError);
    expect(() => compileCurve(activityModel('nrtl'), { range_Pa: [100e3, 50e3] })).toThrow(/range_Pa\[1\]/);
    expect(() => compileCurve(activityModel('nrtl'), { range_Pa: [1, 50e3] })).toThrow(/range_Pa\[0\]/);
    expect(() => compileCurve(activityModel('nrtl'), { intervals: 10.5 })).toThrow(/intervals is 10.5/);
  });
});

describe('createEthanolWater', () => {
  it('compiles each curve once, and keeps it to itself', () => {
    expect(system.curve('nrtl')).toBe(system.curve('nrtl'));
    expect(system.curve()).toBe(system.curve('redlich-kister'));
    expect(createEthanolWater().curve('nrtl')).not.toBe(system.curve('nrtl'));
    expect(system.model('raoult').name).toBe('raoult');
  });
});
