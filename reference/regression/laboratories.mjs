// How far a laboratory's points lie from the reference model, and how sure the model itself is:
//   - every set is left out of the fit in turn; the shifts of the parameters give their covariance (a jackknife over sets,
//     J. W. Tukey, Ann. Math. Stat. 29 (1958) 614) to which that of the fit itself is added,
//   - points of a set are compared with the model that has not seen the set; what they miss beyond the model's own
//     error is put down to the laboratory: an error in the liquid's composition, in the vapour's, in temperature and in
//     pressure, each with one constant for all laboratories, the likeliest, every set counting once.
// The formulas are those of lib/equilibrium/uncertainty.ts.

import { bubbleSolver } from '../../dist/lib/equilibrium/bubble-state.js';
import { azeotropeError, laboratoryErrors } from '../../dist/lib/equilibrium/laboratory.js';
import { SETS } from './measurements.mjs';
import { expansion, SERIES, STRETCH, CROSS } from './models.mjs';
import { residualsOf } from './residuals-of.mjs';

/** { set: parameters fitted without it }. */
export function leftOut(fit, form, found, sets, scatter) {
  return Object.fromEntries(
    sets.map((entry) => {
      const without = fit(form, { sets: sets.filter((other) => other !== entry), scatter, start: found.parameters });
      if (without.ending !== 'converged') throw new Error(`without ${entry.set} the fit did not converge`);
      return [entry.set, Array.from(without.parameters)];
    }),
  );
}

/** Covariance of the parameters, row by row: jackknife over sets plus that of the fit. */
export function covarianceOf(found, without) {
  const n = found.parameters.length;
  const shifts = Object.values(without).map((each) => each.map((value, i) => value - found.parameters[i]));
  const share = (shifts.length - 1) / shifts.length;
  const reduced = found.sumOfSquares / found.degreesOfFreedom;
  return Array.from(found.inverseNormal, (value, at) => {
    const [i, j] = [Math.floor(at / n), at % n];
    return reduced * value + share * shifts.reduce((sum, shift) => sum + shift[i] * shift[j], 0);
  });
}

/** Standard error of a function of the parameters. */
function errorOf(value, parameters, covariance) {
  const n = parameters.length;
  const gradient = Array.from(parameters, (_, i) => {
    const moved = Float64Array.from(parameters);
    moved[i] += STEP;
    const above = value(moved);
    moved[i] -= 2 * STEP;
    return above.map((each, k) => (each - value(moved)[k]) / (2 * STEP));
  });
  return gradient[0].map((_, k) => {
    let sum = 0;
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++) sum += gradient[i][k] * covariance[i * n + j] * gradient[j][k];
    return Math.sqrt(sum);
  });
}
const STEP = 1e-4;

/** Points of every set against the model that has not seen it: state, misses of T and y, errors of the model itself. */
export function missesOf(form, found, covariance, without) {
  return SETS.filter(({ kind, role }) => ['isothermal', 'isobaric'].includes(kind) && role !== 'outside').flatMap(
    (entry) => {
      const model = form.model(Float64Array.from(without[entry.set] ?? found.parameters));
      const solve = bubbleSolver(model);
      const pressures = residualsOf(model, entry, { own: true }).filter(({ quantity }) => quantity === 'P');
      return entry.points.map((point, i) => {
        const state = { ...solve(point.x, point.pressure) };
        const thermal = state.vapour * state.thermalEthanol + (1 - state.vapour) * state.thermalWater;
        // A pressure at one temperature, relative to the set's own pure ends, is a temperature at one pressure.
        const temperature =
          entry.kind === 'isothermal' ? -pressures[i].residual / thermal : state.temperature_K - point.temperature;
        const at = (parameters) => {
          const moved = bubbleSolver(form.model(parameters))(point.x, point.pressure);
          return [moved.temperature_K, moved.vapour];
        };
        const [byModelT, byModelY] = errorOf(at, found.parameters, covariance);
        return {
          set: entry.set,
          role: entry.role,
          x: point.x,
          pressure_Pa: point.pressure,
          state,
          temperature: entry.use === undefined || entry.use.includes('T_K') ? temperature : undefined,
          vapour: point.y === undefined || entry.sigma.y === undefined ? undefined : state.vapour - point.y,
          curve: { temperature_K: byModelT, vapourMoleFraction: byModelY },
        };
      });
    },
  );
}

/** The ranges in which the share of points within two errors is counted. */
export const RANGES = {
  all: () => true,
  'x below 0.12': ({ x }) => x < 0.12,
  'x 0.12 to 0.4': ({ x }) => x >= 0.12 && x < 0.4,
  'x 0.4 to 0.8': ({ x }) => x >= 0.4 && x < 0.8,
  'x above 0.8': ({ x }) => x >= 0.8,
  'below 70 kPa': ({ pressure_Pa }) => pressure_Pa < 70e3,
  '70 to 200 kPa': ({ pressure_Pa }) => pressure_Pa >= 70e3 && pressure_Pa < 200e3,
  'above 200 kPa': ({ pressure_Pa }) => pressure_Pa >= 200e3,
  'sets held back': ({ role }) => role === 'held back',
};

/** Mean over sets of the mean −2 ln likelihood of what one quantity misses. */
function unlikely(rows, miss, error) {
  const bySet = new Map();
  for (const row of rows) {
    const residual = miss(row);
    if (residual === undefined) continue;
    const s = error(row);
    const value = (residual / s) ** 2 + 2 * Math.log(s);
    const of = bySet.get(row.set) ?? [0, 0];
    bySet.set(row.set, [of[0] + value, of[1] + 1]);
  }
  return [...bySet.values()].reduce((sum, [total, count]) => sum + total / count, 0);
}

/** The constants of the laboratories that make the misses likeliest: by turns along each axis, in ever smaller steps. */
export function likeliestLaboratory(rows) {
  let constants = { composition: 0.08, vapour: 0.03, vapourWeak: 0.07, temperature_K: 0.15, atOneMPa_K: 1 };
  const value = (of) =>
    unlikely(
      rows,
      ({ temperature }) => temperature,
      (row) =>
        Math.hypot(row.curve.temperature_K, laboratoryErrors(of, row.x, row.pressure_Pa, row.state).temperature_K),
    ) +
    unlikely(
      rows,
      ({ vapour }) => vapour,
      (row) =>
        Math.hypot(
          row.curve.vapourMoleFraction,
          laboratoryErrors(of, row.x, row.pressure_Pa, row.state).vapourMoleFraction,
        ),
    );
  let best = value(constants);
  for (let factor = 1.5; factor > 1.001; factor = Math.sqrt(factor)) {
    for (let moved = true; moved;) {
      moved = false;
      for (const name of Object.keys(constants)) {
        for (const step of [factor, 1 / factor]) {
          const tried = { ...constants, [name]: constants[name] * step };
          const found = value(tried);
          if (found < best - 1e-9) [constants, best, moved] = [tried, found, true];
        }
      }
    }
  }
  const rounded = Object.fromEntries(
    Object.entries(constants).map(([name, each]) => [name, Number(each.toPrecision(2))]),
  );
  return widened(rounded, rows);
}

/**
 * The constant of temperature, raised by hundredths of a kelvin until nine of ten boiling points lie within two errors in
 * every range: the likeliest is held down by the static sets, whose temperatures are far better than most.
 */
function widened(constants, rows) {
  const covers = (of) =>
    Object.values(RANGES).every((inside) => {
      const counted = rows.filter((row) => row.temperature !== undefined && inside(row));
      const within = counted.filter(
        (row) =>
          Math.abs(row.temperature) <=
          2 *
            Math.hypot(row.curve.temperature_K, laboratoryErrors(of, row.x, row.pressure_Pa, row.state).temperature_K),
      );
      return within.length >= 0.9 * counted.length;
    });
  let wide = constants;
  while (!covers(wide)) wide = { ...wide, temperature_K: Number((wide.temperature_K + 0.01).toFixed(2)) };
  return wide;
}

/** Published azeotropes against the model that has not seen them: ln α at the published x, 0 if it were the model's own. */
export function azeotropeMisses(form, found, covariance, without) {
  const entry = SETS.find(({ kind }) => kind === 'azeotrope');
  const volatility = (parameters, { x, pressure }) =>
    Math.log(bubbleSolver(form.model(Float64Array.from(parameters)))(x, pressure).alpha);
  return entry.points
    .filter(({ pressure }) => pressure <= 1.1e6)
    .map((point) => ({
      ...point,
      miss: volatility(without.azeotrope, point),
      fitted: volatility(found.parameters, point),
      curve: errorOf((parameters) => [volatility(parameters, point)], found.parameters, covariance)[0],
    }));
}

/** The errors of ln α between published azeotropes beyond the model's own: at 1 atm, and for each factor e in pressure from it. */
export function likeliestAzeotrope(rows) {
  let best = { value: Infinity };
  for (let near = 1e-4; near < 0.01; near += 1e-4) {
    for (let away = 0; away < 0.01; away += 1e-4) {
      const value = rows.reduce((sum, { miss, curve, pressure }) => {
        const error = Math.hypot(curve, azeotropeError({ azeotrope: near, azeotropeAway: away }, pressure));
        return sum + (miss / error) ** 2 + 2 * Math.log(error);
      }, 0);
      if (value < best.value) best = { value, near, away };
    }
  }
  // Raised until nine of ten published values lie within two errors of the model as it is, too.
  const covered = (near) =>
    rows.filter(
      ({ fitted, curve, pressure }) =>
        Math.abs(fitted) <=
        2 * Math.hypot(curve, azeotropeError({ azeotrope: near, azeotropeAway: best.away }, pressure)),
    ).length;
  let { near } = best;
  while (covered(near) < 0.9 * rows.length) near += 1e-4;
  return { azeotrope: Number(near.toFixed(4)), azeotropeAway: Number(best.away.toFixed(4)) };
}

/**
 * What the vapour's cross coefficient leaves open: half the change of ln α and of T between fits with c 0.1 smaller and
 * larger, its root mean square over liquids from 0.01 to 0.9 at 20, 101 and 300 kPa; of ln α in proportion to 1 − x.
 */
export function crossErrors(fit, found, scatter) {
  const [below, above] = [CROSS - CROSS_STEP, CROSS + CROSS_STEP].map((cross) => {
    const form = expansion(STRETCH, SERIES, cross);
    const { parameters } = fit(form, { scatter, start: found.parameters });
    return { parameters, solve: bubbleSolver(form.model(parameters)) };
  });
  const [low, high] = [below.solve, above.solve];
  const rows = [20e3, 101325, 300e3].flatMap((pressure_Pa) =>
    [0.01, 0.03, 0.06, 0.12, 0.3, 0.5, 0.7, 0.9].map((x) => {
      const [a, b] = [{ ...low(x, pressure_Pa) }, { ...high(x, pressure_Pa) }];
      return { x, volatility: Math.log(a.alpha / b.alpha) / 2, temperature: (a.temperature_K - b.temperature_K) / 2 };
    }),
  );
  const sum = (values) => values.reduce((total, each) => total + each, 0);
  const volatility = Math.sqrt(sum(rows.map((row) => row.volatility ** 2)) / sum(rows.map(({ x }) => (1 - x) ** 2)));
  const temperature_K = Math.sqrt(sum(rows.map((row) => row.temperature ** 2)) / rows.length);
  return {
    errors: { crossVolatility: Number(volatility.toPrecision(2)), cross_K: Number(temperature_K.toPrecision(2)) },
    /** By how much each parameter follows the cross coefficient's standard error. */
    follows: Array.from(above.parameters, (value, i) => (value - below.parameters[i]) / 2),
  };
}

/** What is left open of c, as a standard error. */
export const CROSS_STEP = 0.1;
