// What a run of the train answers with: everything other runs answer with, and what only a still with its energy knows.

import type { Kelvin, Pascal } from '../../../units/quantities.js';
import type { RunHistory } from '../../solution.js';
import type { HolderKind } from './holders.js';

/** A holder of the train, from the kettle up. */
export interface TrainHolder {
  readonly kind: HolderKind;
  /** Number among its kind, from 1. */
  readonly number: number;
  readonly pressure_Pa: Pascal;
}

/** One jar of distillate. */
export interface Jar {
  /** Step of the run sheet in which it was begun. */
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
 * Columns of a run of the train, `rows` entries each; arrays named holder… are rows × holders (row-major, kettle first). `plates` counts
 * plates or stages of a packing, and plateLiquid, plateVapour are theirs. Time runs from the start: from lighting up in a run from cold.
 */
export interface TrainSolution extends RunHistory {
  readonly holders: readonly TrainHolder[];
  readonly holderAmount_mol: Float64Array;
  readonly holderLiquid: Float64Array;
  readonly holderVapour: Float64Array;
  readonly holderTemperature_K: Float64Array;
  /** Vapour and liquid that leave each holder, mol/s. */
  readonly holderVapourRate_mol_s: Float64Array;
  readonly holderLiquidRate_mol_s: Float64Array;
  /** Liquid in the drum that feeds reflux and spout, mol; its composition is the spout's. */
  readonly drumAmount_mol: Float64Array;
  /** Reflux ratio L/D; Infinity at total reflux. */
  readonly refluxRatio: Float64Array;
  /** Heat into the kettle, out at the total or product condenser, out at a partial condenser, lost to the air, W. */
  readonly power_W: Float64Array;
  readonly condenserDuty_W: Float64Array;
  readonly refluxDuty_W: Float64Array;
  readonly lost_W: Float64Array;
  /**
   * Since the start, J: heat put into the kettle; taken out at the total or product condenser; carried off by the distillate. `stored_J`
   * is the energy in all holders and in the drum. What is lost and a partial condenser's duty are their rates over time.
   */
  readonly supplied_J: Float64Array;
  readonly condensed_J: Float64Array;
  readonly collected_J: Float64Array;
  readonly stored_J: Float64Array;
  readonly jars: readonly Jar[];
  /** When the first vapour reached the condenser, s; 0 in a run that starts with it, null if it never did. */
  readonly firstVapour_s: number | null;
}
