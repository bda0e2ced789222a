// The bubble equation and its derivatives: modified Raoult's law,
//   y_i = K_i x_i,   x K1 + (1 − x) K2 = 1
//   K1 = γ1(x, T) p1(T)/P exp(F1(T, P) − D (1 − y)²),  K2 = γ2(x, T) p2(T)/P exp(F2(T, P) − D y²)
// with F = D = 0 for an ideal vapour and from the model's own vapour otherwise (mixture/vapour/vapour-model.ts),
// solved for T by Newton's method in 1/T on ln(x K1 + (1 − x) K2) = 0, which is nearly straight in 1/T.
//   α = K1/K2,  y = α x / (1 + (α − 1) x),  ln α = ln α0 − D (1 − 2 y)
// A change of y does not move x K1 + (1 − x) K2 (Gibbs-Duhem), so y may lag behind by one step in the search for T; at the
// end it is found by Newton's method. Any change of ln α0 arrives in ln α divided by 1 − 2 D y(1 − y).
// Left out: the Poynting factor (docs/theory/equilibrium.md says what it costs).

import { checkRange, InputError } from '../errors.js';
import type { ActivityModel, ActivityState } from '../mixture/activity/activity-model.js';
import type { ValueAndSlope } from '../numerics/root.js';
import { ethanolSaturation } from '../substances/ethanol-saturation.js';
import { waterSaturation } from '../substances/water-saturation.js';
import type { Kelvin, MoleFraction, Pascal } from '../units/quantities.js';

/** Pressures at which equilibrium is computed, Pa: ethanol boils at 3 °C at the lower and at 181 °C at the upper. */
export const EQUILIBRIUM_RANGE_PA: readonly [Pascal, Pascal] = Object.freeze([2e3, 2e6] as const);

/** A solved bubble point with its slopes at constant pressure. */
export interface BubbleState {
  temperature_K: Kelvin;
  /** Relative volatility α, dimensionless. */
  alpha: number;
  vapour: MoleFraction;
  /** ∂T/∂x, K. */
  temperatureSlope: number;
  /** ∂α/∂x. */
  alphaSlope: number;
  /** ∂y/∂x. */
  vapourSlope: number;
  /** ∂ ln(K_ethanol P)/∂T at constant x and P, 1/K. */
  thermalEthanol: number;
  /** The same of water, 1/K. */
  thermalWater: number;
  /** D of the vapour, dimensionless: a change of ln α0 arrives in ln α divided by 1 − 2 D y(1 − y). */
  cross: number;
}

/** Checks x and P of a public equilibrium function. */
export function checkState(moleFraction: MoleFraction, pressure_Pa: Pascal): void {
  checkRange('moleFraction', moleFraction, 0, 1, 'a mole fraction of ethanol from 0 to 1');
  checkPressure(pressure_Pa);
}

/** Checks P of a public equilibrium function. */
export function checkPressure(pressure_Pa: Pascal): void {
  const [low, high] = EQUILIBRIUM_RANGE_PA;
  checkRange('pressure_Pa', pressure_Pa, low, high, `a pressure from ${String(low)} to ${String(high)} Pa`);
}

/** Whether a temperature lies outside those that a model was fitted to. */
export function isExtrapolated(model: ActivityModel, temperature_K: Kelvin): boolean {
  return temperature_K < model.range_K[0] || temperature_K > model.range_K[1];
}

/** A solver for one model; the returned function fills and returns the same record at each call, from the last solution on. */
export function bubbleSolver(model: ActivityModel): (x: MoleFraction, pressure_Pa: Pascal) => Readonly<BubbleState> {
  const activity: ActivityState = {
    lnGammaEthanol: 0,
    lnGammaWater: 0,
    slopeEthanol: 0,
    slopeWater: 0,
    thermalEthanol: 0,
    thermalWater: 0,
  };
  const ethanol: ValueAndSlope = { value: 0, slope: 0 };
  const water: ValueAndSlope = { value: 0, slope: 0 };
  const departure: ValueAndSlope = { value: 0, slope: 0 };
  const cross: ValueAndSlope = { value: 0, slope: 0 };
  const vapour = model.vapour;
  const state: BubbleState = {
    temperature_K: START_K,
    alpha: 1,
    vapour: 0,
    temperatureSlope: 0,
    alphaSlope: 0,
    vapourSlope: 0,
    thermalEthanol: 0,
    thermalWater: 0,
    cross: 0,
  };
  let lastPressure_Pa = 0;

  return (x, pressure_Pa) => {
    const logPressure = Math.log(pressure_Pa);
    const start = pressure_Pa === lastPressure_Pa ? 1 / state.temperature_K : coldStart(pressure_Pa);
    const temperature_K = solve(start, x, pressure_Pa, logPressure);
    lastPressure_Pa = pressure_Pa;
    fill(temperature_K, x, pressure_Pa, logPressure);
    return state;
  };

  /** ln(p_i exp F_i) and its slope by T at constant P. */
  function fugacities(temperature_K: Kelvin, pressure_Pa: Pascal): void {
    ethanolSaturation.logPressure(temperature_K, ethanol);
    waterSaturation.logPressure(temperature_K, water);
    if (vapour === undefined) return;
    vapour.ethanol(temperature_K, pressure_Pa, ethanol, departure);
    ethanol.value += departure.value;
    ethanol.slope += departure.slope;
    vapour.water(temperature_K, pressure_Pa, water, departure);
    water.value += departure.value;
    water.slope += departure.slope;
    vapour.cross?.(temperature_K, pressure_Pa, cross);
  }

  function solve(start: number, x: number, pressure_Pa: Pascal, logPressure: number): Kelvin {
    let inverse = start;
    let y: number = state.vapour;
    for (let i = 0; i < MAX_ITERATIONS; i++) {
      const temperature_K = 1 / inverse;
      model.activity(x, temperature_K, activity);
      fugacities(temperature_K, pressure_Pa);
      const [f1, f2] = [(1 - y) * (1 - y), y * y];
      const first = x * Math.exp(activity.lnGammaEthanol + ethanol.value - cross.value * f1 - logPressure);
      const second = (1 - x) * Math.exp(activity.lnGammaWater + water.value - cross.value * f2 - logPressure);
      const sum = first + second;
      y = first / sum;
      const thermal1 = activity.thermalEthanol + ethanol.slope - cross.slope * f1;
      const thermal2 = activity.thermalWater + water.slope - cross.slope * f2;
      const byTemperature = (first * thermal1 + second * thermal2) / sum;
      const step = Math.log(sum) / (byTemperature * temperature_K * temperature_K);
      inverse = Math.min(HIGHEST_INVERSE, Math.max(LOWEST_INVERSE, inverse + step));
      if (Math.abs(step) < SMALLEST_STEP) return 1 / inverse;
    }
    throw new InputError({
      argument: 'model',
      value: model.name,
      expected: `a model whose bubble point can be found (x ${String(x)}, ln P ${String(logPressure)})`,
    });
  }

  function fill(temperature_K: Kelvin, x: number, pressure_Pa: Pascal, logPressure: number): void {
    model.activity(x, temperature_K, activity);
    fugacities(temperature_K, pressure_Pa);
    const d = cross.value;
    const alpha0 = Math.exp(activity.lnGammaEthanol + ethanol.value - activity.lnGammaWater - water.value);
    const y = vapourOver(x, alpha0, d);
    const answer = 1 - 2 * d * y * (1 - y);
    const k1 = Math.exp(activity.lnGammaEthanol + ethanol.value - d * (1 - y) * (1 - y) - logPressure);
    const k2 = Math.exp(activity.lnGammaWater + water.value - d * y * y - logPressure);
    const thermal1 = activity.thermalEthanol + ethanol.slope - cross.slope * (1 - y) * (1 - y);
    const thermal2 = activity.thermalWater + water.slope - cross.slope * y * y;
    const byComposition = k1 - k2 + x * k1 * activity.slopeEthanol + (1 - x) * k2 * activity.slopeWater;
    const byTemperature = x * k1 * thermal1 + (1 - x) * k2 * thermal2;
    const alpha = k1 / k2;
    const denominator = 1 + (alpha - 1) * x;
    const temperatureSlope = -byComposition / byTemperature;
    const byLiquid = activity.slopeEthanol - activity.slopeWater + (thermal1 - thermal2) * temperatureSlope;
    const alphaSlope = (alpha * (byLiquid + (2 * d * alpha) / (denominator * denominator))) / answer;
    state.temperature_K = temperature_K;
    state.alpha = alpha;
    state.vapour = (alpha * x) / denominator;
    state.thermalEthanol = thermal1;
    state.thermalWater = thermal2;
    state.cross = d;
    state.temperatureSlope = temperatureSlope;
    state.alphaSlope = alphaSlope;
    state.vapourSlope = (alpha + alphaSlope * x * (1 - x)) / (denominator * denominator);
  }
}

const MAX_ITERATIONS = 60;
/** Newton's last step in 1/T [1/K]; 1e-12 of 1/T, after which the next step would be rounding. */
const SMALLEST_STEP = 3e-15;
const START_K = 362;
/** ln p of both substances falls by about this many kelvin times 1/T. */
const CLAPEYRON_K = 4900;
const START_LOG_PRESSURE = Math.log(1e5);
const HIGHEST_INVERSE = 1 / ethanolSaturation.equation.lowest_K;
const LOWEST_INVERSE = 1 / (ethanolSaturation.equation.criticalTemperature_K - 1);

/** y = α x/(1 + (α − 1) x) with ln α = ln α0 − D (1 − 2 y), by Newton's method; the first guess is right where D = 0. */
function vapourOver(x: number, alpha0: number, d: number): number {
  const over = (alpha: number): number => (alpha * x) / (1 + (alpha - 1) * x);
  let y = over(alpha0);
  if (d === 0) return y;
  for (let i = 0; i < MAX_ITERATIONS; i++) {
    const found = over(alpha0 * Math.exp(-d * (1 - 2 * y)));
    const step = (found - y) / (1 - 2 * d * found * (1 - found));
    y += step;
    if (Math.abs(step) < 1e-15) break;
  }
  return y;
}

function coldStart(pressure_Pa: Pascal): number {
  return 1 / START_K - (Math.log(pressure_Pa) - START_LOG_PRESSURE) / CLAPEYRON_K;
}
