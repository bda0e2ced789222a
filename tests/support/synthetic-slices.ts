// Equilibrium slices made for tests: constant relative volatility, and published tables of x and y.

import type { CurveSlice } from '#lib/index.js';

/** A slice of constant relative volatility, boiling temperature and heat of vaporisation. */
export function constantAlphaSlice(alpha: number, latentHeat = 40e3): CurveSlice {
  const intervals = 8;
  return {
    pressure_Pa: 101325,
    intervals,
    alpha: tableOf(() => alpha, intervals),
    temperature: tableOf(() => 365, intervals),
    latentHeat: tableOf(() => latentHeat, intervals),
  };
}

/** A slice through published points, ln α straight between them in x (α at the ends as at the nearest point). */
export function sliceThrough(points: readonly (readonly [x: number, y: number])[]): CurveSlice {
  const inside = points.filter(([x, y]) => x > 0 && x < 1 && y > 0 && y < 1);
  const logs = inside.map(([x, y]) => [x, Math.log((y / x) * ((1 - x) / (1 - y)))] as const);
  const logAlpha = (x: number): number => {
    const after = logs.findIndex(([at]) => at >= x);
    if (after === 0) return logs[0]![1];
    if (after < 0) return logs.at(-1)![1];
    const [x0, f0] = logs[after - 1]!;
    const [x1, f1] = logs[after]!;
    return f0 + ((x - x0) / (x1 - x0)) * (f1 - f0);
  };
  const intervals = 2000;
  return { ...constantAlphaSlice(1), intervals, alpha: tableOf((x) => Math.exp(logAlpha(x)), intervals) };
}

/** Straight pieces between the values of f at the knots. */
function tableOf(f: (x: number) => number, intervals: number): Float64Array {
  const table = new Float64Array(4 * intervals);
  for (let k = 0; k < intervals; k++) {
    table[4 * k] = f(k / intervals);
    table[4 * k + 1] = f((k + 1) / intervals) - f(k / intervals);
  }
  return table;
}
