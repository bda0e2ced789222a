// 'The doubler': the reader's pot with and without a doubler, the doubler charged with other things, and two doublers
// in series, as problems; and what they come to as numbers.

import { DEFAULT_ACTIVITY, type DoublerCharge, type EnergyProblem } from '#lib/index.js';
import type { EquilibriumQuestion } from '../worker/kinds/equilibrium.js';
import type { KeptRun, RunPart, RunQuestion } from '../worker/kinds/run.js';
import { chargeOf } from './derive.js';
import { drawingTolerance, drawnRows } from './drawn-runs.js';
import { inventedStill } from './invented-stills.js';
import { drawnParts, positionIn, readAt } from './run-results.js';
import type { Scenario } from './scenario.js';

/** Invented for this page. */
export const inventedDoubler = {
  /** Every run ends when the spout falls to this, % vol / 100. */
  endStrength: 0.1,
  /** What else the doubler could be charged with, % vol / 100; the first stands for water. */
  otherCharges: [0.000_01, 0.1, 0.3, 0.5, 0.7],
  /** Two in series: their charges as shares of the kettle's, and their strengths. */
  lowWines: { share: 0.12, strength: 0.3 },
  highWines: { share: 0.1, strength: 0.72 },
  /** Cuts of that run, % vol / 100: spirit down to the first, high wines to the second, low wines to the third. */
  cuts: [0.8, 0.6, 0.02],
} as const;

/** What is kept of the runs: what is drawn, when the kettle boils; of the doubler what is in it; of two in series the jars. */
const doublerParts = [...drawnParts, 'holderVapourRate_mol_s'] as const;
const insideParts = [...doublerParts, 'holderAmount_mol', 'holderLiquid', 'holderTemperature_K'] as const;
export type DoublerRun = KeptRun<(typeof doublerParts)[number]>;
export type InsideRun = KeptRun<(typeof insideParts)[number]>;
type DoublerQuestion = RunQuestion<(typeof doublerParts)[number]>;

/** What the page asks, by name. */
export type DoublerQuestions = {
  readonly pot: DoublerQuestion;
  readonly doubler: RunQuestion<(typeof insideParts)[number]>;
  readonly water: DoublerQuestion;
  readonly otherwise: DoublerQuestion;
  readonly lowWines: DoublerQuestion;
  readonly feints: DoublerQuestion;
  readonly heads: DoublerQuestion;
  readonly retorts: RunQuestion<'jars'>;
  readonly equilibrium: EquilibriumQuestion;
};

/** Runs of the table 'What it is charged with', in order of strength. */
export const otherNames = ['water', 'otherwise', 'lowWines', 'feints', 'heads'] as const;

/** The questions of the page. */
export function doublerQuestions(scenario: Scenario): DoublerQuestions {
  const { chargeVolume, chargeStrength, heat, pressure, doublerVolume, doublerStrength } = scenario;
  const charge = { chargeVolume, chargeStrength, heat, pressure };
  const end = [{ kind: 'spoutStrengthBelow', strength: inventedDoubler.endStrength } as const];
  const run = (strengths: readonly number[]): DoublerQuestion =>
    question(
      doublerParts,
      charge,
      strengths.map((strength) => ({ kind: 'volume', volume_m3: doublerVolume, strength })),
      [{ reflux: 'none', until: end }],
    );
  const [water, otherwise, lowWines, feints, heads] = inventedDoubler.otherCharges;
  const retort = ({ share, strength }: { share: number; strength: number }): DoublerCharge['charge'] => ({
    kind: 'volume',
    volume_m3: share * chargeVolume,
    strength,
  });
  return {
    pot: run([]),
    doubler: { ...run([doublerStrength]), keep: insideParts },
    water: run([water]),
    otherwise: run([otherwise]),
    lowWines: run([lowWines]),
    feints: run([feints]),
    heads: run([heads]),
    retorts: question(
      ['jars'],
      charge,
      [retort(inventedDoubler.lowWines), retort(inventedDoubler.highWines)],
      inventedDoubler.cuts.map((strength) => ({
        reflux: 'none',
        until: [{ kind: 'spoutStrengthBelow', strength } as const],
      })),
    ),
    equilibrium: { kind: 'equilibrium', activity: DEFAULT_ACTIVITY, pressure_Pa: pressure },
  };
}

type ChargeNumbers = Pick<Scenario, 'chargeVolume' | 'chargeStrength' | 'heat' | 'pressure'>;

function question<Kept extends RunPart>(
  keep: readonly Kept[],
  numbers: ChargeNumbers,
  charges: readonly DoublerCharge['charge'][],
  drawing: EnergyProblem['sheet'],
): RunQuestion<Kept> {
  return {
    kind: 'run',
    keep,
    problem: {
      still: inventedStill({ ...numbers, doublerCharges: charges, plates: 0, efficiency: 1 }),
      charge: chargeOf(numbers as Scenario),
      doublerCharges: charges.map((charge) => ({ charge })),
      activity: DEFAULT_ACTIVITY,
      heat: { kind: 'power', power_W: numbers.heat },
      sheet: [{ reflux: 'none', until: [{ kind: 'firstVapour' }] }, ...drawing],
      outputs: drawnRows,
      start: 'cold',
      tolerance: drawingTolerance,
    },
  };
}

/** What a run with one doubler comes to; SI, strengths as % vol / 100. */
export interface DoublerResults {
  /** When the kettle begins to boil, and when the spout runs. */
  readonly kettleBoils_s: number;
  readonly spoutRuns_s: number;
  /** Strength of the first jar's worth, a hundredth of the charge, as one mixture. */
  readonly first: number;
  /** Strongest at the spout while anything is collected. */
  readonly best: number;
  readonly collected_m3: number;
  readonly pureAlcohol_m3: number;
  /** Pure alcohol above the strength that counts. */
  readonly ended_s: number;
}

/** Results of a run of this page. */
export function resultsOf(run: DoublerRun, chargeVolume: number): DoublerResults {
  const last = run.rows - 1;
  const holders = run.holders.length;
  const spoutRuns_s = run.firstVapour_s ?? run.time_s[last]!;
  let boils = 0;
  while (boils < last && run.holderVapourRate_mol_s[boils * holders]! <= 0) boils += 1;
  const wanted = run.collectedVolume_m3[0]! + chargeVolume / 100;
  const full = positionIn(run.collectedVolume_m3, wanted);
  let best = 0;
  for (let i = 0; i <= last; i += 1) {
    if (run.collectedVolume_m3[i]! > 0.1 * wanted) best = Math.max(best, run.spoutStrength[i]!);
  }
  return {
    kettleBoils_s: run.time_s[boils]!,
    spoutRuns_s,
    first: readAt(run.pureAlcoholCollected_m3, full) / Math.max(1e-12, readAt(run.collectedVolume_m3, full)),
    best,
    collected_m3: run.collectedVolume_m3[last]!,
    pureAlcohol_m3: run.pureAlcoholCollected_m3[last]!,
    ended_s: run.time_s[last]!,
  };
}
