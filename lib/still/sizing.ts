// The other way round: how wide a column for a heat, how much heat for a column.

import { checkRange } from '../errors.js';
import { bracketedRoot } from '../numerics/root.js';
import type { Watt } from '../units/quantities.js';
import { checkPassing, checkSection } from './check-flows.js';
import { loadOfPlate, type PlateFlows } from './plate-load.js';
import type { PlatedSection } from './still.js';

/** Molar heat that raises a mole of vapour, J/mol, for sizing: between water's 40.7 and ethanol's 38.6. Source: this project's choice. */
const MOLAR_HEAT = 40e3;

/** What rises and falls where a section is loaded most: rich, heavy vapour at the top. */
export type Passing = Omit<PlateFlows, 'vapour_mol_s' | 'liquid_mol_s'> & {
  /** Liquid that runs down for each mole of vapour, R/(R + 1). */
  readonly returned: number;
};

/**
 * The heat at which a plated section stands at a share of flooding.
 *
 * Equation: plateLoad(V).floodShare = share solved for V, Q = V 40 kJ/mol.
 * @param plates The section.
 * @param passing Mole fractions, temperature [K], pressure [Pa] and returned share where it is loaded most.
 * @param share Share of flooding; above 0 up to 2; else an InputError.
 * @returns Heat into the kettle, [W].
 * @throws InputError when a part is outside its range.
 * @example heatAtFlooding({ kind: 'plates', count: 4, plateKind: 'sieve', diameter_m: 0.1, spacing_m: 0.15, weirHeight_m: 0.02, openAreaShare: 0.1, holeDiameter_m: 0.005, holdUp: { kind: 'volume', volume_m3: 1e-4 }, efficiency: 0.6, efficiencyFalls: true, heatLoss_W_K: 0, metal_J_K: 0, drop_Pa: 0 }, { returned: 0.75, vapourMoleFraction: 0.85, liquidMoleFraction: 0.84, temperature_K: 351.5, pressure_Pa: 101325 }, 0.8) // → 7603
 * Source: plateLoad.
 */
export function heatAtFlooding(plates: PlatedSection, passing: Passing, share: number): Watt {
  checkSection('plates', plates, 'plates');
  checkPassing(passing);
  checkRange('share', share, 0.01, 2, 'a share of flooding from 0.01 to 2');
  const excess = (vapour_mol_s: number): number =>
    loadOfPlate(plates, { ...passing, vapour_mol_s, liquid_mol_s: passing.returned * vapour_mol_s }).floodShare - share;
  let high = 1e-4;
  while (excess(high) < 0) high *= 2;
  return MOLAR_HEAT * bracketedRoot(excess, 0, high, 1e-9 * high);
}

/**
 * The diameter at which plates driven with a heat stand at a share of flooding.
 *
 * Equation: plateLoad at diameter D, floodShare = share solved for D.
 * @param plates The section; its diameter is not used.
 * @param passing Mole fractions, temperature [K], pressure [Pa] and returned share where it is loaded most.
 * @param heat_W Heat into the kettle, [W]; above 0; else an InputError.
 * @param share Share of flooding; above 0 up to 2; else an InputError.
 * @returns Diameter, [m].
 * @throws InputError when a part is outside its range.
 * @example diameterForHeat({ kind: 'plates', count: 4, plateKind: 'sieve', diameter_m: 0.1, spacing_m: 0.15, weirHeight_m: 0.02, openAreaShare: 0.1, holeDiameter_m: 0.005, holdUp: { kind: 'volume', volume_m3: 1e-4 }, efficiency: 0.6, efficiencyFalls: true, heatLoss_W_K: 0, metal_J_K: 0, drop_Pa: 0 }, { returned: 0.75, vapourMoleFraction: 0.85, liquidMoleFraction: 0.84, temperature_K: 351.5, pressure_Pa: 101325 }, 5500, 0.7) // → 0.0909
 * Source: plateLoad.
 */
export function diameterForHeat(plates: PlatedSection, passing: Passing, heat_W: Watt, share: number): number {
  checkSection('plates', plates, 'plates');
  checkPassing(passing);
  checkRange('heat_W', heat_W, 1, 1e9, 'a heat above 1 W');
  checkRange('share', share, 0.01, 2, 'a share of flooding from 0.01 to 2');
  const vapour_mol_s = heat_W / MOLAR_HEAT;
  const flows = { ...passing, vapour_mol_s, liquid_mol_s: passing.returned * vapour_mol_s };
  const excess = (diameter_m: number): number => share - loadOfPlate({ ...plates, diameter_m }, flows).floodShare;
  let high = 0.01;
  while (excess(high) < 0) high *= 2;
  return bracketedRoot(excess, high / 1e3, high, 1e-9 * high);
}
