// 'One charge, three stills': the same charge as problems of real stills, from lighting up until the same share of all
// alcohol has come over, and what each comes to. Beside the three of the page stand up to three of the reader's own.

import type { StillDescription } from '#lib/index.js';
import type { EquilibriumQuestion } from '../../worker/kinds/equilibrium.js';
import type { KeptRun, RunQuestion } from '../../worker/kinds/run.js';
import { potOf, withDoublers } from '../../state/beside.js';
import type { OwnStill } from '../../state/column-of.js';
import { boilingOf } from '../../state/derive.js';
import { ownCharge } from '../the-doubler/questions.js';
import { withValue } from '../../state/paths.js';
import { energyProblem, withRatio } from '../../state/problems.js';
import { drawnParts, runResults, type RunResults } from '../../state/run-results.js';
import type { Scenario } from '../../state/scenario.js';

/** What is kept of each run. */
const stillParts = [...drawnParts, 'supplied_J', 'lost_W'] as const;
type StillQuestion = RunQuestion<(typeof stillParts)[number]>;
export type StillRun = KeptRun<(typeof stillParts)[number]>;

/** What the page asks, by name; stills of the reader's own are own0, own1, ... */
export type StillsQuestions = {
  readonly pot: StillQuestion;
  readonly doubler: StillQuestion;
  readonly column: StillQuestion;
  readonly own0?: StillQuestion;
  readonly own1?: StillQuestion;
  readonly own2?: StillQuestion;
  readonly equilibrium: EquilibriumQuestion;
};

/** The three stills of the page, and all that can stand on it, in order. */
export const stillNames = ['pot', 'doubler', 'column'] as const;
export const ownNames = ['own0', 'own1', 'own2'] as const;
export type StillName = (typeof stillNames)[number] | (typeof ownNames)[number];

/** The questions of the page. */
export function stillsQuestions(scenario: Scenario, own: readonly OwnStill[] = []): StillsQuestions {
  const doublerCharges = [{ charge: ownCharge(scenario) }];
  return {
    pot: question(scenario, potOf(scenario.still)),
    doubler: question({ ...scenario, doublerCharges }, withDoublers(scenario.still, doublerCharges)),
    column: question(scenario, scenario.still),
    ...Object.fromEntries(own.map((still, index) => [ownNames[index]!, ownQuestion(scenario, still)])),
    equilibrium: boilingOf(scenario),
  };
}

/** Every still is run by the page's sheet. */
function question(scenario: Scenario, still: StillDescription): StillQuestion {
  return { kind: 'run', keep: stillParts, problem: energyProblem({ ...scenario, still, jars: { kind: 'perStep' } }) };
}

function ownQuestion(scenario: Scenario, { plates, efficiency, reflux }: OwnStill): StillQuestion {
  const counted = withValue(withValue(scenario, 'still.column.efficiency', efficiency), 'still.column.count', plates);
  return question(withRatio(counted, reflux), counted.still);
}

/** What one still makes of the charge. */
export interface StillResults extends RunResults {
  /** From lighting up to the first vapour at the condenser, s. */
  readonly heatingUp_s: number;
  /** All heat put in, from lighting up, J; and what of it the walls lost. */
  readonly heat_J: number;
  readonly lost_J: number;
  /** Strength of all that stands above the threshold, as one mixture, % vol / 100; null for nothing. */
  readonly meanAbove: number | null;
}

/** Results of one still above a strength. */
export function stillResults(run: StillRun, threshold: number): StillResults {
  const results = runResults(run, threshold);
  const { volumeAbove_m3, pureAlcoholAbove_m3 } = results;
  const anything = volumeAbove_m3 !== null && pureAlcoholAbove_m3 !== null && volumeAbove_m3 > 0;
  let lost_J = 0;
  for (let row = 1; row < run.rows; row += 1) {
    lost_J += ((run.lost_W[row]! + run.lost_W[row - 1]!) / 2) * (run.time_s[row]! - run.time_s[row - 1]!);
  }
  return {
    ...results,
    heatingUp_s: run.firstVapour_s ?? results.duration_s,
    heat_J: run.supplied_J.at(-1)!,
    lost_J,
    meanAbove: anything ? pureAlcoholAbove_m3 / volumeAbove_m3 : null,
  };
}
