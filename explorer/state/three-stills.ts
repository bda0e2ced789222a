// 'One charge, three stills': the same charge as problems of real stills, from lighting up until the same share of all
// alcohol has come over, and what each comes to. Beside the three of the page stand up to three of the reader's own.

import { DEFAULT_ACTIVITY, type StopRule, type RunStep } from '#lib/index.js';
import type { EquilibriumQuestion } from '../worker/kinds/equilibrium.js';
import type { KeptRun, RunQuestion } from '../worker/kinds/run.js';
import { chargeOf, invented } from './derive.js';
import { drawingTolerance, drawnRows } from './drawn-runs.js';
import { inventedStill } from './invented-stills.js';
import { drawnParts, runResults, type RunResults } from './run-results.js';
import type { Scenario } from './scenario.js';

/** Invented for this page. */
export const inventedStills = {
  /** Every run ends when this share of all alcohol filled in is left in the still, ... */
  alcoholLeft: 0.05,
  /** ... or when so much of the charge's volume has come over. */
  mostCollected: 0.85,
} as const;

/** A still of the reader's own, kept beside the others: the numbers that make it. */
export type OwnStill = Pick<Scenario, 'plates' | 'efficiency' | 'reflux'>;

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
  const { doublerVolume, doublerStrength, pressure } = scenario;
  const charge = { kind: 'volume', volume_m3: doublerVolume, strength: doublerStrength } as const;
  return {
    pot: question(scenario, [], null),
    doubler: question(scenario, [charge], null),
    column: question(scenario, [], scenario),
    ...Object.fromEntries(own.map((still, index) => [ownNames[index]!, question(scenario, [], still)])),
    equilibrium: { kind: 'equilibrium', activity: DEFAULT_ACTIVITY, pressure_Pa: pressure },
  };
}

type DoublerFilling = { readonly kind: 'volume'; readonly volume_m3: number; readonly strength: number };

function question(
  scenario: Scenario,
  doublerCharges: readonly DoublerFilling[],
  column: OwnStill | null,
): StillQuestion {
  const { chargeVolume, heat, pressure } = scenario;
  const plates = column?.plates ?? 0;
  const efficiency = column?.efficiency ?? 1;
  const all = doublerCharges.reduce((sum, { volume_m3 }) => sum + volume_m3, chargeVolume);
  const until: readonly StopRule[] = [
    { kind: 'alcoholLeftBelow', share: inventedStills.alcoholLeft },
    { kind: 'collectedVolume', volume_m3: inventedStills.mostCollected * all },
  ];
  return {
    kind: 'run',
    keep: stillParts,
    problem: {
      still: inventedStill({ chargeVolume, heat, pressure, doublerCharges, plates, efficiency }),
      charge: chargeOf(scenario),
      doublerCharges: doublerCharges.map((charge) => ({ charge })),
      activity: DEFAULT_ACTIVITY,
      heat: { kind: 'power', power_W: heat },
      sheet: sheetOf(plates, column?.reflux ?? 0, until),
      outputs: drawnRows,
      start: 'cold',
      tolerance: drawingTolerance,
    },
  };
}

/** A pot gives from the first vapour on; a column is first equalised. */
function sheetOf(plates: number, reflux: number, until: readonly StopRule[]): readonly RunStep[] {
  if (plates === 0) {
    return [
      { reflux: 'none', until: [{ kind: 'firstVapour' }] },
      { reflux: 'none', until },
    ];
  }
  return [
    { reflux: 'total', until: [{ kind: 'firstVapour' }] },
    { reflux: 'total', until: [{ kind: 'duration', seconds: invented.totalReflux_s }] },
    { reflux, until },
  ];
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
