// When the next holder begins to boil or to run over, as it looks from a state and its rates of change. The equations are rounded off there
// (rounding.ts), within tenths of a second, after seconds or hours in which a step may be long: a step that ends where such a corner begins is
// worth more than one that has to be tried again and again.

import type { Train } from './holders.js';
import { ROUNDING } from './rounding.js';
import { BELOW_K, CREST, READINGS } from './readings.js';
import { type Streams } from './streams.js';

/** Corners of a train's holders. */
export class Corners {
  /** Times in which a holder passes its corners, s. */
  readonly #boils_s: Float64Array;
  readonly #runs_s: Float64Array;
  readonly #runsOver: Uint8Array;

  constructor(count: number) {
    this.#boils_s = new Float64Array(count);
    this.#runs_s = new Float64Array(count);
    this.#runsOver = new Uint8Array(count);
  }

  setUp({ holders }: Train): void {
    holders.forEach(({ boilLag_s, weirLag_s, brim_m3 }, j) => {
      this.#boils_s[j] = ROUNDING * boilLag_s;
      this.#runs_s[j] = ROUNDING * weirLag_s;
      this.#runsOver[j] = brim_m3 === Infinity ? 0 : 1;
    });
  }

  /** Time to the next corner, s, but no less than what passing it takes; Infinity when none is in sight. */
  next_s({ readings, slopes, count }: Streams, f: Float64Array, nominal_mol_s: number): number {
    let next = Infinity;
    for (let j = 0; j < count; j++) {
      const o = 4 * j;
      const a = 16 * j;
      const below_K = readings[READINGS * j + BELOW_K]!;
      if (below_K > 0) {
        const warms = -(slopes[a + 12]! * f[o]! + slopes[a + 13]! * f[o + 2]! + slopes[a + 14]! * f[o + 3]!);
        if (warms > 0) next = Math.min(next, Math.max(this.#boils_s[j]!, below_K / warms));
      }
      if (this.#runsOver[j] === 0) continue;
      const room = -readings[READINGS * j + CREST]! - this.#runs_s[j]! * nominal_mol_s;
      const fills = f[o + 2]! + f[o + 3]!;
      if (room > 0 && fills > 0) next = Math.min(next, Math.max(this.#runs_s[j]!, room / fills));
    }
    return next;
  }
}
