// How hard a packing is driven: its pressure drop, and how near it is to flooding.
//
//   drop      Δp = P + 0.4 (L_f/20 000)^0.1 P⁴,  P = 7.4·10⁻⁸ G_f² 10^(2.7·10⁻⁵ L_f)            in of water a foot
//             G_f = G (1.2 kg/m³/ρ_V)^½ (F/20)^½,  L_f = L (1000 kg/m³/ρ_L) (F/20)^½               lb/(h ft²), F per foot
//   flooding  where Δp = 0.115 F^0.7
//
// F is the packing's factor, taken as its surface over the cube of its free share. Sources: Robbins 1991 for the drop, its coefficients from memory;
// Kister & Gill for the drop at flooding, as in Seader, Henley & Roper, Separation Process Principles. The liquid's viscosity is taken as water's, to the power 0.1.

import { checkFlows, checkSection } from './check-flows.js';
import { bracketedRoot } from '../numerics/root.js';
import { liquidDensity, molarMass, vapourDensity } from './fluids.js';
import type { PlateFlows } from './plate-load.js';
import type { PackedSection } from './still.js';

/** How a packing stands what passes. */
export interface PackingLoad {
  /** Vapour as a share of that at flooding, with as much liquid for each mole of it. */
  readonly floodShare: number;
  /** Speed over the empty section, m/s. */
  readonly vapourSpeed_m_s: number;
  /** Pressure drop a metre, Pa/m. */
  readonly drop_Pa_m: number;
  /** Whether the section is narrower than what the formulas were made for. */
  readonly extrapolated: boolean;
}

/** lb/(h ft²) in a kg/(s m²); feet in a metre; Pa/m in an inch of water a foot. */
const POUNDS = 737.34;
const FEET = 3.28084;
const INCH_OF_WATER = 249.089 * FEET;
/** Vapour that hardly passes floods nothing: less is beyond what the formula can be read at. */
const LEAST_kg_s_m2 = 1e-9;
/** Narrower than this walls count. */
const SMALLEST_m = 0.15;
/** Inches of water a foot: from memory, as the coefficients. */
const MOST_DROP = 2;

/**
 * How near a packing is to flooding and what its load does to pressure.
 *
 * Equation: Robbins' pressure drop; flooding where it reaches Kister and Gill's (file comment).
 * @param packing The packed section: diameter, surface, free share.
 * @param flows What passes: vapour and liquid [mol/s], their mole fractions, temperature [K], pressure [Pa].
 * @returns Share of flooding, vapour speed [m/s], pressure drop [Pa/m].
 * @throws InputError when the packing or what passes it cannot be.
 * @example packingLoad({ kind: 'packing', height_m: 1, hetp_m: 0.25, diameter_m: 0.1, voidShare: 0.92, surface_m2_m3: 350, liquidShare: 0.06, heatLoss_W_K: 0, metal_J_K: 0, drop_Pa_m: 300 }, { vapour_mol_s: 0.13, liquid_mol_s: 0.1, vapourMoleFraction: 0.85, liquidMoleFraction: 0.84, temperature_K: 351.5, pressure_Pa: 101325 }).drop_Pa_m // → 97.3
 * Source: L. A. Robbins, Chem. Eng. Prog. 87 (1991) no. 5, 87; H. Z. Kister, D. R. Gill, Chem. Eng. Prog. 87 (1991) no. 2, 32.
 */
export function packingLoad(packing: PackedSection, flows: PlateFlows): PackingLoad {
  checkSection('packing', packing, 'packing');
  checkFlows(flows);
  return loadOfPacking(packing, flows);
}

/** The same unchecked, for inner loops. */
export function loadOfPacking(packing: PackedSection, flows: PlateFlows): PackingLoad {
  const { diameter_m, surface_m2_m3, voidShare } = packing;
  const area_m2 = (Math.PI * diameter_m ** 2) / 4;
  const vapour_kg_m3 = vapourDensity(flows.vapourMoleFraction, flows.temperature_K, flows.pressure_Pa);
  const vapour = (flows.vapour_mol_s * molarMass(flows.vapourMoleFraction)) / area_m2;
  const liquid = (flows.liquid_mol_s * molarMass(flows.liquidMoleFraction)) / area_m2;
  const liquid_kg_m3 = liquidDensity(flows.liquidMoleFraction, flows.temperature_K);
  const factor = surface_m2_m3 / voidShare ** 3 / FEET;
  const root = Math.sqrt(factor / 20);
  const drop = (by: number): number => {
    const gas = by * vapour * POUNDS * Math.sqrt(1.2 / vapour_kg_m3) * root;
    const wet = by * liquid * POUNDS * (1000 / liquid_kg_m3) * root;
    const dry = 7.4e-8 * gas ** 2 * 10 ** (2.7e-5 * wet);
    return dry + 0.4 * (wet / 20_000) ** 0.1 * dry ** 4;
  };
  // Two inches a foot are the most, from a factor of 60 on.
  const flooding = Math.min(MOST_DROP, 0.115 * factor ** 0.7);
  const passes = vapour > LEAST_kg_s_m2;
  let high = 1;
  while (passes && drop(high) < flooding) high *= 2;
  const most = passes ? bracketedRoot((by) => drop(by) - flooding, 0, high, 1e-9 * high) : Infinity;
  return {
    floodShare: 1 / most,
    vapourSpeed_m_s: vapour / vapour_kg_m3,
    drop_Pa_m: drop(1) * INCH_OF_WATER,
    extrapolated: diameter_m < SMALLEST_m,
  };
}
