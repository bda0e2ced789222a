// How hard plates are driven: how near to flooding and to weeping, what pressure they cost, how much liquid the vapour carries up and
// what that leaves of their efficiency.
//
//   flooding    u_f = C F_σ F_h F_p √((ρ_L − ρ_V)/ρ_V),  C = 0.0105 + 8.127·10⁻⁴ T_S^0.755 e^(−1.463 F_LV^0.842)   T_S mm, C m/s
//               F_LV = (L/V)_mass √(ρ_V/ρ_L),  F_σ = (σ/20 mN/m)^0.2,  F_h = 1 for open areas of a tenth and more, 5 A_h/A + 0.5 below
//   weeping     u_h,min = (K₂ − 0.90 (25.4 − d_h))/√ρ_V                    d_h mm, K₂ of the liquid's height
//   pressure    h = 51 (u_h/C₀)² ρ_V/ρ_L + h_w + 750 (L/(ρ_L l_w))^⅔ + 12 500/ρ_L     mm of liquid
//   carry-over  ψ = exp(−(6.692 + 1.956 f) F_LV^(−0.132 + 0.654 f)),  E_wet = E/(1 + E ψ/(1 − ψ))   f share of flooding
//
// Sources: flooding Fair 1961 in the fit of Lygeros & Magoulas 1986, as in Seider et al., Product and Process Design Principles, 2017; open area
// and F_σ the same. Weeping Eduljee, pressure and crest as in Sinnott, Chemical Engineering Design, 2005. Carry-over: the fit of Fair's chart by
// Lygeros & Magoulas, from memory; E_wet Colburn 1936. Bubble caps 0.85 and valves 1.05 of a sieve: common factors, source not seen.
// All made for plates of half a metre and 150 mm spacing or more: for less they are extrapolated, and say so.

import { checkFlows, checkSection } from './check-flows.js';
import { STANDARD_GRAVITY } from '../constants.js';
import type { Kelvin, MoleFraction, Pascal } from '../units/quantities.js';
import { liquidDensity, molarMass, surfaceTension, vapourDensity } from './fluids.js';
import type { PlatedSection } from './still.js';

/** What passes a plate. */
export interface PlateFlows {
  readonly vapour_mol_s: number;
  readonly liquid_mol_s: number;
  readonly vapourMoleFraction: MoleFraction;
  readonly liquidMoleFraction: MoleFraction;
  readonly temperature_K: Kelvin;
  readonly pressure_Pa: Pascal;
}

/** How a plate stands it. */
export interface PlateLoad {
  /** Vapour speed as a share of that at flooding. */
  readonly floodShare: number;
  /** Speed over the plate's free section, m/s. */
  readonly vapourSpeed_m_s: number;
  /** Speed in the holes as a share of the least that keeps liquid from raining through; null for bubble caps, which are sealed. */
  readonly weepShare: number | null;
  readonly drop_Pa: Pascal;
  /** Liquid carried up as a share of the liquid that runs down and is carried. */
  readonly carriedShare: number;
  /** What is left of the efficiency, as a factor. */
  readonly efficiencyFactor: number;
  /** Whether the plate is smaller than what the formulas were made for. */
  readonly extrapolated: boolean;
}

const KIND_FACTOR = { sieve: 1, bubbleCap: 0.85, valve: 1.05 } as const;
/** Share of the section that a downcomer takes. */
const DOWNCOMER = 0.1;
/** Length of a weir as a share of the plate's diameter. */
const WEIR = 0.7;
const ORIFICE = 0.73;
/** Driven beyond this the formula for what is carried says nothing any more. */
const MOST_FLOOD = 1.2;

/**
 * How near a plate is to flooding and weeping, and what its load does to pressure and efficiency.
 *
 * Equation: Fair's flooding in the fit of Lygeros and Magoulas, Eduljee's weeping, dry drop + weir + crest + residual, Colburn's wet efficiency (file comment).
 * @param plates The plated section: kind, diameter, spacing, weir, holes, efficiency.
 * @param flows What passes: vapour and liquid [mol/s], their mole fractions, temperature [K], pressure [Pa].
 * @returns Shares of flooding and of weeping, vapour speed [m/s], pressure drop [Pa], carry-over, efficiency factor.
 * @throws InputError when the plates or what passes them cannot be.
 * @example plateLoad({ kind: 'plates', count: 1, plateKind: 'sieve', diameter_m: 0.1, spacing_m: 0.15, weirHeight_m: 0.012, openAreaShare: 0.1, holeDiameter_m: 0.003, holdUp: { kind: 'volume', volume_m3: 1e-4 }, efficiency: 0.65, efficiencyFalls: true, heatLoss_W_K: 0, metal_J_K: 0, drop_Pa: 0 }, { vapour_mol_s: 0.13, liquid_mol_s: 0.1, vapourMoleFraction: 0.85, liquidMoleFraction: 0.84, temperature_K: 351.5, pressure_Pa: 101325 }).floodShare // → 0.5479
 * Source: Seider et al., Product and Process Design Principles, 2017; Sinnott, Chemical Engineering Design, 2005.
 */
export function plateLoad(plates: PlatedSection, flows: PlateFlows): PlateLoad {
  checkSection('plates', plates, 'plates');
  checkFlows(flows);
  return loadOfPlate(plates, flows);
}

/** The same unchecked, for inner loops and searches. */
export function loadOfPlate(plates: PlatedSection, flows: PlateFlows): PlateLoad {
  const { diameter_m, spacing_m, weirHeight_m, openAreaShare, holeDiameter_m, plateKind, efficiency } = plates;
  const vapour_kg_m3 = vapourDensity(flows.vapourMoleFraction, flows.temperature_K, flows.pressure_Pa);
  const liquid_kg_m3 = liquidDensity(flows.liquidMoleFraction, flows.temperature_K);
  const vapour_kg_s = flows.vapour_mol_s * molarMass(flows.vapourMoleFraction);
  const liquid_kg_s = flows.liquid_mol_s * molarMass(flows.liquidMoleFraction);
  const section_m2 = (Math.PI * diameter_m ** 2) / 4;
  const speed = vapour_kg_s / (vapour_kg_m3 * section_m2 * (1 - DOWNCOMER));
  const flowParameter = vapour_kg_s > 0 ? (liquid_kg_s / vapour_kg_s) * Math.sqrt(vapour_kg_m3 / liquid_kg_m3) : 0;
  const tension = (surfaceTension(flows.liquidMoleFraction) / 0.02) ** 0.2;
  const openOfActive = openAreaShare / (1 - 2 * DOWNCOMER);
  const holes = openOfActive >= 0.1 ? 1 : 5 * openOfActive + 0.5;
  const capacity = floodCapacity(spacing_m, flowParameter) * tension * holes * KIND_FACTOR[plateKind];
  const flood_m_s = capacity * Math.sqrt((liquid_kg_m3 - vapour_kg_m3) / vapour_kg_m3);
  const floodShare = speed / flood_m_s;

  const crest_mm = 750 * (liquid_kg_s / (liquid_kg_m3 * WEIR * diameter_m)) ** (2 / 3);
  const height_mm = 1000 * weirHeight_m + crest_mm;
  const holeSpeed = vapour_kg_s / (vapour_kg_m3 * section_m2 * openAreaShare);
  // The correlation ends at holes of half an inch; valves close as they are driven less and hold at half the speed (turndown 4 against 2).
  const hole_mm = Math.min(12.7, 1000 * holeDiameter_m);
  const held = plateKind === 'valve' ? 0.5 : 1;
  const least = (held * (weepConstant(height_mm) - 0.9 * (25.4 - hole_mm))) / Math.sqrt(vapour_kg_m3);
  const dry_mm = 51 * (holeSpeed / ORIFICE) ** 2 * (vapour_kg_m3 / liquid_kg_m3);
  const drop_mm = dry_mm + height_mm + 12_500 / liquid_kg_m3;

  const carriedShare = carried(floodShare, flowParameter);
  return {
    floodShare,
    vapourSpeed_m_s: speed,
    weepShare: plateKind === 'bubbleCap' ? null : holeSpeed / Math.max(least, 1e-3),
    drop_Pa: (drop_mm / 1000) * liquid_kg_m3 * STANDARD_GRAVITY,
    carriedShare,
    efficiencyFactor: collapse(floodShare) / (1 + (efficiency * carriedShare) / (1 - carriedShare)),
    extrapolated: diameter_m < 0.5 || spacing_m < 0.15,
  };
}

/** C of Fair's chart, m/s, from the spacing [m] and the flow parameter. */
export function floodCapacity(spacing_m: number, flowParameter: number): number {
  return 0.0105 + 8.127e-4 * (1000 * spacing_m) ** 0.755 * Math.exp(-1.463 * flowParameter ** 0.842);
}

/** K₂ against the height of clear liquid, mm, by straight lines. Values from memory. */
const WEEP: readonly (readonly [number, number])[] = [
  [5, 26.5],
  [15, 28],
  [25, 29],
  [45, 30],
  [70, 30.5],
  [100, 31],
];

function weepConstant(height_mm: number): number {
  const h = Math.min(100, Math.max(5, height_mm));
  const above = WEEP.findIndex(([at], i) => i > 0 && h <= at);
  const [h0, k0] = WEEP[above - 1]!;
  const [h1, k1] = WEEP[above]!;
  return k0 + ((h - h0) / (h1 - h0)) * (k1 - k0);
}

/**
 * What is left of a plate that floods: everything up to nine tenths of flooding, a tenth from 1.15 times on, a straight line between.
 * That plates collapse there is common practice, no published source; the line is this project's choice.
 */
function collapse(floodShare: number): number {
  return Math.min(1, Math.max(0.1, 1 - (0.9 * (floodShare - 0.9)) / 0.25));
}

function carried(floodShare: number, flowParameter: number): number {
  if (flowParameter <= 0 || floodShare <= 0) return 0;
  const f = Math.min(MOST_FLOOD, floodShare);
  return Math.min(0.95, Math.exp(-(6.692 + 1.956 * f) * flowParameter ** (-0.132 + 0.654 * f)));
}
