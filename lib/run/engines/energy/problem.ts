// The question put to the train: a still as it stands, what is filled into it, and a run sheet. Plain data.

import type { ActivityName } from '../../../mixture/activity/registry.js';
import type { Still } from '../../../still/still.js';
import type { Kelvin, VolumeFraction20C, Watt } from '../../../units/quantities.js';
import type { Charge, Outputs, StopRule } from '../../problem.js';

/** A run of a still with its energy balance, doublers, plates or packing, and condensers. */
export interface TrainProblem {
  readonly kind: 'train';
  readonly still: Still;
  readonly charge: Charge;
  /** Temperature the kettle is filled at, K; default the air's. */
  readonly chargeTemperature_K?: Kelvin;
  /** One for each doubler, in their order. */
  readonly doublerCharges: readonly DoublerCharge[];
  readonly activity: ActivityName;
  /** Heat into the kettle unless a step says otherwise, W. */
  readonly power_W: Watt;
  readonly sheet: readonly TrainStep[];
  readonly outputs: Outputs;
  /** 'cold' (default): heating begins. 'firstVapour': the kettle boils, plates are full of its liquid; doublers start as charged. */
  readonly start?: 'cold' | 'firstVapour';
  /** 'balance' (default): flows from the energy balance. 'constantMolarOverflow': every mole of vapour takes the same heat, a simplification. */
  readonly energy?: 'balance' | 'constantMolarOverflow';
  /** Jars the distillate is collected in; default one jar a step. */
  readonly jars?: Jars;
  /** Times by which vapour follows its heat and liquid its weir, s; default half a second and up to three, shorter on small plates. */
  readonly lags?: { readonly boil_s: number; readonly weir_s: number };
  /** Local error per step the solver aims at, as a share: of a mole fraction, of what a holder holds. Default 1e-5. */
  readonly tolerance?: number;
}

/** What a doubler is charged with. */
export interface DoublerCharge {
  readonly charge: Charge;
  /** Default the air's. */
  readonly temperature_K?: Kelvin;
}

/** A new jar when the last is full, or with every step of the run sheet. */
export type Jars = { readonly kind: 'size'; readonly volume_m3: number } | { readonly kind: 'perStep' };

/** One line of the run sheet. */
export interface TrainStep {
  readonly reflux: Reflux;
  /** Heat into the kettle, W; default the problem's. */
  readonly power_W?: Watt;
  readonly until: readonly StopRule[];
}

/**
 * How a step sends liquid back. A ratio L/D or a hold asks for a total condenser (a hold also goes with a partial one of set duty); 'total' returns everything;
 * 'none' nothing; 'asSet' runs a partial condenser as its still describes it.
 */
export type Reflux =
  | number
  | 'total'
  | 'none'
  | 'asSet'
  | { readonly kind: 'duty'; readonly power_W: Watt }
  | { readonly kind: 'water'; readonly flow_kg_s: number }
  | Hold;

/** Holds a strength at the spout by itself: a feedback on the reflux, which stays within its limits. */
export interface Hold {
  readonly kind: 'hold';
  readonly strength: VolumeFraction20C;
  /** Least and most of what runs back, as a share of all that is condensed (of the full duty on a partial condenser): R/(R + 1). */
  readonly leastShare: number;
  readonly mostShare: number;
}
