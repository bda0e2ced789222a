// US proof: twice the per cent by volume of ethanol at 60 °F (15.56 °C), instead of 20 °C.
//
//   proof = 200 p ρ(p, 60 °F) / ρ(1, 60 °F)
//
// with ρ by OIML R 22. The tables of 27 CFR Part 30 rest on an older density of pure ethanol, 1e-4 higher,
// so that near 200 proof they differ from this by 1e-4.
// Source: 27 CFR 30.11 (definition); 27 CFR 19.1 (proof gallon).

import { MOST_m3 } from './volume.js';
import { checkRange } from '../errors.js';
import type {
  CubicMetre,
  KilogramPerCubicMetre,
  MassFraction,
  ProofUS,
  VolumeFraction20C,
} from '../units/quantities.js';
import { AT_20_CELSIUS, AT_60_FAHRENHEIT, densityByPolynomial, densitySlopeByPolynomial } from './density.js';
import { rootBetweenZeroAndOne } from './invert.js';
import { share } from './share.js';
import { massFractionFromStrength, strengthFromMassFraction } from './strength.js';

/**
 * US proof from the mass fraction of ethanol.
 *
 * Equation: proof = 200 p ρ(p, 60 °F) / ρ(1, 60 °F).
 * @param massFraction Mass fraction of ethanol, p; 0..1; outside, an InputError.
 * @returns US proof, 0..200.
 * @throws InputError when the mass fraction is not a number from 0 to 1.
 * @example proofFromMassFraction(0.42483) // → 100.00
 * Source: 27 CFR 30.11, with the densities of OIML R 22, 1975.
 */
export function proofFromMassFraction(massFraction: MassFraction): ProofUS {
  return 200 * shareAt60F(share('massFraction', massFraction, 'a mass fraction from 0 to 1'));
}

/**
 * Mass fraction of ethanol from the US proof.
 *
 * Equation: proof = 200 p ρ(p, 60 °F) / ρ(1, 60 °F) solved for p by safeguarded Newton steps.
 * @param proof US proof; 0..200; outside, an InputError.
 * @returns Mass fraction of ethanol, p, 0..1.
 * @throws InputError when the proof is not a number from 0 to 200.
 * @example massFractionFromProof(100) // → 0.42483
 * Source: 27 CFR 30.11, with the densities of OIML R 22, 1975.
 */
export function massFractionFromProof(proof: ProofUS): MassFraction {
  checkProof('proof', proof);
  const atSixty = Math.min(1, Math.max(0, proof / 200));
  if (atSixty === 0 || atSixty === 1) return atSixty;
  return rootBetweenZeroAndOne(
    (p, out) => {
      const density = densityByPolynomial(AT_60_FAHRENHEIT, p);
      out.value = (p * density) / ETHANOL_AT_60F - atSixty;
      out.slope = (density + p * densitySlopeByPolynomial(AT_60_FAHRENHEIT, p)) / ETHANOL_AT_60F;
    },
    atSixty * (0.79 + 0.2 * atSixty),
  );
}

/**
 * US proof from the strength by volume at 20 °C.
 *
 * Equation: q → p by inversion of R 22 at 20 °C, then proof = 200 p ρ(p, 60 °F) / ρ(1, 60 °F).
 * @param strength Strength by volume at 20 °C, q; 0..1; outside, an InputError.
 * @returns US proof, 0..200; near 2 × the % vol, but not equal to it.
 * @throws InputError when the strength is not a number from 0 to 1.
 * @example proofFromStrength(0.4) // → 79.86
 * Source: 27 CFR 30.11, with the densities of OIML R 22, 1975.
 */
export function proofFromStrength(strength: VolumeFraction20C): ProofUS {
  return proofFromMassFraction(massFractionFromStrength(strength));
}

/**
 * Strength by volume at 20 °C from the US proof.
 *
 * Equation: proof → p by inversion of R 22 at 60 °F, then q = p ρ(p, 20 °C) / ρ(1, 20 °C).
 * @param proof US proof; 0..200; outside, an InputError.
 * @returns Strength by volume at 20 °C, q, 0..1.
 * @throws InputError when the proof is not a number from 0 to 200.
 * @example strengthFromProof(80) // → 0.4007
 * Source: 27 CFR 30.11, with the densities of OIML R 22, 1975.
 */
export function strengthFromProof(proof: ProofUS): VolumeFraction20C {
  return strengthFromMassFraction(massFractionFromProof(proof));
}

/**
 * US proof gallons in a volume of pure alcohol measured at 20 °C.
 *
 * Equation: PG = V ρ(1, 20 °C) / ρ(1, 60 °F) / (half a US gallon); a proof gallon is a gallon at 60 °F that is half ethanol by volume.
 * @param pureAlcohol_m3 Volume of pure alcohol at 20 °C, V, [m³]; 0 or more; else an InputError.
 * @returns Proof gallons (US).
 * @throws InputError when the volume is negative or not finite.
 * @example proofGallonsFromPureAlcohol(0.001) // → 0.5258
 * Source: 27 CFR 19.1, with the densities of OIML R 22, 1975.
 */
export function proofGallonsFromPureAlcohol(pureAlcohol_m3: CubicMetre): number {
  checkRange('pureAlcohol_m3', pureAlcohol_m3, 0, MOST_m3, 'a volume of 0 m³ or more');
  return (pureAlcohol_m3 * densityByPolynomial(AT_20_CELSIUS, 1)) / (ETHANOL_AT_60F * ETHANOL_PER_PROOF_GALLON_m3);
}

/**
 * Density that a weighing in air against brass weights shows, lower than the true density by the lift of the air.
 *
 * Equation: ρ_air-weighed = (ρ − ρ_air) / (1 − ρ_air / ρ_brass), ρ_air = 1.2245 kg/m³, ρ_brass = 8400 kg/m³.
 * @param density_kg_m3 Density in vacuum, ρ, [kg/m³]; above 1.2245; else an InputError.
 * @returns Mass shown by a balance for one cubic metre, [kg/m³].
 * @throws InputError when the density is not above that of air.
 * @example densityInAir(999.01) // → 997.93
 * Source: Archimedes' principle; the two densities are common practice in US gauging, no published source. They give the weight of a gallon of water in 27 CFR 21.161 within 1.2e-5.
 */
export function densityInAir(density_kg_m3: KilogramPerCubicMetre): KilogramPerCubicMetre {
  const expected = 'a density above that of air, 1.2245, up to 1e5 kg/m³';
  checkRange('density_kg_m3', density_kg_m3, AIR + Number.EPSILON, 1e5, expected);
  return (density_kg_m3 - AIR) / (1 - AIR / BRASS);
}

/** Throws an InputError unless the proof is in 0..200 (a rounding error beyond is let through). */
export function checkProof(argument: string, proof: ProofUS): void {
  checkRange(argument, proof, -1e-7, 200 + 1e-7, 'a US proof from 0 to 200');
}

/** Volume of ethanol in a volume of mixture, both at 60 °F. */
function shareAt60F(p: MassFraction): number {
  return (p * densityByPolynomial(AT_60_FAHRENHEIT, p)) / ETHANOL_AT_60F;
}

const ETHANOL_AT_60F = densityByPolynomial(AT_60_FAHRENHEIT, 1);
/** Half a US gallon of 231 cubic inches. Source: 27 CFR 19.1. */
const ETHANOL_PER_PROOF_GALLON_m3 = (231 * 0.0254 ** 3) / 2;
const AIR = 1.2245;
const BRASS = 8400;
