// What every run answers with: named columns, one row a moment, plus how it ended and what it cost. A solution owns its arrays.

import type { Kelvin } from '../units/quantities.js';
import type { CompleteProblem } from './complete.js';
import type { RunHolder } from './engine.js';
import type { StopRule } from './problem.js';

/** How a run ended. `stopped` is success; the others say what physics or the solver ran into. Steps count from 1, as in the message. */
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

/** One jar of distillate. */
export interface Jar {
  /** Step of the run sheet in which it was begun, counted from 1 as in messages. */
  readonly step: number;
  readonly from_s: number;
  readonly to_s: number;
  /** At 20 °C, m³. */
  readonly volume_m3: number;
  /** % vol / 100 of the whole jar. */
  readonly strength: number;
  /** m³ at 20 °C. */
  readonly pureAlcohol_m3: number;
  /** Strength at the spout where it begins and ends. */
  readonly spoutFrom: number;
  readonly spoutTo: number;
  readonly kettleFrom_K: Kelvin;
  readonly kettleTo_K: Kelvin;
  readonly headFrom_K: Kelvin;
  readonly headTo_K: Kelvin;
  /** Whether it was filled to its size, or the run or step ended before. */
  readonly full: boolean;
}

/**
 * The columns of a run; every array has `rows` entries, arrays named holder… are rows × holders (row-major, kettle first) and plate arrays
 * rows × plates (lowest first). Mole fractions and amounts are the solver's own, so that balances close to round-off: in an exhausted still
 * they may lie below 0 by the tolerance. Strengths are kept within 0..1.
 */
export interface RunColumns {
  /** Time since the start, s: since lighting up in a run from cold. */
  readonly time_s: Float64Array;
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
  /** Dew temperature of the vapour that leaves the uppermost vessel, K; the vessel's own while it is cold. */
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
  /** Pure alcohol still in the whole still, m³ at 20 °C. */
  readonly pureAlcoholLeft_m3: Float64Array;
  /** Liquid in the drum that feeds reflux and spout, mol; its composition is the spout's. */
  readonly drumAmount_mol: Float64Array;
  /** Reflux ratio L/D; Infinity at total reflux. */
  readonly refluxRatio: Float64Array;
  /** Heat into the kettle, out at the total or product condenser, out at a partial condenser, lost to the air, W. */
  readonly power_W: Float64Array;
  readonly condenserDuty_W: Float64Array;
  readonly refluxDuty_W: Float64Array;
  readonly lost_W: Float64Array;
  readonly holderAmount_mol: Float64Array;
  readonly holderLiquid: Float64Array;
  readonly holderVapour: Float64Array;
  readonly holderTemperature_K: Float64Array;
  /** Vapour and liquid that leave each vessel, mol/s. */
  readonly holderVapourRate_mol_s: Float64Array;
  readonly holderLiquidRate_mol_s: Float64Array;
  /** Mole fraction of ethanol in the liquid of each plate, and in the vapour leaving it. */
  readonly plateLiquid: Float64Array;
  readonly plateVapour: Float64Array;
}

/** The columns of the account of energy, J since the start. */
export interface EnergyColumns {
  /** Heat put into the kettle. */
  readonly supplied_J: Float64Array;
  /** Taken out at the total or product condenser. */
  readonly condensed_J: Float64Array;
  /** Carried off by the distillate. */
  readonly collected_J: Float64Array;
  /** In all vessels and in the drum now. */
  readonly stored_J: Float64Array;
}

/** What stands beside the columns. */
export interface RunFacts {
  /** What was run, with everything that was left out filled in. */
  readonly problem: CompleteProblem;
  readonly ending: Ending;
  readonly statistics: SolveStatistics;
  readonly rows: number;
  /** Number of plates, or of stages of a packing. */
  readonly plates: number;
  /** The vessels, kettle first. */
  readonly holders: readonly RunHolder[];
  /** Index of the row at which each step of the run sheet begins; its rates are those of the new step. */
  readonly stepStarts: readonly number[];
  readonly jars: readonly Jar[];
  /** When the first vapour reached the condenser, s; 0 where the run began with it; null if it never did. */
  readonly firstVapour_s: number | null;
}

/** A run's columns and what stands beside them, as plain data: what can be sent, kept and compared. */
export interface PlainSolution extends RunFacts, RunColumns {}

/** The same of a run that keeps account of energy. */
export interface PlainEnergySolution extends PlainSolution, EnergyColumns {}

/** What a run answers with. Columns are worked out when first asked for. */
export interface RunSolution extends PlainSolution {
  /** Everything as one plain record, for a worker's answer or a file. */
  plain(): PlainSolution;
}

/** What a run answers with that keeps account of energy. */
export interface EnergySolution extends PlainEnergySolution {
  /** Everything as one plain record, for a worker's answer or a file. */
  plain(): PlainEnergySolution;
}
