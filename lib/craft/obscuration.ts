// What dissolved solids (sugar, oak) hide from a hydrometer: the liquid is denser, so it seems weaker than it is.

import { checkRange } from '../errors.js';
import { strengthFromProof, proofFromStrength } from '../mixture/proof.js';
import type { VolumeFraction20C } from '../units/quantities.js';

/** What a hydrometer shows of a spirit with solids in it. */
export interface Obscured {
  /** How much too low it reads, US proof. */
  readonly hidden_proof: number;
  /** What it shows, % vol / 100 at 20 °C; 0 where the solids hide all of it. */
  readonly shown: VolumeFraction20C;
  /** Whether the rule is meant for so much: up to 6 kg/m³; beyond, the spirit is distilled for its proof. */
  readonly withinRule: boolean;
}

/**
 * The strength a hydrometer shows where solids are dissolved in the spirit.
 *
 * Equation: hidden proof = 0.4 × solids/(1 kg/m³): 0.1 g of solids in 100 mL hides 0.4 proof.
 * @param strength True strength by volume at 20 °C, q; 0..1; outside, an InputError.
 * @param solids_kg_m3 Solids that stay when it is dried, [kg/m³], which is g/L; 0..300; outside, an InputError.
 * @returns How much it hides, in US proof, what the hydrometer shows, and whether the rule is meant for so much.
 * @throws InputError when an argument is outside its range.
 * @example obscuredReading(0.4, 4).hidden_proof // → 1.6
 * Source: 27 CFR 30.32 and 13.31 (0.1 g a 100 mL hides 0.4 proof; above 600 mg a 100 mL the proof is found by distilling).
 */
export function obscuredReading(strength: VolumeFraction20C, solids_kg_m3: number): Obscured {
  checkRange('strength', strength, 0, 1, 'a strength from 0 to 1 (0.40 is 40 % vol)');
  checkRange('solids_kg_m3', solids_kg_m3, 0, 300, 'solids from 0 to 300 kg/m³');
  const hidden_proof = HIDDEN_PROOF_PER_KG_M3 * solids_kg_m3;
  const shown = strengthFromProof(Math.max(0, proofFromStrength(strength) - hidden_proof));
  return { hidden_proof, shown, withinRule: solids_kg_m3 <= MOST_KG_M3 };
}

/** 0.4 proof for 0.1 g in 100 mL, which is 1 kg/m³. */
const HIDDEN_PROOF_PER_KG_M3 = 0.4;
/** 600 mg in 100 mL. */
const MOST_KG_M3 = 6;
