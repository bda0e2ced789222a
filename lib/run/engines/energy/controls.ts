// How the train is driven during one step of the run sheet: heat, and how much runs back. A hold is a feedback law,
//
//   share = clamp(s₀ + K (x_z − x) + I),   dI/dt = (K/T_i) (x_z − x) + (share − unclamped)/T_i
//
// proportional and integral, the integral bled off where the share stands at a limit. K and T_i are this project's choice: a column answers within some minutes.

import { moleFractionFromStrength } from '../../../mixture/strength.js';
import { waterConductance } from '../../../still/condensers.js';
import type { MoleFraction } from '../../../units/quantities.js';
import type { CompleteProblem } from '../../complete.js';
import type { Heat, RunStep } from '../../problem.js';

export const GAIN = 8;
export const INTEGRAL_s = 240;
/** 'total' on a partial condenser: so many times the heat, more than there is to take. */
export const TOTAL_DUTY = 3;

/** What a step sets; energies in W. */
export interface Controls {
  power_W: number;
  /** Share of what runs out of the drum that runs back. */
  returned: number;
  /** Duty of a partial condenser, W; with a hold, the most it may be. */
  duty_W: number;
  /** Conductance of a partial condenser to its water, W/K. */
  water_W_K: number;
  hold: HoldLaw | null;
}

/** A hold, with its strength as mole fraction. */
export interface HoldLaw {
  readonly target: MoleFraction;
  readonly least: number;
  readonly most: number;
}

/** The controls of a step on a still. */
export function controlsOf(step: RunStep, problem: Pick<CompleteProblem, 'still' | 'heat'>): Controls {
  const { reflux } = step;
  const condenser = problem.still.refluxCondenser;
  const controls: Controls = {
    power_W: powerOf(step.heat ?? problem.heat),
    returned: 0,
    duty_W: 0,
    water_W_K: 0,
    hold: null,
  };
  const holds = typeof reflux === 'object' && reflux.kind === 'hold' ? reflux : null;
  if (holds !== null) {
    controls.hold = {
      target: moleFractionFromStrength(holds.strength),
      least: holds.leastShare,
      most: holds.mostShare,
    };
  }
  if (condenser.kind === 'total') {
    if (reflux === 'total') controls.returned = 1;
    else if (typeof reflux === 'number') controls.returned = reflux / (1 + reflux);
  } else if (condenser.kind === 'partial' && reflux !== 'none') {
    const { coolant } = condenser;
    if (reflux === 'total') controls.duty_W = TOTAL_DUTY * controls.power_W;
    else if (typeof reflux === 'object' && reflux.kind === 'duty') controls.duty_W = reflux.power_W;
    else if (coolant.kind === 'duty') controls.duty_W = coolant.power_W;
    else {
      const flow = typeof reflux === 'object' && reflux.kind === 'water' ? reflux.flow_kg_s : coolant.flow_kg_s;
      controls.water_W_K = waterConductance(flow, coolant.transfer_W_K);
    }
  }
  return controls;
}

/** Heat into the kettle, W. */
export function powerOf(heat: Heat): number {
  return heat.kind === 'power' ? heat.power_W : NaN;
}

/** The share a hold asks for, before its limits. */
export function askedShare(hold: HoldLaw, x: MoleFraction, integral: number): number {
  return 0.5 * (hold.least + hold.most) + GAIN * (hold.target - x) + integral;
}

/** The share it gets. */
export function clampedShare(hold: HoldLaw, asked: number): number {
  return Math.min(hold.most, Math.max(hold.least, asked));
}

/** dI/dt, 1/s, and its derivatives by x and I. */
export function integralRate(hold: HoldLaw, x: MoleFraction, integral: number): number {
  const asked = askedShare(hold, x, integral);
  return (GAIN * (hold.target - x) + clampedShare(hold, asked) - asked) / INTEGRAL_s;
}

/** Derivatives of share and of dI/dt by x and I at a state. */
export function holdSlopes(hold: HoldLaw, x: MoleFraction, integral: number): HoldSlopes {
  const asked = askedShare(hold, x, integral);
  const free = asked > hold.least && asked < hold.most;
  return {
    share_x: free ? -GAIN : 0,
    share_I: free ? 1 : 0,
    rate_x: (-GAIN + (free ? 0 : GAIN)) / INTEGRAL_s,
    rate_I: free ? 0 : -1 / INTEGRAL_s,
  };
}

export interface HoldSlopes {
  readonly share_x: number;
  readonly share_I: number;
  readonly rate_x: number;
  readonly rate_I: number;
}
