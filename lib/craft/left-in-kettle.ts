// What is left in the kettle when so much has come over, by the balance of masses: what was charged less what was taken.

import { listFault, refuse } from '../arguments.js';
import type { Outcome } from '../errors.js';
import { massesAt, type Spirit, spiritOfMasses } from './spirit.js';

/**
 * What is left in the kettle, from the charge and what has been collected.
 *
 * Equation: m_left = m_charged − Σ m_collected, of ethanol and of water; what hangs on plates and in pipes counts as in the kettle.
 * @param charge What was charged: `volume_m3` [m³ at 20 °C], `strength` 0..1.
 * @param collected What has come over, the same; may be empty.
 * @returns found true with what is left, [m³ at 20 °C] and strength; found false with reason 'more-than-charged' when more ethanol or water was collected than charged.
 * @throws InputError when a field is outside its range.
 * @example foundIn(leftInKettle({ volume_m3: 0.1, strength: 0.1 }, [{ volume_m3: 0.01, strength: 0.6 }])).strength // → 0.0444
 * Source: conservation of mass; OIML R 22, 1975.
 */
export function leftInKettle(
  charge: Spirit,
  collected: readonly Spirit[],
): Outcome<{ readonly volume_m3: number; readonly strength: number }, 'more-than-charged'> {
  let { ethanol_kg, water_kg } = massesAt(charge, 'charge');
  const least = -1e-12 * (ethanol_kg + water_kg);
  refuse(listFault('collected', collected, 'spirits', 0, 100_000));
  collected.forEach((spirit, i) => {
    const taken = massesAt(spirit, `collected[${String(i)}]`);
    ethanol_kg -= taken.ethanol_kg;
    water_kg -= taken.water_kg;
  });
  if (ethanol_kg < least || water_kg < least) {
    const what = ethanol_kg < least ? 'alcohol' : 'water';
    return { found: false, reason: 'more-than-charged', message: `More ${what} has been collected than was charged.` };
  }
  return { found: true, ...spiritOfMasses({ ethanol_kg: Math.max(0, ethanol_kg), water_kg: Math.max(0, water_kg) }) };
}
