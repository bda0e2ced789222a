// What plates and condenser hold as fixed amounts: as a still says it, or the amount of its volume of charge as liquid at 20 °C.

import { volumeAt20C } from '../../../mixture/volume.js';
import type { HoldUp, Still } from '../../../still/still.js';

/** Amounts held, mol: each plate, and reflux condenser and product condenser together. */
export interface Held {
  readonly plate_mol: number;
  readonly condenser_mol: number;
}

/** What a still's plates and condensers hold of a charge. */
export function heldBy({ column, refluxCondenser, productCondenser }: Still, charged: number): Held {
  const perMole_m3 = volumeAt20C(charged, 1 - charged);
  const amountOf = (holdUp: HoldUp): number =>
    holdUp.kind === 'amount' ? holdUp.amount_mol : holdUp.volume_m3 / perMole_m3;
  return {
    plate_mol: column.kind === 'plates' ? amountOf(column.holdUp) : 0,
    condenser_mol:
      (refluxCondenser.kind === 'total' ? amountOf(refluxCondenser.holdUp) : 0) + amountOf(productCondenser.holdUp),
  };
}
