// What an error of each unknown of a train counts, before what flows is known.

import type { Train } from './holders.js';
import { ENERGY, UNKNOWNS, VAPOUR } from './streams.js';

/** Errors of these are allowed to be so many times larger: amounts above the kettle, vapours. Not energies: those of a film of liquid are small. */
const PLATES_COUNT = 3;
const VAPOUR_COUNTS = 10;
/** While plates or packing are warmed and filled, errors on them may be so many times larger: what they come to hold is renewed many times. */
const FILLING_COUNTS = 3;
/** Nor does that loosen them beyond this share of what a plate holds: a moist one holds a hundredth. */
const COARSEST = 1e-3;
/** What a partial condenser takes out follows the energy of its film: errors of that count so many times. */
const FILM_COUNTS = 4;
/** The drum feeds the spout, by which a run is judged: its errors count so many times. */
const SPOUT_COUNTS = 4;

/** How errors count, docs/decisions/0023-error-weights-of-the-train.md: those of plates less, those at the spout more than those of other parts; and how while a still fills. */
export function writeWeights(train: Train, tolerance: number, weights: Float64Array, filling: Float64Array): void {
  const { holders, drum } = train;
  holders.forEach(({ kind, scale_mol }, j) => {
    const amount = tolerance * scale_mol * (j === 0 ? 1 : PLATES_COUNT);
    weights.fill(amount, UNKNOWNS * j, UNKNOWNS * (j + 1));
    weights[UNKNOWNS * j + ENERGY] = (tolerance * scale_mol) / (kind === 'partialCondenser' ? FILM_COUNTS : 1);
    weights[UNKNOWNS * j + VAPOUR] = tolerance * VAPOUR_COUNTS;
  });
  const kettle = tolerance * holders[0]!.scale_mol;
  const d = UNKNOWNS * holders.length;
  weights.fill((tolerance * drum.scale_mol) / SPOUT_COUNTS, d, d + UNKNOWNS);
  weights[d] = tolerance;
  weights[d + 1] = kettle;
  weights.fill(kettle, d + UNKNOWNS);
  filling.set(weights);
  const looser = Math.max(1, Math.min(FILLING_COUNTS, COARSEST / tolerance));
  holders.forEach(({ kind }, j) => {
    if (kind !== 'plate' && kind !== 'packing') return;
    for (let k = UNKNOWNS * j; k < UNKNOWNS * (j + 1); k++) filling[k]! *= looser;
  });
}
