// What every run answers with: named columns, one row a moment, plus how it ended and what it cost.
// A solution owns its arrays.

import type { StopRule } from './problem.js';

/** How a run ended. `stopped` is success; the others say what physics or the solver ran into. */
export type Ending =
  | { readonly kind: 'stopped'; readonly step: number; readonly rule: StopRule; readonly message: string }
  | { readonly kind: 'kettleDry' | 'neverMet'; readonly step: number; readonly message: string }
  | { readonly kind: 'stepLimit' | 'stepTooSmall'; readonly step: number; readonly message: string };

/** Counts of work done. */
export interface SolveStatistics {
  readonly acceptedSteps: number;
  readonly rejectedSteps: number;
  readonly rightHandSides: number;
  readonly jacobians: number;
  readonly factorisations: number;
  readonly events: number;
}

/**
 * Columns of a run; every array has `rows` entries, plate arrays `rows × plates` (row-major, lowest plate first). Mole
 * fractions and amounts are the solver's own, so that balances close to round-off: in an exhausted still they may lie below
 * 0 by the tolerance. Strengths are kept within 0..1.
 */
export interface RunSolution {
  readonly ending: Ending;
  readonly statistics: SolveStatistics;
  readonly rows: number;
  readonly plates: number;
  /** Time since the first vapour, s. */
  readonly time_s: Float64Array;
  /** Vapour raised from the kettle so far, mol. */
  readonly boiledUp_mol: Float64Array;
  readonly kettleAmount_mol: Float64Array;
  /** Mole fraction of ethanol in the kettle. */
  readonly kettleMoleFraction: Float64Array;
  /** % vol / 100 at 20 °C in the kettle. */
  readonly kettleStrength: Float64Array;
  readonly kettleTemperature_K: Float64Array;
  /** Mole fraction of ethanol at the spout (liquid of the reflux condenser). */
  readonly spoutMoleFraction: Float64Array;
  /** % vol / 100 at 20 °C at the spout. */
  readonly spoutStrength: Float64Array;
  /** Dew temperature of the vapour that leaves the uppermost stage, K. */
  readonly headTemperature_K: Float64Array;
  /** Distillate, mol/s; 0 at total reflux. */
  readonly distillateRate_mol_s: Float64Array;
  /** Distillate, m³/s as liquid at 20 °C. */
  readonly distillateRate_m3_s: Float64Array;
  readonly collectedEthanol_mol: Float64Array;
  readonly collectedWater_mol: Float64Array;
  /** Volume of all distillate as one mixture at 20 °C, m³. */
  readonly collectedVolume_m3: Float64Array;
  /** Pure alcohol collected, m³ at 20 °C. */
  readonly pureAlcoholCollected_m3: Float64Array;
  /** Pure alcohol still in kettle, plates and condenser, m³ at 20 °C. */
  readonly pureAlcoholLeft_m3: Float64Array;
  /** Mole fraction of ethanol in the liquid of each plate. */
  readonly plateLiquid: Float64Array;
  /** Mole fraction of ethanol in the vapour leaving each plate. */
  readonly plateVapour: Float64Array;
  /** Index of the row at which each step of the run sheet begins; its rates are those of the new step. */
  readonly stepStarts: readonly number[];
}

/** What every run answers with, whatever followed it: the still as a train does not count vapour raised. */
export type RunHistory = Omit<RunSolution, 'boiledUp_mol'>;
