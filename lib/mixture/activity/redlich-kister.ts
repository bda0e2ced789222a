// The reference model: a Redlich-Kister expansion in a stretched composition w, ethanol (1) + water (2):
//   gE/RT = (x1 x2/D) Σ_k c_k(T) w^k,  D = x2 + ρ x1,  w = (x2 − ρ x1)/D,  ρ = 2
//   c_k(T) = a_k + b_k f1 + c_k f2 + d_k f3,  τ = T/T0
//   f1 = 1/τ − 1,  f2 = f1 + ln τ,  f3 = 1/τ + 2 ln τ − τ
// so that the heat of mixing is hE/(R T0) = (x1 x2/D) Σ_k (b_k + c_k (1 − τ) + d_k (τ − 1)²) w^k.
// ρ = 1 is the classical expansion; ρ above 1 gives the watery end, where γ changes fastest, more of the scale. ρ = 2
// was chosen, not fitted: reference/regression/models.mjs says why.
// Parameters: this project's regression, reference/regression, docs/theory/equilibrium.md.
// Source of the form: O. Redlich, A. T. Kister, Ind. Eng. Chem. 40 (1948) 345-348.

import { coefficientSeries } from '../../data/parameter-set.js';
import { REDLICH_KISTER_ETHANOL_WATER as set } from '../../data/redlich-kister-ethanol-water.js';
import type { Kelvin, MoleFraction } from '../../units/quantities.js';
import { virialVapour } from '../vapour/virial.js';
import type { ActivityModel } from './activity-model.js';
import { fittedRange } from './fitted-range.js';

/** Parameters of the expansion: coefficients of the terms k = 0, 1 ... for each function of temperature. */
export interface ExpansionParameters {
  /** Stretch ρ. */
  readonly stretch: number;
  /** T0, K. */
  readonly middle_K: Kelvin;
  /** a, b, c and d; a series may be shorter than a, its missing terms are 0. */
  readonly series: readonly (readonly number[])[];
  /** c of the vapour's cross coefficient B12 = (1 + c) (B11 + B22)/2, with which the series were fitted. */
  readonly cross: number;
}

/** How many functions of temperature there are. */
const FUNCTIONS = 4;

/** 1, f1, f2, f3 at a temperature. */
export function temperatureFunctions(temperature_K: Kelvin, middle_K: Kelvin): readonly number[] {
  const tau = temperature_K / middle_K;
  const f1 = 1 / tau - 1;
  const log = Math.log(tau);
  return [1, f1, f1 + log, 1 / tau + 2 * log - tau];
}

/** The model that belongs to a set of parameters; as one list they are the series a, b, c and d one after the other, then cross. */
export function redlichKisterModel(
  parameters: ExpansionParameters,
  about: Pick<ActivityModel, 'name' | 'range_K' | 'source'>,
): ActivityModel {
  const { stretch, middle_K, series, cross } = parameters;
  const terms = Math.max(...series.map((each) => each.length));
  const table = Array.from({ length: FUNCTIONS }, (_, j) =>
    Array.from({ length: terms }, (_, k) => series[j]?.[k] ?? 0),
  );
  const [a, b, c, d] = table.map((each) => Float64Array.from(each)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const more = stretch - 1;

  // c_k and dc_k/dT at the temperature last asked for.
  const coefficients = new Float64Array(terms);
  const thermal = new Float64Array(terms);
  let at_K = NaN;
  function setTemperature(temperature_K: Kelvin): void {
    if (temperature_K === at_K) return;
    // The functions of T written out, for speed; temperatureFunctions has them one by one.
    const inverse = middle_K / temperature_K;
    const log = -Math.log(inverse);
    const f1 = inverse - 1;
    const f2 = f1 + log;
    const f3 = inverse + 2 * log - 1 / inverse;
    const slope1 = (-inverse * inverse) / middle_K;
    const slope2 = (-inverse * f1) / middle_K;
    const slope3 = (-f1 * f1) / middle_K;
    for (let k = 0; k < terms; k++) {
      coefficients[k] = a[k]! + b[k]! * f1 + c[k]! * f2 + d[k]! * f3;
      thermal[k] = b[k]! * slope1 + c[k]! * slope2 + d[k]! * slope3;
    }
    at_K = temperature_K;
  }

  return Object.freeze({
    ...about,
    vapour: virialVapour(cross),
    parameters: Object.freeze([...series.flat(), cross]),
    withParameters(values: readonly number[]) {
      const ends = series.map((_one, j) => series.slice(0, j + 1).reduce((sum, each) => sum + each.length, 0));
      const others = series.map((each, j) => values.slice(ends[j]! - each.length, ends[j]));
      return redlichKisterModel({ ...parameters, series: others, cross: values.at(-1)! }, about);
    },
    excessGibbs(moleFraction: MoleFraction, temperature_K: Kelvin) {
      setTemperature(temperature_K);
      const divisor = 1 + more * moleFraction;
      const w = (1 - moleFraction - stretch * moleFraction) / divisor;
      let sum = 0;
      for (let k = terms - 1; k >= 0; k--) sum = sum * w + coefficients[k]!;
      return ((moleFraction * (1 - moleFraction)) / divisor) * sum;
    },
    activity(moleFraction, temperature_K, out) {
      setTemperature(temperature_K);
      const x: number = moleFraction;
      const water = 1 - x;
      const divisor = 1 + more * x;
      const w = (water - stretch * x) / divisor;
      const square = divisor * divisor;
      // p = x1 x2/D with p′, p″; w′, w″.
      const p = (x * water) / divisor;
      const p1 = (1 - 2 * x - more * x * x) / square;
      const p2 = (-2 * stretch) / (square * divisor);
      const w1 = (-2 * stretch) / square;
      const w2 = (4 * stretch * more) / (square * divisor);
      // Sum, its first and half its second derivative by w; the same for dc_k/dT.
      let [s, s1, s2, t, t1] = [0, 0, 0, 0, 0];
      for (let k = terms - 1; k >= 0; k--) {
        s2 = s2 * w + s1;
        s1 = s1 * w + s;
        s = s * w + coefficients[k]!;
        t1 = t1 * w + t;
        t = t * w + thermal[k]!;
      }
      const g = p * s;
      const g1 = p1 * s + p * s1 * w1;
      const g2 = p2 * s + 2 * p1 * w1 * s1 + p * (2 * s2 * w1 * w1 + s1 * w2);
      const gT = p * t;
      const gT1 = p1 * t + p * t1 * w1;
      out.lnGammaEthanol = g + water * g1;
      out.lnGammaWater = g - x * g1;
      out.slopeEthanol = water * g2;
      out.slopeWater = -x * g2;
      out.thermalEthanol = gT + water * gT1;
      out.thermalWater = gT - x * gT1;
      return out;
    },
  } satisfies ActivityModel);
}

/** The parameters of reference/parameters/redlich-kister-ethanol-water.json. */
export const EXPANSION: ExpansionParameters = Object.freeze({
  stretch: set.constants.rho,
  middle_K: set.constants.T0,
  cross: set.constants.cross,
  series: Object.freeze(['a', 'b', 'c', 'd'].map((letter) => coefficientSeries(set, letter))),
});

/** The reference model: the project's own regression to pressures, boiling points, vapours, heats, limits and azeotropes, with a virial vapour. */
export const redlichKister: ActivityModel = redlichKisterModel(EXPANSION, {
  name: 'redlich-kister',
  range_K: fittedRange(set),
  source:
    'regressed by this project from published measurements, docs/theory/residuals.md; form of O. Redlich, A. T. Kister (1948)',
});
