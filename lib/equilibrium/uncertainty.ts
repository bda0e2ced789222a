// How sure the reference model's equilibrium is, in two senses:
//   curve - how far the model itself may be off: from the covariance of its parameters θ, which holds how they move when
//     each set of measurements is left out in turn, and from what the vapour's cross coefficient leaves open
//   the whole - how far a further laboratory's measurement may lie from the model: the curve's error and what
//     laboratories differ by among themselves (laboratory.ts). Points of sets that the model has not seen lie within
//     two of these standard errors in 90 to 98 of 100 cases (docs/theory/residuals.md).
//
//   ln γ_i is linear in θ: δ ln γ_i = b_iᵀ δθ. At constant x and P the bubble equation gives
//   δT = −(y δln γ1 + (1 − y) δln γ2)/(y t1 + (1 − y) t2),  t_i = ∂ ln(K_i P)/∂T
//   δln α = (δln γ1 − δln γ2 + (t1 − t2) δT)/(1 − 2 D y(1 − y)),  δy = y (1 − y) δln α
//   δx_azeotrope = −δln α/(d ln α/dx)
//   standard error of a quantity q with gradient g = dq/dθ:  |Lᵀ g|,  covariance = L Lᵀ
//
// Not in the curve's error: a fault that all sets share, and the pure vapour pressures (0.1 % or 0.03 K each).

import { LABORATORIES_ETHANOL_WATER } from '../data/laboratories-ethanol-water.js';
import { REDLICH_KISTER_COVARIANCE as covariance } from '../data/redlich-kister-covariance.js';
import { coefficientSeries } from '../data/parameter-set.js';
import type { Outcome } from '../errors.js';
import { EXPANSION, redlichKister, temperatureFunctions } from '../mixture/activity/redlich-kister.js';
import type { KelvinDifference, MoleFraction, Pascal } from '../units/quantities.js';
import { azeotrope } from './azeotrope.js';
import { bubbleSolver, type BubbleState, checkState } from './bubble-state.js';
import { azeotropeError, laboratoryErrors } from './laboratory.js';

/** Standard errors of the reference model's boiling point, against what a further laboratory would measure. */
export interface EquilibriumUncertainty {
  /** Of the mole fraction in the vapour, y. */
  readonly vapourMoleFraction: number;
  /** Of the boiling temperature, K. */
  readonly temperature_K: KelvinDifference;
  /** The part of them that is the model's own: how far its curve may lie from the truth. */
  readonly curve: { readonly vapourMoleFraction: number; readonly temperature_K: KelvinDifference };
  /** Whether the state lies inside the temperatures the model was fitted to; outside, the errors are too small. */
  readonly insideFittedRange: boolean;
}

/** Standard errors of the reference model's azeotrope, against what a further laboratory would publish. */
export interface AzeotropeUncertainty {
  readonly moleFraction: number;
  readonly temperature_K: KelvinDifference;
  /** The part of them that is the model's own. */
  readonly curve: { readonly moleFraction: number; readonly temperature_K: KelvinDifference };
}

/**
 * Standard errors of vapour and temperature at a boiling point of the reference model: two of them hold 90 to 98 of 100
 * measured points that the model has not seen.
 *
 * Equation: |Lᵀ dq/dθ| with the covariance L Lᵀ of the regressed parameters θ, and the scatter between laboratories.
 * @param moleFraction Ethanol in the liquid, x, [mol/mol]; 0 to 1; outside it throws.
 * @param pressure_Pa Pressure P, [Pa]; 2 kPa to 2 MPa; outside it throws.
 * @returns Standard errors of y and of T [K], the model's own part of them, and whether the state is inside the fitted
 *   range.
 * @throws InputError when the composition or the pressure is outside its range.
 * @example equilibriumUncertainty(0, 101325).vapourMoleFraction // → 0
 * Source: linear propagation of errors; this project, docs/theory/equilibrium.md.
 */
export function equilibriumUncertainty(moleFraction: MoleFraction, pressure_Pa: Pascal): EquilibriumUncertainty {
  checkState(moleFraction, pressure_Pa);
  const state = bubbleSolver(redlichKister)(moleFraction, pressure_Pa);
  const { vapour, temperature_K } = state;
  const own = curveErrors(moleFraction, state);
  const curve = { vapourMoleFraction: vapour * (1 - vapour) * own.volatility, temperature_K: own.temperature_K };
  const laboratory = laboratoryErrors(laboratories, moleFraction, pressure_Pa, state);
  const [low, high] = redlichKister.range_K;
  return {
    vapourMoleFraction: Math.hypot(curve.vapourMoleFraction, laboratory.vapourMoleFraction),
    temperature_K: Math.hypot(curve.temperature_K, laboratory.temperature_K),
    curve,
    insideFittedRange: temperature_K >= low && temperature_K <= high,
  };
}

/**
 * Standard errors of the reference model's azeotrope at a pressure: two of them hold 90 to 98 of 100 published values.
 *
 * Equation: δx = −δ ln α/(d ln α/dx) at ln α = 0; δT as at any boiling point, whose slope by x vanishes there.
 * @param pressure_Pa Pressure P, [Pa]; 2 kPa to 2 MPa; outside it throws.
 * @returns found true with standard errors of x and of T [K] and the model's own part of them; found false where there is
 *   no azeotrope.
 * @throws InputError when the pressure is outside its range.
 * @example azeotropeUncertainty(5000).found // → false
 * Source: linear propagation of errors; this project, docs/theory/equilibrium.md.
 */
export function azeotropeUncertainty(pressure_Pa: Pascal): Outcome<AzeotropeUncertainty, 'none'> {
  const point = azeotrope(pressure_Pa, redlichKister);
  if (!point.found) return point;
  const state = bubbleSolver(redlichKister)(point.moleFraction, pressure_Pa);
  const own = curveErrors(point.moleFraction, state);
  const slope = Math.abs(state.alphaSlope / state.alpha);
  const laboratory = laboratoryErrors(laboratories, point.moleFraction, pressure_Pa, state);
  return {
    found: true,
    moleFraction: Math.hypot(own.volatility, azeotropeError(laboratories, pressure_Pa)) / slope,
    temperature_K: Math.hypot(own.temperature_K, laboratory.temperature_K),
    curve: { moleFraction: own.volatility / slope, temperature_K: own.temperature_K },
  };
}

/** Standard errors of ln α and of T [K] that are the model's own. */
function curveErrors(x: MoleFraction, state: Readonly<BubbleState>): { volatility: number; temperature_K: number } {
  const { volatility, temperature } = gradients(x, state);
  const { crossVolatility, cross_K } = laboratories;
  const mixed = x > 0 && x < 1 ? 1 : 0;
  return {
    volatility: Math.hypot(standardError(volatility), crossVolatility * (1 - x)),
    temperature_K: Math.hypot(standardError(temperature), mixed * cross_K),
  };
}

/** d ln α/dθ and dT/dθ at constant x and P, in the order of the covariance. */
function gradients(x: MoleFraction, state: Readonly<BubbleState>): { volatility: number[]; temperature: number[] } {
  const { stretch, middle_K, series } = EXPANSION;
  const { vapour: y, temperature_K, thermalEthanol, thermalWater, cross } = state;
  const answer = 1 - 2 * cross * y * (1 - y);
  const functions = temperatureFunctions(temperature_K, middle_K);
  const divisor = 1 + (stretch - 1) * x;
  const w = (1 - x - stretch * x) / divisor;
  const p = (x * (1 - x)) / divisor;
  const p1 = (1 - 2 * x - (stretch - 1) * x * x) / (divisor * divisor);
  const w1 = (-2 * stretch) / (divisor * divisor);
  const thermal = y * thermalEthanol + (1 - y) * thermalWater;
  const volatility: number[] = [];
  const temperature: number[] = [];
  series.forEach((terms, j) => {
    terms.forEach((_, k) => {
      // gE/RT = f_j p w^k and its slope by x.
      const g = functions[j]! * p * w ** k;
      const slope = functions[j]! * (p1 * w ** k + (k === 0 ? 0 : p * k * w ** (k - 1) * w1));
      const ethanol = g + (1 - x) * slope;
      const water = g - x * slope;
      const byTemperature = -(y * ethanol + (1 - y) * water) / thermal;
      temperature.push(byTemperature);
      volatility.push((ethanol - water + (thermalEthanol - thermalWater) * byTemperature) / answer);
    });
  });
  return { volatility, temperature };
}

/** |Lᵀ g|. */
function standardError(gradient: readonly number[]): number {
  let sum = 0;
  for (let j = 0; j < gradient.length; j++) {
    let part = 0;
    for (let i = j; i < gradient.length; i++) part += FACTOR[i]![j]! * gradient[i]!;
    sum += part * part;
  }
  return Math.sqrt(sum);
}

const laboratories = LABORATORIES_ETHANOL_WATER.coefficients;
const PARAMETERS = EXPANSION.series.reduce((sum, terms) => sum + terms.length, 0);
const FACTOR = Array.from({ length: PARAMETERS }, (_, i) => coefficientSeries(covariance, `L${String(i + 1)}_`));
