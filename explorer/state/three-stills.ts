// 'One charge, three stills': the same charge as three problems, all run until the same share of its
// alcohol has come over, and what each comes to. The doubler is one ideal plate here: what runs back
// from its reflux is all that keeps it at work.

import { activityModel, DEFAULT_ACTIVITY, heatToBoil, toSI, type RunSolution, type StopRule } from '#lib/index.js';
import type { EquilibriumQuestion, RunQuestion } from '../worker/questions.js';
import { beforeItRunsLow, chargeOf, columnProblem } from './derive.js';
import { remembered } from './memo.js';
import { runResults, type RunResults } from './run-results.js';
import type { Scenario } from './scenario.js';

/** Invented for this page. */
export const inventedStills = {
  /** Every run ends when this share of the charge's alcohol is left in the still. */
  alcoholLeft: 0.05,
  /** What the doubler's plate and its condenser hold, as a share of the column's: a film, so that its first drops are few. */
  doublerHoldUp: 0.1,
  /** The charge is filled in at this temperature, K. */
  filledAt_K: toSI(20, '°C'),
} as const;

/** What the page asks, by name. */
export type StillsQuestions = {
  readonly pot: RunQuestion;
  readonly doubler: RunQuestion;
  readonly column: RunQuestion;
  readonly equilibrium: EquilibriumQuestion;
};

/** The three stills in the order of the page. */
export const stillNames = ['pot', 'doubler', 'column'] as const;
export type StillName = (typeof stillNames)[number];

/** The questions of the page; the same record for the same scenario. */
export const stillsQuestions = remembered((scenario: Scenario): StillsQuestions => {
  const { heat, pressure } = scenario;
  // One rule for all three, that of the column: what its plates hold cannot come over.
  const until: readonly StopRule[] = [
    { kind: 'alcoholLeftBelow', share: inventedStills.alcoholLeft },
    beforeItRunsLow(scenario),
  ];
  const column = columnProblem(scenario);
  const doubler = columnProblem({ ...scenario, plates: 1, efficiency: 1, reflux: scenario.doublerReflux });
  return {
    pot: {
      kind: 'run',
      problem: {
        kind: 'simple',
        charge: chargeOf(scenario),
        pressure_Pa: pressure,
        activity: DEFAULT_ACTIVITY,
        heat: { kind: 'power', power_W: heat },
        until,
      },
    },
    doubler: {
      kind: 'run',
      problem: {
        ...doubler,
        column: {
          ...doubler.column,
          plateHoldUp_mol: inventedStills.doublerHoldUp * doubler.column.plateHoldUp_mol,
          condenserHoldUp_mol: inventedStills.doublerHoldUp * doubler.column.condenserHoldUp_mol,
        },
        sheet: [{ reflux: scenario.doublerReflux, until }],
      },
    },
    column: { kind: 'run', problem: { ...column, sheet: [column.sheet[0]!, { reflux: scenario.reflux, until }] } },
    equilibrium: { kind: 'equilibrium', activity: DEFAULT_ACTIVITY, pressure_Pa: pressure },
  };
});

/** What comes before every run: the heat that brings the charge to the boil, J, and how long it takes, s. */
export const heatingUp = remembered((scenario: Scenario): { readonly heat_J: number; readonly duration_s: number } => {
  const { heat, pressure } = scenario;
  const heat_J = heatToBoil(chargeOf(scenario), inventedStills.filledAt_K, pressure, activityModel(DEFAULT_ACTIVITY));
  return { heat_J, duration_s: heat_J / heat };
});

/** What one still makes of the charge. */
export interface StillResults extends RunResults {
  /** Heat that boiled it, from the first vapour, J. */
  readonly heat_J: number;
  /** Strength of all that stands above the threshold, as one mixture, % vol / 100; null for nothing. */
  readonly meanAbove: number | null;
}

/** Results of one still above a strength. */
export function stillResults(run: RunSolution, threshold: number, power_W: number): StillResults {
  const results = runResults(run, threshold);
  const { volumeAbove_m3, pureAlcoholAbove_m3 } = results;
  const anything = volumeAbove_m3 !== null && pureAlcoholAbove_m3 !== null && volumeAbove_m3 > 0;
  return {
    ...results,
    heat_J: power_W * results.duration_s,
    meanAbove: anything ? pureAlcoholAbove_m3 / volumeAbove_m3 : null,
  };
}
