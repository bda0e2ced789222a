// True strength from a hydrometer read in liquid that is not at the hydrometer's own temperature.
//
// A glass hydrometer sinks until it displaces its own mass. Its mark r was made for a liquid of density
// ρ(p_r, T_ref) and its glass at T_ref; at T the same mark means
//
//   ρ(p, T) (1 + α (T − T_ref)) = ρ(p_r, T_ref)
//
// with α the cubic expansion of glass. Lift of the air on the stem and capillarity cancel to first order.
// Source: OIML R 22, 1975 (densities); 27 CFR 30.61 (published example).

import { kindFault, refuse } from '../arguments.js';
import { ZERO_CELSIUS } from '../constants.js';
import { checkRange, type Outcome } from '../errors.js';
import type { Kelvin, MassFraction, ProofUS, VolumeFraction20C } from '../units/quantities.js';
import {
  AT_20_CELSIUS,
  AT_60_FAHRENHEIT,
  densityByPolynomial,
  densityPolynomial,
  densitySlopeByPolynomial,
  TWENTY_CELSIUS,
} from './density.js';
import { rootBetweenZeroAndOne } from './invert.js';
import { massFractionFromProof, proofFromMassFraction } from './proof.js';
import { massFractionFromStrength, strengthFromMassFraction } from './strength.js';

/** What was read: on a scale of % vol (true at 20 °C) or of US proof (true at 60 °F), and how warm the liquid was. */
export type HydrometerReading = {
  /** Temperature of the liquid and the hydrometer, K; 253.15..313.15. */
  readonly temperature_K: Kelvin;
  /** Cubic expansion of the glass, 1/K; default 25e-6 (soda-lime glass). */
  readonly glassExpansion_per_K?: number;
} & (
  | { readonly scale: 'volume'; readonly strength: VolumeFraction20C }
  | { readonly scale: 'proof'; readonly proof: ProofUS }
);

/** The mixture that floats the hydrometer so, in three bases. */
export interface TrueStrength {
  readonly massFraction: MassFraction;
  readonly strength: VolumeFraction20C;
  readonly proof: ProofUS;
}

/**
 * True strength from a hydrometer reading at another temperature, with the expansion of the glass.
 *
 * Equation: ρ(p, T) (1 + α (T − T_ref)) = ρ(p_reading, T_ref) solved for p by safeguarded Newton steps.
 * @param reading What was read: `scale` 'volume' with `strength` (true at 20 °C), or 'proof' with `proof` (true at 60 °F); `temperature_K` of the liquid, T, [K], 253.15..313.15; `glassExpansion_per_K`, α, [1/K], 0..1e-4, default 25e-6. Outside, an InputError.
 * @returns `found: true` with mass fraction, strength at 20 °C and US proof; `found: false` with reason 'denser-than-water' or 'lighter-than-ethanol' when no mixture of ethanol and water floats the hydrometer so.
 * @throws InputError when the reading, the temperature or the expansion is outside its range.
 * @example foundIn(trueStrengthFromReading({ scale: 'proof', proof: 193, temperature_K: 297.04 })).proof // → 189.46
 * Source: OIML R 22, 1975; 27 CFR 30.61 has 189.5 for this example.
 */
export function trueStrengthFromReading(
  reading: HydrometerReading,
): Outcome<TrueStrength, 'denser-than-water' | 'lighter-than-ethanol'> {
  refuse(kindFault('reading', reading, SCALES, 'scale'));
  const { glassExpansion_per_K: expansion = SODA_LIME_GLASS } = reading;
  checkRange('reading.glassExpansion_per_K', expansion, 0, 1e-4, 'an expansion from 0 to 1e-4 per K');
  const polynomial = densityPolynomial(reading.temperature_K);
  const [markDensity, reference_K] = densityOfMark(reading);
  const density = markDensity / (1 + expansion * (reading.temperature_K - reference_K));

  const water = densityByPolynomial(polynomial, 0);
  const ethanol = densityByPolynomial(polynomial, 1);
  if (density > water * (1 + ROUNDING)) return notFound('denser-than-water');
  if (density < ethanol * (1 - ROUNDING)) return notFound('lighter-than-ethanol');
  if (density >= water) return mixture(0);
  if (density <= ethanol) return mixture(1);
  const guess = (water - density) / (water - ethanol);
  const massFraction = rootBetweenZeroAndOne((p, out) => {
    out.value = densityByPolynomial(polynomial, p) - density;
    out.slope = densitySlopeByPolynomial(polynomial, p);
  }, guess);
  return mixture(massFraction);
}

const OWN = ['temperature_K', 'glassExpansion_per_K'];
const SCALES = { volume: ['strength', ...OWN], proof: ['proof', ...OWN] };

/** Density for which the mark was made, kg/m³, and the temperature for which it was made, K. */
function densityOfMark(reading: HydrometerReading): [number, Kelvin] {
  if (reading.scale === 'volume') {
    return [densityByPolynomial(AT_20_CELSIUS, massFractionFromStrength(reading.strength)), TWENTY_CELSIUS];
  }
  return [densityByPolynomial(AT_60_FAHRENHEIT, massFractionFromProof(reading.proof)), SIXTY_FAHRENHEIT];
}

function mixture(massFraction: MassFraction): { readonly found: true } & TrueStrength {
  return {
    found: true,
    massFraction,
    strength: strengthFromMassFraction(massFraction),
    proof: proofFromMassFraction(massFraction),
  };
}

function notFound<Reason extends 'denser-than-water' | 'lighter-than-ethanol'>(reason: Reason) {
  const message =
    reason === 'denser-than-water'
      ? 'The liquid is denser than water at this temperature, so it holds something besides ethanol and water, or the temperature is wrong.'
      : 'The liquid is lighter than pure ethanol at this temperature, so the reading or the temperature is wrong.';
  return { found: false, reason, message } as const;
}

const SODA_LIME_GLASS = 25e-6;
const SIXTY_FAHRENHEIT = ZERO_CELSIUS + (60 - 32) / 1.8;
const ROUNDING = 1e-12;
