// Compiles the equilibrium of a model into tables: in x clamped C² cubic splines with exact end slopes, in
// u = ln P scaled to [−1, 1] Chebyshev polynomials of the knots' values and slopes. A spline is linear in its
// knots, so a table interpolated in u is the spline at that pressure, and the derivatives by P are exact.
//
//   α(x, P) = Σ_j T_j(u) Σ_k a_jk B_k(x);  likewise T and the heat of vaporisation;  y = α x/(1 + (α − 1) x)
//
// Intervals and pressure nodes were chosen by measurement: tests/lib/equilibrium/compile-curve.test.ts.

import { fieldFaults, listFault, refuse, typeCode } from '../arguments.js';
import { checkRange, InputError } from '../errors.js';
import type { ActivityModel } from '../mixture/activity/activity-model.js';
import { isModel } from '../mixture/activity/registry.js';
import { chebyshevNodes, chebyshevTransform } from '../numerics/chebyshev.js';
import { splineSlopes } from '../numerics/spline.js';
import type { Pascal } from '../units/quantities.js';
import { bubbleSolver, EQUILIBRIUM_RANGE_PA } from './bubble-state.js';
import { compiledCurve, QUANTITIES } from './compiled-curve.js';
import type { EquilibriumCurve } from './equilibrium-curve.js';
import { latentHeat, latentHeatSlope } from './latent-heat.js';

/** What may be chosen when compiling. */
export interface CompileOptions {
  /** Pressures to cover, Pa; default 20 to 300 kPa. */
  readonly range_Pa?: readonly [Pascal, Pascal];
  /** Intervals in x; default 256. */
  readonly intervals?: number;
  /** Chebyshev nodes in ln P; default 8. */
  readonly pressureNodes?: number;
}

/** Pressures a curve covers unless others are asked for, Pa: vacuum stills, mountains, tall columns. Source: this project's choice. */
export const COMPILED_RANGE_PA: readonly [Pascal, Pascal] = Object.freeze([20e3, 300e3] as const);

/**
 * The equilibrium of a model as a fast, twice continuously differentiable curve in composition and pressure.
 *
 * Equation: cubic splines in x of α, T and the heat of vaporisation, Chebyshev polynomials in ln P; y = α x/(1 + (α − 1) x).
 * @param model Activity model that gives γ.
 * @param options Pressures to cover [Pa], at most 2 kPa to 2 MPa; default 20 to 300 kPa, where y is within 1e-7 of the bubble point.
 * @returns The compiled curve; outside its pressures it throws.
 * @throws InputError when the range is not inside 2 kPa to 2 MPa or not rising.
 * @example vapourOnSlice(compileCurve(activityModel('redlich-kister')).at(101325), 0.5) // → 0.6539
 * Source: this project, docs/theory/equilibrium.md.
 */
export function compileCurve(model: ActivityModel, options: CompileOptions = {}): EquilibriumCurve {
  if (!isModel(model))
    throw new InputError({ code: typeCode(model), argument: 'model', value: model, expected: 'an activity model' });
  refuse(fieldFaults('options', options, ['range_Pa', 'intervals', 'pressureNodes']));
  const { range_Pa = COMPILED_RANGE_PA, intervals = 256, pressureNodes: nodes = 8 } = options;
  checkOptions(range_Pa, intervals, nodes);

  const knots = intervals + 1;
  const stride = 2 * QUANTITIES * knots;
  const middle = 0.5 * (Math.log(range_Pa[0]) + Math.log(range_Pa[1]));
  const half = 0.5 * Math.log(range_Pa[1] / range_Pa[0]);
  const solve = bubbleSolver(model);
  const sampled = Array.from(chebyshevNodes(nodes), (u) => sample(solve, Math.exp(middle + half * u), intervals));

  // coefficients[entry · nodes + j] is Chebyshev coefficient j of that entry.
  const coefficients = new Float64Array(stride * nodes);
  const transform = chebyshevTransform(nodes);
  for (let entry = 0; entry < stride; entry++) {
    for (let j = 0; j < nodes; j++) {
      let sum = 0;
      for (let i = 0; i < nodes; i++) sum += transform[j * nodes + i]! * sampled[i]![entry]!;
      coefficients[entry * nodes + j] = sum;
    }
  }
  return compiledCurve({ model: model.name, range_Pa, intervals, nodes, middle, half, coefficients });
}

/** Values and slopes per interval at the knots at one pressure: for each knot α, α′, T, T′, L, L′. */
function sample(solve: ReturnType<typeof bubbleSolver>, pressure_Pa: Pascal, intervals: number): Float64Array {
  const values = Array.from({ length: QUANTITIES }, () => new Float64Array(intervals + 1));
  const ends: number[][] = [];
  for (let k = 0; k <= intervals; k++) {
    const state = solve(k / intervals, pressure_Pa);
    values[0]![k] = state.alpha;
    values[1]![k] = state.temperature_K;
    values[2]![k] = latentHeat(state);
    if (k === 0 || k === intervals) ends.push([state.alphaSlope, state.temperatureSlope, latentHeatSlope(state)]);
  }
  const out = new Float64Array(2 * QUANTITIES * (intervals + 1));
  for (let q = 0; q < QUANTITIES; q++) {
    const slopes = splineSlopes(values[q]!, ends[0]![q]! / intervals, ends[1]![q]! / intervals);
    for (let k = 0; k <= intervals; k++) {
      out[2 * (k * QUANTITIES + q)] = values[q]![k]!;
      out[2 * (k * QUANTITIES + q) + 1] = slopes[k]!;
    }
  }
  return out;
}

function checkOptions(range_Pa: readonly [Pascal, Pascal], intervals: number, nodes: number): void {
  refuse(listFault('options.range_Pa', range_Pa, 'two pressures', 2, 2));
  const [lowest, highest] = EQUILIBRIUM_RANGE_PA;
  checkRange(
    'options.range_Pa[0]',
    range_Pa[0],
    lowest,
    highest,
    `a pressure from ${String(lowest)} to ${String(highest)} Pa`,
  );
  checkRange(
    'options.range_Pa[1]',
    range_Pa[1],
    range_Pa[0] * 1.01,
    highest,
    `a pressure above the first, up to ${String(highest)} Pa`,
  );
  checkWhole('options.intervals', intervals, 8, 65536);
  checkWhole('options.pressureNodes', nodes, 2, 40);
}

function checkWhole(argument: string, value: number, low: number, high: number): void {
  if (Number.isInteger(value) && value >= low && value <= high) return;
  throw new InputError({ argument, value, expected: `a whole number from ${String(low)} to ${String(high)}` });
}
