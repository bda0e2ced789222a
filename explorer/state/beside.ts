// The kettle of a still as it would be without what stands on it, and with a doubler beside it.

import type { StillDescription } from '#lib/index.js';
import type { ChargeSet } from './scenario.js';

/** A doubler that is not described has this much room, as a multiple of its charge. Invented. */
const room = 2;

/** The same kettle as a bare pot, with a head of its own, in the same air. */
export function potOf({ kettle, productCondenser, air }: StillDescription): StillDescription {
  return {
    kettle,
    ...(productCondenser === undefined ? {} : { productCondenser }),
    ...(air === undefined ? {} : { air }),
  };
}

/** The same kettle as a pot with doublers of these charges; those that the still has, as they are. */
export function withDoublers(still: StillDescription, charges: ChargeSet['doublerCharges']): StillDescription {
  const doublers = charges.map(({ charge }, i) => still.doublers?.[i] ?? { volume_m3: room * charge.volume_m3 });
  return doublers.length === 0 ? potOf(still) : { ...potOf(still), doublers };
}
