// What measurements of one state differ by from laboratory to laboratory, beyond the error of any model:
//   the liquid's composition is off by ε x (1 − x)², the vapour's ln(y/(1 − y)) by a + b (1 − x), the temperature by s_T,
//   the pressure by what s_P per MPa of it makes of the temperature; so
//   s_y² = (∂y/∂x ε x (1 − x)²)² + (y (1 − y)(a + b (1 − x)))²
//   s(T)² = (∂T/∂x ε x (1 − x)²)² + s_T² + (s_P P/1 MPa)²
// The constants are found by reference/regression/laboratories.mjs from sets that the fitted model has not seen.

import { STANDARD_ATMOSPHERE } from '../constants.js';
import type { MoleFraction, Pascal } from '../units/quantities.js';
import type { BubbleState } from './bubble-state.js';

/** Constants of the laboratories. */
export interface LaboratoryConstants {
  /** ε, dimensionless. */
  readonly composition: number;
  /** a, of ln(y/(1 − y)). */
  readonly vapour: number;
  /** b, the same, at the weak end. */
  readonly vapourWeak: number;
  /** s_T, K. */
  readonly temperature_K: number;
  /** s_P, K at 1 MPa, in proportion to the pressure. */
  readonly atOneMPa_K: number;
}

/** Constants of published azeotropes. */
export interface AzeotropeConstants {
  /** Of ln α at 1 atm. */
  readonly azeotrope: number;
  /** Of ln α for each factor e in pressure away from 1 atm, where fewer have measured. */
  readonly azeotropeAway: number;
}

/** Standard error of ln α between published azeotropes at a pressure. */
export function azeotropeError({ azeotrope, azeotropeAway }: AzeotropeConstants, pressure_Pa: Pascal): number {
  return Math.hypot(azeotrope, azeotropeAway * Math.log(pressure_Pa / STANDARD_ATMOSPHERE));
}

/** Standard errors of y and T between laboratories at a boiling point. */
export function laboratoryErrors(
  constants: LaboratoryConstants,
  x: MoleFraction,
  pressure_Pa: Pascal,
  state: Readonly<BubbleState>,
): { vapourMoleFraction: number; temperature_K: number } {
  const { composition, vapour, vapourWeak, temperature_K, atOneMPa_K } = constants;
  const { vapour: y, vapourSlope, temperatureSlope } = state;
  const liquid = composition * x * (1 - x) * (1 - x);
  return {
    vapourMoleFraction: Math.hypot(vapourSlope * liquid, y * (1 - y) * (vapour + vapourWeak * (1 - x))),
    temperature_K: Math.hypot(temperatureSlope * liquid, temperature_K, (atOneMPa_K * pressure_Pa) / 1e6),
  };
}
