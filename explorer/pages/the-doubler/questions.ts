// 'The doubler': the reader's pot with and without a doubler, the doubler charged with other things, and two doublers
// in series, as problems; and what they come to as numbers.

import type { EquilibriumQuestion } from '../../worker/kinds/equilibrium.js';
import type { KeptRun, RunPart, RunQuestion } from '../../worker/kinds/run.js';
import { potOf, withDoublers } from '../../state/beside.js';
import { boilingOf } from '../../state/derive.js';
import { energyProblem } from '../../state/problems.js';
import { drawnParts, positionIn, readAt } from '../../state/run-results.js';
import { startingScenario, type ChargeSet, type Filling, type Scenario } from '../../state/scenario.js';

/** Invented for this page. */
export const inventedDoubler = {
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
  const own = ownCharge(scenario);
  const run = (...charges: readonly Filling[]): DoublerQuestion => question(doublerParts, scenario, charges);
  const otherwise = (strength: number): DoublerQuestion => run({ ...own, strength });
  const retort = ({ share, strength }: { share: number; strength: number }): Filling => ({
    kind: 'volume',
    volume_m3: share * scenario.charge.volume_m3,
    strength,
  });
  const [water, wash, lowWines, feints, heads] = inventedDoubler.otherCharges;
  const retorts = [retort(inventedDoubler.lowWines), retort(inventedDoubler.highWines)];
  return {
    pot: run(),
    doubler: { ...run(own), keep: insideParts },
    water: otherwise(water),
    otherwise: otherwise(wash),
    lowWines: otherwise(lowWines),
    feints: otherwise(feints),
    heads: otherwise(heads),
    retorts: question(['jars'], { ...scenario, still: potOf(scenario.still), sheet: byCuts }, retorts),
    equilibrium: boilingOf(scenario),
  };
}

/** The sheet of two in series: from cut to cut. */
const byCuts: Scenario['sheet'] = [
  { reflux: 'none', until: [{ kind: 'firstVapour' }] },
  ...inventedDoubler.cuts.map((strength) => ({
    reflux: 'none' as const,
    until: [{ kind: 'spoutStrengthBelow', strength } as const],
  })),
];

/** What the doubler of the page is charged with. */
export function ownCharge({ doublerCharges }: ChargeSet): Filling {
  return (doublerCharges[0] ?? startingScenario.doublerCharges[0]!).charge;
}

/** The pot's run through doublers of these charges. */
function question<Kept extends RunPart>(
  keep: readonly Kept[],
  scenario: Scenario,
  charges: readonly Filling[],
): RunQuestion<Kept> {
  const doublerCharges = charges.map((charge) => ({ charge }));
  const still = withDoublers(scenario.still, doublerCharges);
  return {
    kind: 'run',
    keep,
    problem: energyProblem({ ...scenario, still, doublerCharges, jars: { kind: 'perStep' } }),
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
