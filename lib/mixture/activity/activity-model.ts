// The contract of a liquid-phase activity model for ethanol (1) + water (2).
//
//   gE/RT = x1 ln γ1 + x2 ln γ2            (excess Gibbs energy)
//   ln γ1 = g + (1 − x1) dg/dx1,  ln γ2 = g − x1 dg/dx1     with g = gE/RT at constant T
//   hE/RT = −T (∂g/∂T) at constant x       (Gibbs-Helmholtz)
//
// A member supplies ln γ and its slopes in closed form and gE by its own formula; the laws matrix in
// tests/laws derives each from the other and compares.

import type { Kelvin, MoleFraction } from '../../units/quantities.js';
import type { VapourModel } from '../vapour/vapour-model.js';

/** ln γ of both components and their derivatives at one state; every entry dimensionless or 1/K. */
export interface ActivityState {
  /** ln γ of ethanol. */
  lnGammaEthanol: number;
  /** ln γ of water. */
  lnGammaWater: number;
  /** ∂ ln γ_ethanol / ∂x at constant T. */
  slopeEthanol: number;
  /** ∂ ln γ_water / ∂x at constant T. */
  slopeWater: number;
  /** ∂ ln γ_ethanol / ∂T at constant x, 1/K. */
  thermalEthanol: number;
  /** ∂ ln γ_water / ∂T at constant x, 1/K. */
  thermalWater: number;
}

/** A model of the liquid's non-ideality; x is the mole fraction of ethanol in the liquid. */
export interface ActivityModel {
  /** Registry key, for instance `nrtl`. */
  readonly name: string;
  /** Temperatures the parameters were fitted to, K; outside, results are extrapolated. */
  readonly range_K: readonly [number, number];
  /** Where the parameters come from. */
  readonly source: string;
  /** The vapour it was fitted with; an ideal gas when left out. */
  readonly vapour?: VapourModel;
  /** Its parameters, and the same model with others in their place: for derivatives by them. Need not be there. */
  readonly parameters?: readonly number[];
  withParameters?(parameters: readonly number[]): ActivityModel;
  /** gE/RT, dimensionless. */
  excessGibbs(x: MoleFraction, temperature_K: Kelvin): number;
  /** Fills `out` with ln γ and slopes at x in [0, 1] and T; the ends are exact limits. Returns `out`. */
  activity(x: MoleFraction, temperature_K: Kelvin, out: ActivityState): ActivityState;
}
