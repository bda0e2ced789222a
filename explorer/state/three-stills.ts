// 'One charge, three stills': the same charge as three problems, all run until the same share of its
// alcohol has come over, and what each comes to. The doubler is one ideal plate here: what runs back
// from its reflux is all that keeps it at work.

import { DEFAULT_ACTIVITY, type RunSolution, type StopRule } from '#lib/index.js';
import type { EquilibriumQuestion, RunQuestion } from '../worker/questions.js';
import { chargeOf, columnProblem, invented } from './derive.js';
import { remembered } from './memo.js';
import { runResults, type RunResults } from './run-results.js';
import type { Scenario } from './scenario.js';

/** Invented for this page. */
export const inventedStills = {
  /** Every run ends when this share of the charge's alcohol is left in the still. */
  alcoholLeft: 0.05,
  /** What the doubler and its condenser hold, mol: as good as nothing, so that its line has no start of its own; ... */
  doublerHoldUp_mol: 1e-6,
  /** ... what little there is has turned over long before this, and the line is read from here on. */
  doublerSettled_s: 0.1,
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
  const until: readonly StopRule[] = [
    { kind: 'alcoholLeftBelow', share: inventedStills.alcoholLeft },
    { kind: 'collectedVolume', volume_m3: invented.mostCollected * scenario.chargeVolume },
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
          plateHoldUp_mol: inventedStills.doublerHoldUp_mol,
          condenserHoldUp_mol: inventedStills.doublerHoldUp_mol,
        },
        sheet: [
          {
            reflux: scenario.doublerReflux,
            until: [{ kind: 'duration', seconds: inventedStills.doublerSettled_s }, ...until],
          },
          { reflux: scenario.doublerReflux, until },
        ],
      },
    },
    column: { kind: 'run', problem: { ...column, sheet: [column.sheet[0]!, { reflux: scenario.reflux, until }] } },
    equilibrium: { kind: 'equilibrium', activity: DEFAULT_ACTIVITY, pressure_Pa: pressure },
  };
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
