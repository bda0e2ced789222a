// The second still of a new notebook, beside the column that the pages begin with.

import { toSI, type StillDescription } from '#lib/index.js';
import { startingStill } from './scenario.js';

const { kettle, air } = startingStill;

/** The same kettle with a doubler. Invented. */
export const startingPot: { readonly name: string; readonly what: StillDescription } = {
  name: 'Pot with a doubler',
  what: { kettle, doublers: [{ volume_m3: toSI(20, 'L') }], ...(air === undefined ? {} : { air }) },
};
