// The contract of a vapour model. It says by how much the real vapour departs from an ideal gas in K:
//   K_1 = γ_1 p_1/P exp(F_1 − D (1 − y)²),  K_2 = γ_2 p_2/P exp(F_2 − D y²)
// F_i(T, P) is ln(φ of the saturated pure vapour) − ln(φ of the pure vapour at P); it vanishes where P = p_i, so pure
// substances boil as their saturation equations say. D(T, P) is what a molecule of one kind meets among the other beyond
// the mean of the two pure vapours; without it the vapour is an ideal mixture of real gases (the Lewis rule). An activity
// model names the vapour it was fitted with; the two belong together.

import type { ValueAndSlope } from '../../numerics/root.js';
import type { Kelvin, Pascal } from '../../units/quantities.js';

/** A model of the vapour's non-ideality. */
export interface VapourModel {
  /** What it is called in tables. */
  readonly name: string;
  /**
   * Fills `out` with F of ethanol and dF/dT [1/K] at constant P. `logSaturation` holds ln p and d ln p/dT at T.
   */
  ethanol(temperature_K: Kelvin, pressure_Pa: Pascal, logSaturation: Readonly<ValueAndSlope>, out: ValueAndSlope): void;
  /** The same for water. */
  water(temperature_K: Kelvin, pressure_Pa: Pascal, logSaturation: Readonly<ValueAndSlope>, out: ValueAndSlope): void;
  /** Fills `out` with D and dD/dT [1/K] at constant P; left out where D = 0. */
  cross?(temperature_K: Kelvin, pressure_Pa: Pascal, out: ValueAndSlope): void;
}
