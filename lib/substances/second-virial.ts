// Second virial coefficients of ethanol and water vapour by the correlation of Tsonopoulos:
//
//   B pc/(R Tc) = f0 + ω f1 + a f2 + b f3,  Tr = T/Tc
//   f0 = 0.1445 − 0.330/Tr − 0.1385/Tr² − 0.0121/Tr³ − 0.000607/Tr⁸
//   f1 = 0.0637 + 0.331/Tr² − 0.423/Tr³ − 0.008/Tr⁸,  f2 = 1/Tr⁶,  f3 = −1/Tr⁸
//
// 1-alkanols: a = 0.0878, b = 0.00908 + 0.0006957 μr, with μr = 66.2 of ethanol (1.7 debye); water: a = −0.0109, b = 0.
// Constants from memory; water comes out within 6 % of the CRC Handbook's polynomial from 30 to 150 °C (1 % from 78 °C).
// Ethanol comes out 21 % weaker than the CRC polynomial at 78 °C, about the spread of its measurements; that
// polynomial holds for some 320 to 390 K only and turns round at 404 K, so it is not used.
// Source: C. Tsonopoulos, AIChE J. 20 (1974) 263-272; Poling, Prausnitz & O'Connell 2001, section 4-5.

import { GAS_CONSTANT } from '../constants.js';
import { checkRange } from '../errors.js';
import type { ValueAndSlope } from '../numerics/root.js';
import type { Kelvin } from '../units/quantities.js';

/** B [m³/mol] and dB/dT of one substance into `out`; no range check (for inner loops). */
export type SecondVirial = (temperature_K: Kelvin, out: ValueAndSlope) => void;

/** B of ethanol. */
export const ethanolVirial = correlation(514.0, 6.137e6, 0.645, 0.0878, 0.00908 + 0.0006957 * 66.2);
/** B of water. */
export const waterVirial = correlation(647.1, 22.06e6, 0.344, -0.0109, 0);

function correlation(critical_K: Kelvin, critical_Pa: number, acentric: number, a: number, b: number): SecondVirial {
  const unit = (GAS_CONSTANT * critical_K) / critical_Pa;
  // Powers of 1/Tr: 0, 1, 2, 3, 6, 8.
  const c0 = unit * (0.1445 + 0.0637 * acentric);
  const c1 = unit * -0.33;
  const c2 = unit * (-0.1385 + 0.331 * acentric);
  const c3 = unit * (-0.0121 - 0.423 * acentric);
  const c6 = unit * a;
  const c8 = unit * (-0.000607 - 0.008 * acentric - b);
  return (temperature_K, out) => {
    const s = critical_K / temperature_K;
    const s3 = s * s * s;
    out.value = c0 + s * (c1 + s * (c2 + s * (c3 + s3 * (c6 + s * s * c8))));
    out.slope = (-s * (c1 + s * (2 * c2 + s * (3 * c3 + s3 * (6 * c6 + s * s * 8 * c8))))) / temperature_K;
  };
}

/** B at T, m³/mol; an InputError outside 270 to 513 K. */
export function secondVirial(virial: SecondVirial, temperature_K: Kelvin): number {
  checkRange('temperature_K', temperature_K, 270, 513, 'a temperature from 270 to 513 K');
  const out: ValueAndSlope = { value: 0, slope: 0 };
  virial(temperature_K, out);
  return out.value;
}
