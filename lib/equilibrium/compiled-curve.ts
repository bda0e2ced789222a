// The compiled equilibrium at work: reads the tables that compile-curve.ts made.

import { checkRange } from '../errors.js';
import { chebyshevBasis } from '../numerics/chebyshev.js';
import { writeCubic } from '../numerics/spline.js';
import type { Pascal } from '../units/quantities.js';
import type { CurvePoint, CurveSlice, EquilibriumCurve } from './equilibrium-curve.js';

/** Quantities in the tables: relative volatility, temperature, heat of vaporisation. */
export const QUANTITIES = 3;

/** Chebyshev coefficients of the knots, entry by entry: for each knot α, α′, T, T′, L, L′ (slopes per interval). */
export interface CurveTables {
  readonly model: string;
  readonly range_Pa: readonly [Pascal, Pascal];
  readonly intervals: number;
  readonly nodes: number;
  /** Middle and half-width of ln P. */
  readonly middle: number;
  readonly half: number;
  readonly coefficients: Float64Array;
}

/** The curve that reads these tables. */
export function compiledCurve(tables: CurveTables): EquilibriumCurve {
  const { model, range_Pa, intervals, nodes, middle, half, coefficients } = tables;
  const basis = new Float64Array(nodes);
  const basisSlopes = new Float64Array(nodes);
  // Knot values at the two ends of an interval, and their derivatives by u.
  const local = new Float64Array(4 * QUANTITIES);
  const localByPressure = new Float64Array(4 * QUANTITIES);
  const cubic = new Float64Array(4);

  return { model, range_Pa, at, evaluate };

  function setPressure(pressure_Pa: Pascal): void {
    const [low, high] = range_Pa;
    checkRange('pressure_Pa', pressure_Pa, low, high, `a pressure from ${String(low)} to ${String(high)} Pa`);
    chebyshevBasis((Math.log(pressure_Pa) - middle) / half, basis, basisSlopes);
  }

  function at(pressure_Pa: Pascal): CurveSlice {
    setPressure(pressure_Pa);
    const knotValues = new Float64Array(2 * QUANTITIES * (intervals + 1));
    for (let entry = 0, c = 0; entry < knotValues.length; entry++) {
      let sum = 0;
      for (let j = 0; j < nodes; j++) sum += basis[j]! * coefficients[c++]!;
      knotValues[entry] = sum;
    }
    const table = (quantity: number): Float64Array => {
      const out = new Float64Array(4 * intervals);
      const step = 2 * QUANTITIES;
      for (let k = 0, i = 2 * quantity; k < intervals; k++, i += step) {
        writeCubic(out, 4 * k, knotValues[i]!, knotValues[i + 1]!, knotValues[i + step]!, knotValues[i + step + 1]!);
      }
      return out;
    };
    return { pressure_Pa, intervals, alpha: table(0), temperature: table(1), latentHeat: table(2) };
  }

  function evaluate(x: number, pressure_Pa: Pascal, out: CurvePoint): CurvePoint {
    checkRange('x', x, 0, 1, 'a mole fraction of ethanol from 0 to 1');
    setPressure(pressure_Pa);
    const position = x * intervals;
    const k = position <= 0 ? 0 : position >= intervals ? intervals - 1 : position | 0;
    const s = position - k;
    for (let entry = 0, c = 2 * QUANTITIES * k * nodes; entry < local.length; entry++) {
      let sum = 0;
      let byPressure = 0;
      for (let j = 0; j < nodes; j++, c++) {
        sum += basis[j]! * coefficients[c]!;
        byPressure += basisSlopes[j]! * coefficients[c]!;
      }
      local[entry] = sum;
      localByPressure[entry] = byPressure;
    }
    const perPascal = 1 / (half * pressure_Pa);
    const alpha = value(local, 0, s);
    const alpha_x = slope(s) * intervals;
    const alpha_P = value(localByPressure, 0, s) * perPascal;
    out.temperature_K = value(local, 1, s);
    out.temperatureByLiquid_K = slope(s) * intervals;
    out.temperatureByPressure_K_Pa = value(localByPressure, 1, s) * perPascal;
    out.latentHeat_J_mol = value(local, 2, s);
    out.latentHeatByLiquid_J_mol = slope(s) * intervals;
    out.latentHeatByPressure_J_mol_Pa = value(localByPressure, 2, s) * perPascal;
    const denominator = 1 + (alpha - 1) * x;
    const square = denominator * denominator;
    out.vapourMoleFraction = (alpha * x) / denominator;
    out.vapourByLiquid = (alpha + alpha_x * x * (1 - x)) / square;
    out.vapourByPressure_1_Pa = (alpha_P * x * (1 - x)) / square;
    return out;
  }

  /** One quantity at s in the interval; leaves its cubic in `cubic` for `slope`. */
  function value(knots: Float64Array, quantity: number, s: number): number {
    const i = 2 * quantity;
    const next = i + 2 * QUANTITIES;
    writeCubic(cubic, 0, knots[i]!, knots[i + 1]!, knots[next]!, knots[next + 1]!);
    return cubic[0]! + s * (cubic[1]! + s * (cubic[2]! + s * cubic[3]!));
  }

  /** Derivative by s of the cubic last written. */
  function slope(s: number): number {
    return cubic[1]! + s * (2 * cubic[2]! + s * 3 * cubic[3]!);
  }
}
