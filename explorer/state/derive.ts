// Scenario -> problems, as plain data. Pure. What the page does not ask for is invented here and
// said in its margin: hold-up, pressure drop, the run sheet.

import {
  chargeAmounts,
  DEFAULT_ACTIVITY,
  toSI,
  type Charge,
  type SimplifiedProblem,
  type StillDescription,
  type StopRule,
} from '#lib/index.js';
import type { EquilibriumQuestion } from '../worker/kinds/equilibrium.js';
import type { KeptRun, RunQuestion } from '../worker/kinds/run.js';
import type { StagesQuestion } from '../worker/kinds/stages.js';
import { drawingTolerance, drawnRows } from './drawn-runs.js';
import { drawnParts } from './run-results.js';
import type { Scenario } from './scenario.js';

/** Invented for these pages, the same for every column. */
export const invented = {
  plateHoldUp_mol: 2,
  /** A very small still has smaller plates: none holds more than this share of the charge. */
  mostOnPlate: 1 / 250,
  plateDrop_Pa: toSI(0.25, 'kPa'),
  totalReflux_s: toSI(20, 'min'),
  /** The run ends when the spout falls to this, % vol / 100, ... */
  endStrength: 0.4,
  /** ... or when this share of what is not on the plates has come over. */
  mostCollected: 0.9,
} as const;

/** The charge of a scenario. */
export function chargeOf(scenario: Scenario): Charge {
  return { kind: 'volume', volume_m3: scenario.chargeVolume, strength: scenario.chargeStrength };
}

/** What each plate holds, and the condenser half of it, mol; and both together as a share of the charge. */
export function holdUp(scenario: Scenario): { plate_mol: number; condenser_mol: number; share: number } {
  const { ethanol_mol, water_mol } = chargeAmounts(chargeOf(scenario));
  const plate_mol = Math.min(invented.plateHoldUp_mol, invented.mostOnPlate * (ethanol_mol + water_mol));
  const condenser_mol = plate_mol / 2;
  const share = (scenario.plates * plate_mol + condenser_mol) / (ethanol_mol + water_mol);
  return { plate_mol, condenser_mol, share };
}

/** When a run of these pages ends. */
export function endRules(scenario: Scenario): readonly StopRule[] {
  return [{ kind: 'spoutStrengthBelow', strength: invented.endStrength }, beforeItRunsLow(scenario)];
}

/** The rule that ends a run before the kettle runs low: most of what is not on the plates has come over. */
export function beforeItRunsLow(scenario: Scenario): StopRule {
  const share = invented.mostCollected * (1 - holdUp(scenario).share);
  return { kind: 'collectedVolume', volume_m3: share * scenario.chargeVolume };
}

/** The column of a scenario: a spell at total reflux, then a constant reflux ratio to the end. */
export function columnProblem(scenario: Scenario): SimplifiedProblem {
  const { plate_mol, condenser_mol } = holdUp(scenario);
  return {
    model: 'equalFlows',
    charge: chargeOf(scenario),
    still: flatStill(scenario, plate_mol, condenser_mol),
    activity: DEFAULT_ACTIVITY,
    heat: { kind: 'power', power_W: scenario.heat },
    sheet: [
      { reflux: 'total', until: [{ kind: 'duration', seconds: invented.totalReflux_s }] },
      { reflux: scenario.reflux, until: endRules(scenario) },
    ],
    outputs: drawnRows,
    tolerance: drawingTolerance,
  };
}

/** The still as constant molar flows know it: what plates and condenser hold is an amount. */
function flatStill(scenario: Scenario, plate_mol: number, condenser_mol: number): StillDescription {
  const { chargeVolume, plates, efficiency, pressure } = scenario;
  const held = { kind: 'amount', amount_mol: condenser_mol / 2 } as const;
  return {
    kettle: { volume_m3: 1.5 * chargeVolume },
    column:
      plates === 0
        ? { kind: 'none' }
        : {
            kind: 'plates',
            count: plates,
            efficiency,
            holdUp: { kind: 'amount', amount_mol: plate_mol },
            drop_Pa: invented.plateDrop_Pa,
          },
    refluxCondenser: { kind: 'total', holdUp: held },
    productCondenser: { holdUp: held },
    air: { pressure_Pa: pressure },
  };
}

/** Strengths whose stages the ceiling names, % vol / 100. */
export const namedStrengths = [0.95, 0.96, 0.97] as const;

/** What 'The ceiling' keeps of its run: what is drawn, and the plates at work. */
const ceilingParts = [...drawnParts, 'kettleMoleFraction', 'spoutMoleFraction', 'plateLiquid', 'plateVapour'] as const;
type CeilingPart = (typeof ceilingParts)[number];
/** The run of 'The ceiling'. */
export type CeilingRun = KeptRun<CeilingPart>;

/** What the page 'The ceiling' asks, by name. */
export type CeilingQuestions = {
  readonly run: RunQuestion<CeilingPart>;
  readonly equilibrium: EquilibriumQuestion;
  readonly raoult: EquilibriumQuestion;
  readonly nrtl: EquilibriumQuestion;
  readonly wilson: EquilibriumQuestion;
  readonly stages: StagesQuestion;
  readonly stagesByRaoult: StagesQuestion;
  readonly stagesByNrtl: StagesQuestion;
  readonly stagesByWilson: StagesQuestion;
};

/** The questions of 'The ceiling'. */
export function ceilingQuestions(scenario: Scenario): CeilingQuestions {
  const { pressure: pressure_Pa, chargeStrength: fromStrength } = scenario;
  const stages = { kind: 'stages', pressure_Pa, fromStrength, toStrengths: namedStrengths } as const;
  return {
    run: { kind: 'run', problem: columnProblem(scenario), keep: ceilingParts },
    equilibrium: { kind: 'equilibrium', activity: DEFAULT_ACTIVITY, pressure_Pa },
    raoult: { kind: 'equilibrium', activity: 'raoult', pressure_Pa },
    nrtl: { kind: 'equilibrium', activity: 'nrtl', pressure_Pa },
    wilson: { kind: 'equilibrium', activity: 'wilson', pressure_Pa },
    stages: { ...stages, activity: DEFAULT_ACTIVITY },
    stagesByRaoult: { ...stages, activity: 'raoult' },
    stagesByNrtl: { ...stages, activity: 'nrtl' },
    stagesByWilson: { ...stages, activity: 'wilson' },
  };
}

/** Plates and reflux ratios of the table 'Plates or reflux?'. */
export const comparedPlates = [4, 8, 12, 20, 30] as const;
export const comparedRefluxes = [1, 2, 3, 6, 12] as const;
