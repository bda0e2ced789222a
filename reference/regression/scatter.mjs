// What a set is worth in a fit: its own scatter from point to point (within), and how far one laboratory stands from
// another (between). The errors of one set are taken to go together where compositions are near each other:
//   covariance of points i, j of a set:  s_i s_j (within² δ_ij + between² exp(−(z_i − z_j)²/2)),  z = ln(x/(1 − x))
// with s = 1 for pressures and temperatures, 4 y(1 − y) for vapours. A set with many points so counts as many only as far
// as its laboratory is right. This is a random effect per set, as a smooth curve instead of one number (a Gaussian
// process: C. E. Rasmussen, C. K. I. Williams, Gaussian Processes for Machine Learning, MIT Press 2006, chapter 2).
// Both numbers are those that make the residuals of a fit likeliest; regress.mjs repeats the fit with them until
// neither moves.

import { median } from './measurements.mjs';

const END = 6;
const place = (x) => Math.min(END, Math.max(-END, Math.log(x / (1 - x))));

/** Rows of a set as { x, value }: residuals in the unit in which a set's errors are even. */
const even = (rows) => rows.map(({ x, residual, scale = 1 }) => ({ x, value: residual / scale }));

/** Lower triangular L with L Lᵀ = the covariance of a set's even residuals. */
function factorOf(rows, { within, between }) {
  const n = rows.length;
  const z = rows.map(({ x }) => place(x));
  const l = Array.from({ length: n }, () => new Float64Array(n));
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = between * between * Math.exp(-((z[i] - z[j]) ** 2) / 2) + (i === j ? within * within : 0);
      for (let k = 0; k < j; k++) sum -= l[i][k] * l[j][k];
      l[i][j] = i === j ? Math.sqrt(sum) : sum / l[j][j];
    }
  }
  return l;
}

/** L⁻¹ r. */
function solved(l, values) {
  const out = new Float64Array(values.length);
  for (let i = 0; i < out.length; i++) {
    let sum = values[i];
    for (let k = 0; k < i; k++) sum -= l[i][k] * out[k];
    out[i] = sum / l[i][i];
  }
  return out;
}

/** Residuals of one set and quantity made independent and of unit variance; `factors` remembers L by name. */
export function whitened(name, rows, scatter, factors) {
  if (scatter === undefined) return rows.map(({ residual, sigma }) => residual / sigma);
  const flat = even(rows);
  if (!factors.has(name)) factors.set(name, factorOf(flat, scatter));
  return solved(
    factors.get(name),
    flat.map(({ value }) => value),
  );
}

/** −2 ln likelihood of even residuals, less what does not depend on within and between. */
function unlikely(flat, scatter) {
  const l = factorOf(flat, scatter);
  const r = solved(
    l,
    flat.map(({ value }) => value),
  );
  return r.reduce((sum, each, i) => sum + each * each + 2 * Math.log(l[i][i]), 0);
}

/** The within and between that make the residuals of one set likeliest, on a ladder of quarter octaves from `least` up. */
export function likeliest(rows, least) {
  const flat = even(rows);
  const ladder = Array.from({ length: RUNGS }, (_, i) => least * 2 ** (i / 4));
  let best = { value: Infinity };
  for (const within of ladder) {
    for (const between of ladder) {
      const value = unlikely(flat, { within, between });
      if (value < best.value) best = { within, between, value };
    }
  }
  return { within: best.within, between: best.between };
}
const RUNGS = 40;

/** Least scatter considered, by quantity: what the digits and the gauges of the best sets allow. */
export const LEAST = { P: 1e-4, T: 0.02, y: 1e-3 };

/** No set is trusted beyond the median between of its kind. `found`: { name: { quantity, within, between } }. */
export function levelled(found) {
  const names = Object.keys(found);
  return Object.fromEntries(
    names.map((name) => {
      const alike = names.filter((other) => found[other].quantity === found[name].quantity);
      const least = median(alike.map((other) => found[other].between));
      return [name, { within: found[name].within, between: Math.max(found[name].between, least) }];
    }),
  );
}
