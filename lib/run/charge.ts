// What is filled into the still, as amounts of ethanol and water: the one place in a run where volume and strength
// meet density.

import { kindFault, refuse } from '../arguments.js';
import type { Fault } from '../errors.js';
import { type Amounts, amountsFromVolume } from '../mixture/volume.js';
import type { Charge, DoublerCharge } from './problem.js';
import { rangeFault } from './check.js';

/** A kettle is called dry when this share of the whole charge is left in it (heating it further is unsafe long before). */
export const DRY_SHARE = 0.005;

/**
 * Amounts of ethanol and water in a charge.
 *
 * Equation: for a volume m = V ρ(p, 20 °C); for an amount n1 = x n, n2 = (1 − x) n.
 * @param charge A volume at 20 °C [m³] with its strength, or an amount [mol] with its mole fraction; above 0, of a strength of 0 (water) to 1.
 * @returns Amounts of ethanol and water, [mol].
 * @throws InputError when a part is not a number, not above 0, or a share is outside 0 to 1.
 * @example chargeAmounts({ kind: 'amount', amount_mol: 100, moleFraction: 0.18 }).water_mol // → 82
 * Source: OIML R 22, International Alcoholometric Tables, 1975, for the density.
 */
export function chargeAmounts(charge: Charge): Amounts {
  refuse(kindFault('charge', charge, CHARGES));
  refuse(chargeFaults(charge, 0));
  if (charge.kind === 'volume') return amountsFromVolume(charge.volume_m3, charge.strength);
  const ethanol_mol = charge.amount_mol * charge.moleFraction;
  return { ethanol_mol, water_mol: charge.amount_mol - ethanol_mol };
}

/** Fields of the kinds of charge. */
export const CHARGES = { volume: ['volume_m3', 'strength'], amount: ['amount_mol', 'moleFraction'] };

/** Less of a charge, or of ethanol in it, is as good as none. */
const LEAST_m3 = 1e-9;
const LEAST_mol = 1e-6;
const LEAST_SHARE = 1e-6;

/** Faults of a charge: each part above 0, shares up to 1; where water will do, `least` is 0. */
export function chargeFaults(charge: Charge, least = LEAST_SHARE): Fault[] {
  const from = `from ${String(least)} to 1`;
  if (charge.kind === 'volume') {
    const strength = `a strength ${from} (0.40 is 40 % vol)`;
    return [
      ...rangeFault(
        'charge.volume_m3',
        charge.volume_m3,
        LEAST_m3,
        1e9,
        `a volume above 0 m³, from ${String(LEAST_m3)}`,
      ),
      ...rangeFault('charge.strength', charge.strength, least, 1, strength),
    ];
  }
  const share = `a mole fraction of ethanol ${from}`;
  return [
    ...rangeFault(
      'charge.amount_mol',
      charge.amount_mol,
      LEAST_mol,
      1e15,
      `an amount above 0 mol, from ${String(LEAST_mol)}`,
    ),
    ...rangeFault('charge.moleFraction', charge.moleFraction, least, 1, share),
  ];
}

/** What was filled into a still altogether: its ethanol, and all that is in the kettle, mol. */
export function allCharged({
  charge,
  doublerCharges,
}: {
  readonly charge: Charge;
  readonly doublerCharges: readonly DoublerCharge[];
}): { ethanol_mol: number; kettle_mol: number } {
  const kettle = chargeAmounts(charge);
  const all = [kettle, ...doublerCharges.map((doubler) => chargeAmounts(doubler.charge))];
  return {
    ethanol_mol: all.reduce((sum, amounts) => sum + amounts.ethanol_mol, 0),
    kettle_mol: kettle.ethanol_mol + kettle.water_mol,
  };
}
