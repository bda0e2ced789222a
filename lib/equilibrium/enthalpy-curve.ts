// What an energy balance asks of the boiling mixture, compiled like the equilibrium itself: along the boiling line the
// enthalpy h and molar volume v of the liquid against x, along the dew line the enthalpy H of the vapour against y, and the heat that
// separates colder liquid from the boiling line,
//
//   h(x, T_s) − h(x, T_s − d) = c₁(x) d + c₂(x) d²       exact at 20 °C and half way there
//
// Cubic splines in x or y, Chebyshev polynomials in ln P, as in compile-curve.ts.

import { checkRange } from '../errors.js';
import type { ActivityModel } from '../mixture/activity/activity-model.js';
import { liquidEnthalpy, vapourEnthalpy } from '../mixture/enthalpy.js';
import { densityOfLiquid } from '../mixture/hot-density.js';
import { massFractionFromMoleFraction } from '../mixture/strength.js';
import { MOLAR_MASS_ETHANOL, MOLAR_MASS_WATER } from '../constants.js';
import { chebyshevBasis, chebyshevNodes, chebyshevTransform } from '../numerics/chebyshev.js';
import { splineSlopes, writeCubic } from '../numerics/spline.js';
import type { MoleFraction, Pascal } from '../units/quantities.js';
import { bubbleSolver } from './bubble-state.js';
import type { CurveSlice, EquilibriumCurve } from './equilibrium-curve.js';
import { liquidOnSlice } from './liquid-on-slice.js';
import { readValue } from './slice-tables.js';

/** Pressures an enthalpy curve covers, Pa: water boils at 388 K at the upper end, and the heat capacities end at 390 K. */
export const ENTHALPY_RANGE_PA: readonly [Pascal, Pascal] = Object.freeze([20e3, 170e3] as const);

const INTERVALS = 256;
const NODES = 6;
/** Temperature a charge is counted from, K: the cold liquid's heat is exact there. */
export const COLD_K = 293.15;
const EDGE = 1e-5;

const QUANTITIES = ['liquid', 'volume', 'vapour', 'first', 'second'] as const;
type Quantity = (typeof QUANTITIES)[number];

/**
 * The tables at one pressure, `intervals` cubic pieces each, lowest power first in s = x · intervals − k. `boiling` has four quantities
 * by x interleaved (α, T [K], h [J/mol], v [m³/mol]), so that one interval is one stretch of memory; `vapour` H [J/mol] by y;
 * `cold` c₁ [J/(mol K)] and c₂ [J/(mol K²)] by x interleaved.
 */
export interface EnthalpySlice {
  readonly pressure_Pa: Pascal;
  readonly intervals: number;
  readonly boiling: Float64Array;
  readonly vapour: Float64Array;
  readonly cold: Float64Array;
}

/** Enthalpies and volumes at any pressure in the range. */
export interface EnthalpyCurve {
  at(pressure_Pa: Pascal): EnthalpySlice;
}

/** Compiles the enthalpies of a model; `curve` is the compiled equilibrium of the same model. */
export function compileEnthalpy(model: ActivityModel, curve: EquilibriumCurve): EnthalpyCurve {
  const [low, high] = ENTHALPY_RANGE_PA;
  const middle = 0.5 * (Math.log(low) + Math.log(high));
  const half = 0.5 * Math.log(high / low);
  const samples = Array.from(chebyshevNodes(NODES), (u) => sample(model, curve, Math.exp(middle + half * u)));
  const coefficients = transformed(samples);
  const basis = new Float64Array(NODES);
  const unused = new Float64Array(NODES);
  const knots = INTERVALS + 1;

  return { at };

  function at(pressure_Pa: Pascal): EnthalpySlice {
    checkRange('pressure_Pa', pressure_Pa, low, high, `a pressure from ${String(low)} to ${String(high)} Pa`);
    chebyshevBasis((Math.log(pressure_Pa) - middle) / half, basis, unused);
    const value = (quantity: Quantity, k: number, slope: 0 | 1): number => {
      let sum = 0;
      let c = NODES * (2 * (QUANTITIES.indexOf(quantity) * knots + k) + slope);
      for (let j = 0; j < NODES; j++) sum += basis[j]! * coefficients[c++]!;
      return sum;
    };
    const write = (quantity: Quantity, table: Float64Array, first: number, step: number): void => {
      let [f0, m0] = [value(quantity, 0, 0), value(quantity, 0, 1)];
      for (let k = 0; k < INTERVALS; k++) {
        const [f1, m1] = [value(quantity, k + 1, 0), value(quantity, k + 1, 1)];
        writeCubic(table, first + step * k, f0, m0, f1, m1);
        [f0, m0] = [f1, m1];
      }
    };
    const slice = curve.at(pressure_Pa);
    const boiling = new Float64Array(16 * INTERVALS);
    copy(slice, 'alpha', boiling, 0);
    copy(slice, 'temperature', boiling, 4);
    write('liquid', boiling, 8, 16);
    write('volume', boiling, 12, 16);
    const vapour = new Float64Array(4 * INTERVALS);
    write('vapour', vapour, 0, 4);
    const cold = new Float64Array(8 * INTERVALS);
    write('first', cold, 0, 8);
    write('second', cold, 4, 8);
    return { pressure_Pa, intervals: INTERVALS, boiling, vapour, cold };
  }
}

function copy(slice: CurveSlice, name: 'alpha' | 'temperature', table: Float64Array, first: number): void {
  if (slice.intervals !== INTERVALS) throw new Error(`a compiled curve of ${String(INTERVALS)} intervals is needed`);
  for (let k = 0; k < INTERVALS; k++) for (let c = 0; c < 4; c++) table[first + 16 * k + c] = slice[name][4 * k + c]!;
}

/** Knot values and slopes of all quantities at one pressure: per quantity and knot [value, slope per interval]. */
function sample(model: ActivityModel, curve: EquilibriumCurve, pressure_Pa: Pascal): Float64Array {
  const bubble = bubbleSolver(model);
  const slice = curve.at(pressure_Pa);
  const temperature = (x: MoleFraction): number => bubble(x, pressure_Pa).temperature_K;
  const below = (x: MoleFraction, depth: number): number => {
    const boiling_K = temperature(x);
    return liquidEnthalpy(x, boiling_K, model) - liquidEnthalpy(x, boiling_K - depth * (boiling_K - COLD_K), model);
  };
  const functions: Readonly<Record<Quantity, (x: MoleFraction) => number>> = {
    liquid: (x) => liquidEnthalpy(x, temperature(x), model),
    volume: (x) =>
      (x * MOLAR_MASS_ETHANOL + (1 - x) * MOLAR_MASS_WATER) /
      densityOfLiquid(massFractionFromMoleFraction(x), temperature(x)),
    vapour: (y) => vapourEnthalpy(y, readValue(slice.temperature, slice.intervals, liquidOnSlice(slice, y))),
    first: (x) => (4 * below(x, 0.5) - below(x, 1)) / (temperature(x) - COLD_K),
    second: (x) => (2 * below(x, 1) - 4 * below(x, 0.5)) / (temperature(x) - COLD_K) ** 2,
  };
  const knots = INTERVALS + 1;
  const out = new Float64Array(2 * QUANTITIES.length * knots);
  QUANTITIES.forEach((quantity, q) => {
    const f = functions[quantity];
    const values = Float64Array.from({ length: knots }, (_none, k) => f(k / INTERVALS));
    const start = (f(EDGE) - values[0]!) / EDGE / INTERVALS;
    const end = (values[INTERVALS]! - f(1 - EDGE)) / EDGE / INTERVALS;
    const slopes = splineSlopes(values, start, end);
    for (let k = 0; k < knots; k++) {
      out[2 * (q * knots + k)] = values[k]!;
      out[2 * (q * knots + k) + 1] = slopes[k]!;
    }
  });
  return out;
}

/** Chebyshev coefficients entry by entry: entry · NODES + j. */
function transformed(samples: readonly Float64Array[]): Float64Array {
  const transform = chebyshevTransform(NODES);
  const entries = samples[0]!.length;
  const out = new Float64Array(entries * NODES);
  for (let entry = 0; entry < entries; entry++) {
    for (let j = 0; j < NODES; j++) {
      let sum = 0;
      for (let i = 0; i < NODES; i++) sum += transform[j * NODES + i]! * samples[i]![entry]!;
      out[entry * NODES + j] = sum;
    }
  }
  return out;
}
