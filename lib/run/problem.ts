// What every run has in common, as plain data: names and tagged records, never closures, so that a
// problem crosses to a worker, sits in an address, is a test fixture and can be printed.

import type { ActivityName } from '../mixture/activity/registry.js';
import type { Kelvin, Mole, MoleFraction, Pascal, Second, VolumeFraction20C, Watt } from '../units/quantities.js';

/** What is filled into the still: a volume at 20 °C and its strength, or an amount and its mole fraction. */
export type Charge =
  | { readonly kind: 'volume'; readonly volume_m3: number; readonly strength: VolumeFraction20C }
  | { readonly kind: 'amount'; readonly amount_mol: Mole; readonly moleFraction: MoleFraction };

/** How the kettle is driven: heat into its boiling liquid, or a given molar boil-up. */
export type Heat =
  { readonly kind: 'power'; readonly power_W: Watt } | { readonly kind: 'boilUp'; readonly rate_mol_s: number };

/** A condition that ends a step of the run sheet; met to the solver's tolerance and never before, not at the nearest step. */
export type StopRule =
  /** Time since the step began. */
  | { readonly kind: 'duration'; readonly seconds: Second }
  /** Distillate since the run began, at 20 °C, as one mixture. */
  | { readonly kind: 'collectedVolume'; readonly volume_m3: number }
  /** Strength at the spout falls to this. On plates it counts once the spout has been above, in any step. */
  | { readonly kind: 'spoutStrengthBelow'; readonly strength: VolumeFraction20C }
  | { readonly kind: 'kettleStrengthBelow'; readonly strength: VolumeFraction20C }
  | { readonly kind: 'kettleTemperatureAbove'; readonly temperature_K: Kelvin }
  /** Head temperature rises to this. On plates it counts once the head has been below, in any step. */
  | { readonly kind: 'headTemperatureAbove'; readonly temperature_K: Kelvin }
  /** Ethanol still in the kettle and on the plates, as a share of the charge's. */
  | { readonly kind: 'alcoholLeftBelow'; readonly share: number }
  /** The first vapour reaches the condenser: the end of heating up. A column or a bare pot begins there. */
  | { readonly kind: 'firstVapour' }
  /** The reflux ratio L/D rises to this: what a hold asks for is too much. */
  | { readonly kind: 'refluxAbove'; readonly ratio: number };

/** One line of the run sheet: a reflux (ratio L/D, or 'total') kept until the first rule is met. */
export interface RunStep {
  readonly reflux: number | 'total';
  readonly until: readonly StopRule[];
}

/** Which moments the solution reports: at fixed intervals of time, or so many within each step of the solver. */
export type Outputs =
  { readonly kind: 'every'; readonly interval_s: Second } | { readonly kind: 'perStep'; readonly points: number };

/** A bare pot: one boiling kettle, everything that rises is condensed and collected. */
export interface SimpleProblem {
  readonly kind: 'simple';
  readonly charge: Charge;
  readonly pressure_Pa: Pascal;
  readonly activity: ActivityName;
  readonly heat: Heat;
  readonly until: readonly StopRule[];
  /** Rows of the solution, evenly spaced in the amount distilled; default 200. */
  readonly rows?: number;
}

/** A kettle with plates, a total reflux condenser and a reflux ratio; constant molar overflow. */
export interface ColumnProblem {
  readonly kind: 'column';
  readonly charge: Charge;
  readonly column: ColumnStill;
  readonly activity: ActivityName;
  readonly heat: Heat;
  readonly sheet: readonly RunStep[];
  readonly outputs: Outputs;
  /**
   * What plates and condenser hold at the first vapour: 'firstVapour' (default), plates the kettle's liquid and the condenser
   * what its vapour condenses to; or 'charge', everything the charge.
   */
  readonly start?: 'firstVapour' | 'charge';
  /**
   * Error the solver aims at, as a mole fraction at the spout; amounts and time count as shares of a thousandth of the charge and
   * of the time to boil it up. Where the spout changes steeply its error is larger, by that little in time. Default 1e-6.
   */
  readonly tolerance?: number;
}

/** The plated column as plain data. */
export interface ColumnStill {
  /** Plates above the kettle, 0..60; the kettle itself is one more stage. */
  readonly plates: number;
  /** Murphree vapour efficiency of each plate, above 0 up to 1. */
  readonly efficiency: number;
  /** Liquid that stays on each plate, mol (fixed molar hold-up), 0 or more. */
  readonly plateHoldUp_mol: Mole;
  /** Liquid that stays in the reflux condenser, mol, 0 or more. */
  readonly condenserHoldUp_mol: Mole;
  /** Pressure in the head, Pa. */
  readonly headPressure_Pa: Pascal;
  /** Pressure drop over each plate, Pa; the kettle stands at head pressure + plates × drop. */
  readonly plateDrop_Pa: Pascal;
}
