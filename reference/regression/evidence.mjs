// What each set says by itself, before any weight: reductions and consistency tests, for docs/theory/residuals.md.
//   Barker: pressures at one temperature fix gE alone (J. A. Barker, Aust. J. Chem. 6 (1953) 207); six terms, the set's own
//     pure pressures; its vapour follows.
//   point test: the same from boiling temperatures, five terms added to the model's gE; the vapour that follows is compared
//     with the measured one (H. C. Van Ness, S. M. Byer, R. E. Gibbs, AIChE J. 19 (1973) 238).
//   area test: ∫ ln(γ1/γ2) dx of the measured γ less that of the model, whose area is right by construction, as a share of
//     ∫ |ln(γ1/γ2)| dx (O. Redlich, A. T. Kister, Ind. Eng. Chem. 40 (1948) 345).

import { pressureOver } from '../../dist/lib/equilibrium/bubble-pressure.js';
import { bubbleSolver } from '../../dist/lib/equilibrium/bubble-state.js';
import { EXPANSION } from '../../dist/lib/mixture/activity/redlich-kister.js';
import { leastSquares } from '../../dist/lib/numerics/least-squares.js';
import { ethanol, water } from '../../dist/lib/index.js';
import { SETS } from './measurements.mjs';
import { expansion } from './models.mjs';

export const STATIC = SETS.filter(
  ({ kind, role, pure }) => kind === 'isothermal' && role !== 'outside' && pure !== undefined,
);
const gamma = (model, x, temperature_K) => {
  const out = {};
  model.activity(x, temperature_K, out);
  return x === 0 ? Math.exp(out.lnGammaEthanol) : Math.exp(out.lnGammaWater);
};
const fitted = (residualCount, start, residuals) =>
  leastSquares({ residualCount, start, residuals }, { tolerance: 1e-11 }).parameters;

/** gE of one static set alone: the model it makes, and the scatter of its pressures. */
export function barker(entry, terms = 6) {
  const form = expansion(EXPANSION.stretch, [terms, 0, 0, 0], EXPANSION.cross);
  const { points, pure } = entry;
  const misses = (model) =>
    points.map((point) => pressureOver(model, point.x, point.temperature, pure).pressure_Pa / point.pressure - 1);
  const parameters = fitted(points.length, form.start, (vector, out) =>
    out.set(misses(form.model(vector)).map((miss) => 1000 * miss)),
  );
  const model = form.model(parameters);
  const sum = misses(model).reduce((total, miss) => total + miss * miss, 0);
  return { model, scatter: Math.sqrt(sum / (points.length - terms)) };
}

/** What a static set says against a model: { scatter, limits, pure, pressure, vapour }, the last two the largest of x 0.01 to 0.12. */
export function staticEvidence(model, entry) {
  const { model: own, scatter } = barker(entry);
  const { points, pure } = entry;
  const temperature = points[0].temperature;
  const weak = points.filter(({ x }) => x >= 0.01 && x <= 0.12);
  const largest = (values) => values.reduce((most, each) => (Math.abs(each) > Math.abs(most) ? each : most), 0);
  const over = (of, x) => pressureOver(of, x, temperature, pure);
  return {
    scatter,
    limits: [gamma(own, 0, temperature), gamma(own, 1, temperature)],
    pure: [
      pure.ethanol_Pa / ethanol.saturationPressure(temperature) - 1,
      pure.water_Pa / water.saturationPressure(temperature) - 1,
    ],
    count: weak.length,
    pressure: largest(weak.map(({ x, pressure }) => over(model, x).pressure_Pa / pressure - 1)),
    vapour: largest(weak.map(({ x }) => over(model, x).vapourMoleFraction - over(own, x).vapourMoleFraction)),
  };
}

/** Point and area tests of a set at one pressure: { weak, middle, strong, area }, Δy = y of its temperatures less y measured. */
export function isobaricEvidence(entry) {
  const points = entry.points.filter(({ y }) => y !== undefined);
  const { series } = EXPANSION;
  const shifted = (vector) =>
    expansion(
      EXPANSION.stretch,
      series.map(({ length }) => length),
      EXPANSION.cross,
    ).model(Float64Array.from([...series[0].map((value, k) => value + (vector[k] ?? 0)), ...series.slice(1).flat()]));
  const boil = (model) => {
    const solve = bubbleSolver(model);
    return points.map(({ x, pressure }) => ({ ...solve(x, pressure) }));
  };
  const parameters = fitted(points.length, [0, 0, 0, 0, 0], (vector, out) =>
    out.set(boil(shifted(vector)).map(({ temperature_K }, i) => temperature_K - points[i].temperature)),
  );
  const misses = boil(shifted(parameters)).map(({ vapour }, i) => ({ x: points[i].x, miss: vapour - points[i].y }));
  const mean = (low, high) => {
    const inside = misses.filter(({ x }) => x >= low && x < high);
    return inside.length === 0 ? undefined : inside.reduce((sum, { miss }) => sum + miss, 0) / inside.length;
  };
  return { weak: mean(0, 0.12), middle: mean(0.12, 0.4), strong: mean(0.4, 1), area: area(points, boil(shifted([]))) };
}

/** ∫ Δ ln(γ1/γ2) dx over ∫ |ln(γ1/γ2)| dx, Δ zero at both ends. */
function area(points, states) {
  const model = shiftedNone();
  const lines = points
    .map(({ x, y }, i) => ({
      x,
      // ln(γ1/γ2) = ln α − ln(p1/p2) − vapour; what is measured and what is the model's differ by ln α alone.
      difference: Math.log((y * (1 - x)) / (x * (1 - y))) - Math.log(states[i].alpha),
    }))
    .sort((a, b) => a.x - b.x);
  const ends = [{ x: 0, difference: 0 }, ...lines, { x: 1, difference: 0 }];
  let sum = 0;
  for (let i = 1; i < ends.length; i++) {
    sum += 0.5 * (ends[i].x - ends[i - 1].x) * (ends[i].difference + ends[i - 1].difference);
  }
  let whole = 0;
  const out = {};
  for (let i = 0; i < 400; i++) {
    model.activity((i + 0.5) / 400, points[0].temperature, out);
    whole += Math.abs(out.lnGammaEthanol - out.lnGammaWater) / 400;
  }
  return sum / whole;
}
const shiftedNone = () =>
  expansion(
    EXPANSION.stretch,
    EXPANSION.series.map(({ length }) => length),
    EXPANSION.cross,
  ).model(Float64Array.from(EXPANSION.series.flat()));
