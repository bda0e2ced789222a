// Models of the published parameter sets, for the residual table: gE/RT in closed form; ln γ and slopes by
// differences of it (1e-7 or better), which is enough to compare with measurements.
//
// wilson-cal, nrtl-cal: energies in cal/mol, R = 1.98720 cal/(mol K). uniquac: ln τ = a + b/T, z = 10, residual part with
// its own areas p. vanlaar, margules: three-suffix forms in ln γ. unifac: original (Hansen et al. 1991); dortmund:
// modified (Gmehling et al. 1993), psi = exp(−(a + b T + c T²)/T).

import { readFileSync } from 'node:fs';

const R_CAL = 1.9872;
const { log, exp } = Math;
const xlog = (x, value) => (x === 0 ? 0 : x * log(value));

const FORMS = {
  'wilson-cal'({ A12, A21, V1, V2 }, x, T) {
    const l12 = (V2 / V1) * exp(-A12 / (R_CAL * T));
    const l21 = (V1 / V2) * exp(-A21 / (R_CAL * T));
    return -xlog(x, x + l12 * (1 - x)) - xlog(1 - x, 1 - x + l21 * x);
  },
  'nrtl-cal': ({ A12, A21, alpha }, x, T) => nrtl(A12 / (R_CAL * T), A21 / (R_CAL * T), alpha, x),
  nrtl: ({ a12, b12, c12, a21, b21, c21, alpha }, x, T) =>
    nrtl(a12 + b12 / T + c12 * log(T), a21 + b21 / T + c21 * log(T), alpha, x),
  uniquac({ a12, b12, a21, b21, r1, r2, q1, q2, p1, p2 }, x, T) {
    const [tau12, tau21] = [exp(a12 + b12 / T), exp(a21 + b21 / T)];
    const w = 1 - x;
    const r = r1 * x + r2 * w;
    const q = q1 * x + q2 * w;
    const p = p1 * x + p2 * w;
    const [t1, t2] = [(p1 * x) / p, (p2 * w) / p];
    const size = xlog(x, r1 / r) + xlog(w, r2 / r);
    const shape = 5 * (xlog(x * q1, (q1 * r) / (q * r1)) + xlog(w * q2, (q2 * r) / (q * r2)));
    return size + shape - xlog(p1 * x, t1 + t2 * tau21) - xlog(p2 * w, t2 + t1 * tau12);
  },
  vanlaar: ({ A12, A21 }, x) => (A12 * A21 * x * (1 - x)) / (A12 * x + A21 * (1 - x)),
  margules: ({ A12, A21 }, x) => x * (1 - x) * (A21 * x + A12 * (1 - x)),
  unifac: (_, x, T) => groups(ORIGINAL, x, T),
  dortmund: (_, x, T) => groups(DORTMUND, x, T),
};

function nrtl(tau12, tau21, alpha, x) {
  const [g12, g21] = [exp(-alpha * tau12), exp(-alpha * tau21)];
  return x * (1 - x) * ((tau21 * g21) / (x + (1 - x) * g21) + (tau12 * g12) / (1 - x + x * g12));
}

// Subgroups CH3, CH2, OH, H2O; main groups CH2, CH2, OH, H2O. Interactions by main group: [CH2, OH, H2O].
const MAIN = [0, 0, 1, 2];
const COUNTS = [
  [1, 1, 1, 0],
  [0, 0, 0, 1],
];
const ORIGINAL = {
  size: [0.9011, 0.6744, 1.0, 0.92],
  area: [0.848, 0.54, 1.2, 1.4],
  power: 1,
  energies: [
    [0, 986.5, 1318],
    [156.4, 0, 353.5],
    [300, -229.1, 0],
  ].map((line) => line.map((a) => [a, 0, 0])),
};
const DORTMUND = {
  size: [0.6325, 0.6325, 1.2302, 1.7334],
  area: [1.0608, 0.7081, 0.8927, 2.4561],
  power: 0.75,
  energies: [
    [
      [0, 0, 0],
      [2777, -4.674, 0.001551],
      [1391.3, -3.6156, 0.001144],
    ],
    [
      [1606, -4.746, 0.0009181],
      [0, 0, 0],
      [-801.9, 3.824, -0.007514],
    ],
    [
      [-17.253, 0.8389, 0.0009021],
      [1460, -8.673, 0.01641],
      [0, 0, 0],
    ],
  ],
};

function groups({ size, area, power, energies }, x, T) {
  const fractions = [x, 1 - x];
  const molecule = (of) => COUNTS.map((counts) => counts.reduce((sum, n, k) => sum + n * of[k], 0));
  const [r, q] = [molecule(size), molecule(area)];
  const mean = (of) => fractions[0] * of[0] + fractions[1] * of[1];
  const rp = r.map((each) => each ** power);
  const psi = (m, n) => {
    const [a, b, c] = energies[MAIN[m]][MAIN[n]];
    return exp(-(a + b * T + c * T * T) / T);
  };
  // Residual ln Γ of every group in a mixture of groups.
  const gamma = (shares) => {
    const areas = shares.map((n, k) => n * area[k]);
    const total = areas.reduce((a, b) => a + b, 0);
    const theta = areas.map((each) => each / total);
    const below = area.map((_, m) => theta.reduce((sum, t, n) => sum + t * psi(n, m), 0));
    return area.map(
      (own, k) => own * (1 - log(below[k]) - theta.reduce((sum, t, m) => sum + (t * psi(k, m)) / below[m], 0)),
    );
  };
  const mixture = gamma(size.map((_, k) => fractions[0] * COUNTS[0][k] + fractions[1] * COUNTS[1][k]));
  return fractions.reduce((sum, fraction, i) => {
    if (fraction === 0) return sum;
    const v = r[i] / mean(r);
    const f = q[i] / mean(q);
    const vp = rp[i] / mean(rp);
    const combinatorial = 1 - vp + log(vp) - 5 * q[i] * (1 - v / f + log(v / f));
    const pure = gamma(COUNTS[i]);
    const residual = COUNTS[i].reduce((part, n, k) => part + n * (mixture[k] - pure[k]), 0);
    return sum + fraction * (combinatorial + residual);
  }, 0);
}

/** An activity model around a function gE/RT(x, T); derivatives by five-point differences, one-sided at the ends. */
export function modelOf(name, g) {
  const h = 1e-3;
  const hT = 0.1;
  const byX = (x, T) => {
    const at = Math.min(1 - 2 * h, Math.max(2 * h, x));
    const v = [-2, -1, 0, 1, 2].map((i) => g(at + i * h, T));
    const first = (v[0] - 8 * v[1] + 8 * v[3] - v[4]) / (12 * h);
    const second = (-v[0] + 16 * v[1] - 30 * v[2] + 16 * v[3] - v[4]) / (12 * h * h);
    if (at === x) return [first, second];
    // Near an end: the derivatives of the polynomial of degree 4 through the five points.
    const s = (x - at) / h;
    const third = (-v[0] + 2 * v[1] - 2 * v[3] + v[4]) / (2 * h ** 3);
    const fourth = (v[0] - 4 * v[1] + 6 * v[2] - 4 * v[3] + v[4]) / h ** 4;
    const d = s * h;
    return [
      first + second * d + (third * d * d) / 2 + (fourth * d ** 3) / 6,
      second + third * d + (fourth * d * d) / 2,
    ];
  };
  const lnGamma = (x, T) => {
    const value = g(x, T);
    const [slope, curvature] = byX(x, T);
    return [value + (1 - x) * slope, value - x * slope, (1 - x) * curvature, -x * curvature];
  };
  return {
    name,
    range_K: [298, 423],
    source: name,
    excessGibbs: g,
    activity(x, T, out) {
      [out.lnGammaEthanol, out.lnGammaWater, out.slopeEthanol, out.slopeWater] = lnGamma(x, T);
      const [cold, hot] = [lnGamma(x, T - hT), lnGamma(x, T + hT)];
      out.thermalEthanol = (hot[0] - cold[0]) / (2 * hT);
      out.thermalWater = (hot[1] - cold[1]) / (2 * hT);
      return out;
    },
  };
}

/** Every published set as a model, in the order of published-sets.json. */
export function publishedModels() {
  const { sets } = JSON.parse(readFileSync(new URL('published-sets.json', import.meta.url), 'utf8'));
  return sets.map((set) => {
    const coefficients = Object.fromEntries(Object.entries(set.coefficients).map(([k, v]) => [k, Number(v)]));
    return { ...set, model: modelOf(set.key, (x, T) => FORMS[set.equation](coefficients, x, T)) };
  });
}
