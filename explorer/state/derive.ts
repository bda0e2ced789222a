// What the reader has set -> questions of 'The ceiling', as plain data. Pure.

import { DEFAULT_ACTIVITY } from '#lib/index.js';
import type { EquilibriumQuestion } from '../worker/kinds/equilibrium.js';
import type { KeptRun, RunPart, RunQuestion } from '../worker/kinds/run.js';
import type { StagesQuestion } from '../worker/kinds/stages.js';
import { stillOf } from './paths.js';
import { energyProblem, quickProblem } from './problems.js';
import { drawnParts } from './run-results.js';
import type { Scenario } from './scenario.js';

/** The run as it is drawn while a number is dragged: without heat-up and losses, where the still can be run so. */
export function quickRun<Kept extends RunPart>(scenario: Scenario, keep: readonly Kept[]): RunQuestion<Kept> {
  return { kind: 'run', problem: quickProblem(scenario) ?? energyProblem(scenario), keep };
}

/** What boils at what in the air of the page. */
export function boilingOf(scenario: Scenario): EquilibriumQuestion {
  return { kind: 'equilibrium', activity: DEFAULT_ACTIVITY, pressure_Pa: stillOf(scenario).air.pressure_Pa };
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
  const equilibrium = boilingOf(scenario);
  const { pressure_Pa } = equilibrium;
  const stages = {
    kind: 'stages',
    pressure_Pa,
    fromStrength: scenario.charge.strength,
    toStrengths: namedStrengths,
  } as const;
  return {
    run: quickRun(scenario, ceilingParts),
    equilibrium,
    raoult: { ...equilibrium, activity: 'raoult' },
    nrtl: { ...equilibrium, activity: 'nrtl' },
    wilson: { ...equilibrium, activity: 'wilson' },
    stages: { ...stages, activity: DEFAULT_ACTIVITY },
    stagesByRaoult: { ...stages, activity: 'raoult' },
    stagesByNrtl: { ...stages, activity: 'nrtl' },
    stagesByWilson: { ...stages, activity: 'wilson' },
  };
}

/** Plates and reflux ratios of the table 'Plates or reflux?'. */
export const comparedPlates = [4, 8, 12, 20, 30] as const;
export const comparedRefluxes = [1, 2, 3, 6, 12] as const;
