// The regressed models as functions of a vector of parameters, each with its first guess, and how the vector becomes
// the coefficients of its parameter file. Temperature enters through τ = T/T0 in functions that are nearly
// independent over the range of the data, so that the least-squares problem is well conditioned.

import { nrtlModel } from '../../dist/lib/mixture/activity/nrtl.js';
import { redlichKisterModel } from '../../dist/lib/mixture/activity/redlich-kister.js';
import { wilsonModel } from '../../dist/lib/mixture/activity/wilson.js';

export const MIDDLE_K = 350;
const about = (name) => ({ name, range_K: [298, 423], source: 'regression' });

/**
 * The stretch ρ of the reference model: chosen, not fitted. The sum of squares is least near 2.7 and within 8 % of that
 * from 1 to 3, the weighted score least near 1.25 and within 2 %. 2 is the round number between them near which both
 * limiting activity coefficients of ethanol are sound; the last table of docs/theory/residuals.md shows the others.
 */
export const STRETCH = 2;

/** How many of the composition terms have each function of temperature: 1, f1, f2, f3. */
export const SERIES = [6, 6, 6, 3];

/**
 * c of the vapour's cross coefficient B12 = (1 + c) (B11 + B22)/2: that of the least sum of squares under a fixed
 * scatter, −0.23 ± 0.02; without the sets at 150 °C it is −0.20.
 */
export const CROSS = -0.23;

/** The reference model at a given stretch ρ. */
export function expansion(stretch, lengths = SERIES, cross = CROSS) {
  const split = (vector) => {
    let at = 0;
    return lengths.map((length) => Array.from(vector.slice(at, (at += length))));
  };
  return {
    key: 'redlich-kister-ethanol-water',
    start: lengths.flatMap((length, j) => Array.from({ length }, (_, k) => (j === 0 && k === 0 ? 1.2 : 0))),
    model: (vector) =>
      redlichKisterModel({ stretch, middle_K: MIDDLE_K, series: split(vector), cross }, about('redlich-kister')),
    coefficients: (vector) =>
      split(vector).flatMap((series, j) => series.map((value, k) => [`${'abcd'[j]}${k + 1}`, value, '1'])),
    constants: [
      ['rho', stretch, '1'],
      ['T0', MIDDLE_K, 'K'],
      ['cross', cross, '1'],
    ],
  };
}

// a + b/T + c ln T from the coefficients of 1, f1 = 1/τ − 1, f2 = f1 + ln τ.
const plain = ([p, q, r], letters) => [
  [`a${letters}`, p - q - r * (1 + Math.log(MIDDLE_K)), '1'],
  [`b${letters}`, (q + r) * MIDDLE_K, 'K'],
  [`c${letters}`, r, '1'],
];
const named = (rows) => Object.fromEntries(rows.map(([name, value]) => [name, value]));

export const nrtl = {
  key: 'nrtl-ethanol-water',
  start: [-0.1, 0.7, 0, 1.78, -1.67, 0, 0.3],
  coefficients: (v) => [...plain(v.slice(0, 3), '12'), ...plain(v.slice(3, 6), '21'), ['alpha', v[6], '1']],
  model: (v) => nrtlModel(named(nrtl.coefficients(v)), about('nrtl')),
  constants: [],
};

export const wilson = {
  key: 'wilson-ethanol-water',
  start: [-1.65, -0.47, 0, -0.2, -1.37, 0],
  coefficients: (v) => [...plain(v.slice(0, 3), '12'), ...plain(v.slice(3, 6), '21')],
  model: (v) => wilsonModel(named(wilson.coefficients(v)), about('wilson')),
  constants: [],
};
