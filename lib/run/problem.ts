// What is asked of a run, as plain data: names and tagged records, never closures, so that a problem crosses to a worker, sits in an
// address, is a test fixture and can be printed. One problem for every still and every model.

import type { ActivityModel } from '../mixture/activity/activity-model.js';
import type { ActivityName } from '../mixture/activity/registry.js';
import type { StillDescription } from '../still/describe.js';
import type { Kelvin, Mole, MoleFraction, Second, VolumeFraction20C, Watt } from '../units/quantities.js';

/** What is filled into the still: a volume at 20 °C and its strength, or an amount and its mole fraction. */
export type Charge =
  | { readonly kind: 'volume'; readonly volume_m3: number; readonly strength: VolumeFraction20C }
  | { readonly kind: 'amount'; readonly amount_mol: Mole; readonly moleFraction: MoleFraction };

/** What a doubler is charged with. */
export interface DoublerCharge {
  readonly charge: Charge;
  /** Default the air's. */
  readonly temperature_K?: Kelvin;
}

/** How the kettle is driven: heat into it, or (a simplification that goes with equal flows and the bare pot by quadrature) a given molar boil-up. */
export type Heat =
  { readonly kind: 'power'; readonly power_W: Watt } | { readonly kind: 'boilUp'; readonly rate_mol_s: number };

/** A condition that ends a step of the run sheet; met to the solver's tolerance and never before, not at the nearest step. */
export type StopRule =
  /** Time since the step began. */
  | { readonly kind: 'duration'; readonly seconds: Second }
  /** Distillate since the run began, at 20 °C, as one mixture. */
  | { readonly kind: 'collectedVolume'; readonly volume_m3: number }
  /** Strength at the spout falls to this. It counts once the spout has been above, in any step. */
  | { readonly kind: 'spoutStrengthBelow'; readonly strength: VolumeFraction20C }
  | { readonly kind: 'kettleStrengthBelow'; readonly strength: VolumeFraction20C }
  | { readonly kind: 'kettleTemperatureAbove'; readonly temperature_K: Kelvin }
  /** Head temperature rises to this. It counts once the head has been below, in any step. */
  | { readonly kind: 'headTemperatureAbove'; readonly temperature_K: Kelvin }
  /** Ethanol still in the whole still, as a share of what was filled in. */
  | { readonly kind: 'alcoholLeftBelow'; readonly share: number }
  /** The first vapour reaches the condenser: the end of heating up. A run that begins there has met it. */
  | { readonly kind: 'firstVapour' }
  /** The reflux ratio L/D rises to this: what a hold asks for is too much. */
  | { readonly kind: 'refluxAbove'; readonly ratio: number };

/**
 * How a step sends liquid back. A ratio L/D or a hold asks for a total condenser (a hold also goes with a partial one of set duty); 'total'
 * returns everything; 'none' nothing; 'asSet' runs a partial condenser as its still describes it.
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

/** One line of the run sheet: how the still is driven until the first of the rules is met. */
export interface RunStep {
  readonly reflux: Reflux;
  /** Default the problem's. */
  readonly heat?: Heat;
  readonly until: readonly StopRule[];
}

/** Which moments the solution reports: at fixed intervals of time, so many within each step of the solver, or so many evenly over the run. */
export type Outputs =
  | { readonly kind: 'every'; readonly interval_s: Second }
  | { readonly kind: 'perStep'; readonly points: number }
  | { readonly kind: 'evenly'; readonly rows: number };

/** A new jar when the last is full, or with every step of the run sheet. */
export type Jars = { readonly kind: 'size'; readonly volume_m3: number } | { readonly kind: 'perStep' };

/**
 * Which equations are solved. 'energy' (default): balances of energy, ethanol and water on every vessel. Named simplifications:
 * 'equalHeats', the same with one heat for every mole of vapour; 'equalFlows', constant molar flows and fixed molar hold-ups, without heat-up
 * and losses, for a kettle with plates; 'rayleigh', a bare pot by quadrature.
 */
export type Model = 'energy' | 'equalHeats' | 'equalFlows' | 'rayleigh';

/** Models that keep account of energy. */
export type EnergyModel = 'energy' | 'equalHeats';

/** A run of any still. */
export interface RunProblem {
  /** The still as far as it is known; the library completes the rest. */
  readonly still: StillDescription;
  readonly charge: Charge;
  /** Temperature the kettle is filled at, K; default the air's. */
  readonly chargeTemperature_K?: Kelvin;
  /** One for each doubler, in their order; default none. */
  readonly doublerCharges?: readonly DoublerCharge[];
  /** Default the project's own model. A model of one's own does not cross to a worker. */
  readonly activity?: ActivityName | ActivityModel;
  /** Default 'energy'. */
  readonly model?: Model;
  /** Heat into the kettle unless a step says otherwise; default all its heater gives. */
  readonly heat?: Heat;
  readonly sheet: readonly RunStep[];
  /** Default a row a minute. */
  readonly outputs?: Outputs;
  /** Jars the distillate is collected in; default one jar a step. */
  readonly jars?: Jars;
  /**
   * 'cold': heating begins, the default of models that keep account of energy. 'firstVapour': the kettle boils and plates are full of its liquid;
   * the default of the others, and their only one but for 'charge': plates and condenser hold the charge. Doublers start as charged.
   */
  readonly start?: 'cold' | 'firstVapour' | 'charge';
  /** Times by which vapour follows its heat and liquid its weir, s; default half a second and up to three, shorter on small plates. */
  readonly lags?: { readonly boil_s: number; readonly weir_s: number };
  /**
   * What the solver's error may be, as a share: with 'energy' the local error a step, of a mole fraction or of what a vessel holds, default
   * 1e-5; with 'equalFlows' the error at the spout, as a mole fraction, default 1e-6. Quadrature needs none.
   */
  readonly tolerance?: number;
}

/** A problem whose solution keeps account of energy: heat is a power, and the charge is never on the plates at the start. */
export interface EnergyProblem extends RunProblem {
  readonly model?: EnergyModel;
  readonly heat?: Extract<Heat, { kind: 'power' }>;
  readonly start?: 'cold' | 'firstVapour';
}

/** A problem of constant molar flows: plates over a kettle, from the first vapour on. */
export interface EqualFlowsProblem extends RunProblem {
  readonly model: 'equalFlows';
  readonly doublerCharges?: readonly never[];
  readonly start?: 'firstVapour' | 'charge';
  readonly lags?: never;
}

/** A problem of a bare pot by quadrature: nothing runs back. */
export interface RayleighProblem extends RunProblem {
  readonly model: 'rayleigh';
  readonly sheet: readonly (RunStep & { readonly reflux: 'none' | 0 })[];
  readonly doublerCharges?: readonly never[];
  readonly start?: 'firstVapour' | 'charge';
  readonly lags?: never;
}

/** A problem of a named simplification that keeps no account of energy. */
export type SimplifiedProblem = EqualFlowsProblem | RayleighProblem;

/** A problem whose model is known only when it is run; one of a known model is asked for its own fields instead. */
export type AnyProblem<Problem extends RunProblem> = 'model' extends keyof Problem
  ? Model extends Problem['model']
    ? Problem
    : never
  : never;
