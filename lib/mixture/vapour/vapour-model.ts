// The contract of a vapour model. It says by how much the real vapour departs from an ideal gas in K:
//   K_i = γ_i p_i/P exp(F_i),  F_i(T, P) = ln(φ_i of the saturated pure vapour) − ln(φ_i in the vapour at P)
// F_i vanishes where P = p_i, so pure substances boil as their saturation equations say. An activity model names the
// vapour it was fitted with; the two belong together.

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
}
