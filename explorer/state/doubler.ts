// 'The doubler': the reader's pot with and without a doubler, the doubler charged with other things, and two doublers
// in series, as problems; and what they come to as numbers.

import {
  DEFAULT_ACTIVITY,
  toSI,
  type Doubler,
  type DoublerCharge,
  type Still,
  type TrainProblem,
  type TrainSolution,
} from '#lib/index.js';
import type { EquilibriumQuestion, TrainQuestion } from '../worker/questions.js';
import { chargeOf } from './derive.js';
import { remembered } from './memo.js';
import type { Scenario } from './scenario.js';

/** Invented for this page. */
export const inventedDoubler = {
  /** Rooms in the vessels, as multiples of what is filled in. */
  kettleRoom: 1.35,
  doublerRoom: 2,
  /** Every run ends when the spout falls to this, % vol / 100. */
  endStrength: 0.1,
  /** Loss of a bare wall and heat capacity of its metal, a square metre of wall. */
  wallLoss_W_m2K: 8,
  wallMetal_J_m2K: 7000,
  air_K: toSI(20, '°C'),
  /** What else the doubler could be charged with, % vol / 100. */
  otherCharges: [0.0005, 0.1, 0.3, 0.5, 0.7],
  /** Two in series: their charges as shares of the kettle's, and their strengths. */
  lowWines: { share: 0.12, strength: 0.3 },
  highWines: { share: 0.1, strength: 0.72 },
  /** Cuts of that run, % vol / 100: spirit down to the first, high wines to the second, low wines to the third. */
  cuts: [0.8, 0.6, 0.02],
} as const;

const drawingTolerance = 1e-4;

/** What the page asks, by name. */
export type DoublerQuestions = {
  readonly pot: TrainQuestion;
  readonly doubler: TrainQuestion;
  readonly water: TrainQuestion;
  readonly otherwise: TrainQuestion;
  readonly lowWines: TrainQuestion;
  readonly feints: TrainQuestion;
  readonly heads: TrainQuestion;
  readonly retorts: TrainQuestion;
  readonly equilibrium: EquilibriumQuestion;
};

/** Runs of the table 'What it is charged with', in order of strength. */
export const otherNames = ['water', 'otherwise', 'lowWines', 'feints', 'heads'] as const;

/** The questions of the page; the same record for the same numbers. */
export function doublerQuestions(scenario: Scenario): DoublerQuestions {
  const { chargeVolume, chargeStrength, heat, pressure, doublerVolume, doublerStrength } = scenario;
  return questionsAt(chargeVolume, chargeStrength, heat, pressure, doublerVolume, doublerStrength);
}

const questionsAt = remembered(
  (
    chargeVolume: number,
    chargeStrength: number,
    heat: number,
    pressure: number,
    doublerVolume: number,
    doublerStrength: number,
  ): DoublerQuestions => {
    const charge = { chargeVolume, chargeStrength, heat, pressure };
    const end = [{ kind: 'spoutStrengthBelow', strength: inventedDoubler.endStrength } as const];
    const run = (strengths: readonly number[]): TrainQuestion =>
      question(
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
      doubler: run([doublerStrength]),
      water: run([water]),
      otherwise: run([otherwise]),
      lowWines: run([lowWines]),
      feints: run([feints]),
      heads: run([heads]),
      retorts: question(
        charge,
        [retort(inventedDoubler.lowWines), retort(inventedDoubler.highWines)],
        inventedDoubler.cuts.map((strength) => ({
          reflux: 'none',
          until: [{ kind: 'spoutStrengthBelow', strength } as const],
        })),
      ),
      equilibrium: { kind: 'equilibrium', activity: DEFAULT_ACTIVITY, pressure_Pa: pressure },
    };
  },
);

type ChargeNumbers = Pick<Scenario, 'chargeVolume' | 'chargeStrength' | 'heat' | 'pressure'>;

function question(
  numbers: ChargeNumbers,
  charges: readonly DoublerCharge['charge'][],
  drawing: TrainProblem['sheet'],
): TrainQuestion {
  return {
    kind: 'train',
    problem: {
      kind: 'train',
      still: potStill(numbers, charges),
      charge: chargeOf(numbers as Scenario),
      doublerCharges: charges.map((charge) => ({ charge })),
      activity: DEFAULT_ACTIVITY,
      power_W: numbers.heat,
      sheet: [{ reflux: 'none', until: [{ kind: 'firstVapour' }] }, ...drawing],
      outputs: { kind: 'perStep', points: 1 },
      start: 'cold',
      tolerance: drawingTolerance,
    },
  };
}

/** A pot with so many doublers: upright vessels as high as wide, bare metal, no head worth its name. */
function potStill({ chargeVolume, heat, pressure }: ChargeNumbers, charges: readonly DoublerCharge['charge'][]): Still {
  const { kettleRoom, doublerRoom, air_K } = inventedDoubler;
  const kettle = vessel(kettleRoom * chargeVolume);
  const doublers = charges.map((charge): Doubler => {
    const filled_m3 = charge.kind === 'volume' ? charge.volume_m3 : 0;
    const { height_m, ...doubler } = vessel(doublerRoom * filled_m3);
    // The pipe's mouth a little above the bottom.
    return { ...doubler, dipDepth_m: (0.9 * height_m) / doublerRoom, overflow: 'back' };
  });
  return {
    kettle: { ...kettle, heatingSurfaceHeight_m: 0.15 * kettle.height_m, power_W: heat },
    doublers,
    column: { kind: 'none' },
    head: { heatLoss_W_K: 0, metal_J_K: 0, film_m3: 1e-4 },
    refluxCondenser: { kind: 'none' },
    productCondenser: { holdUp_m3: 3e-4 * chargeVolume, flow_kg_s: 0.1, inlet_K: 288.15, transfer_W_K: 0.1 * heat },
    air: { pressure_Pa: pressure, temperature_K: air_K },
  };
}

function vessel(volume_m3: number): {
  volume_m3: number;
  diameter_m: number;
  height_m: number;
  heatLoss_W_K: number;
  metal_J_K: number;
} {
  const diameter_m = Math.cbrt((4 * volume_m3) / Math.PI);
  const wall_m2 = 1.5 * Math.PI * diameter_m ** 2;
  return {
    volume_m3,
    diameter_m,
    height_m: diameter_m,
    heatLoss_W_K: inventedDoubler.wallLoss_W_m2K * wall_m2,
    metal_J_K: inventedDoubler.wallMetal_J_m2K * wall_m2,
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
export function resultsOf(run: TrainSolution, chargeVolume: number): DoublerResults {
  const last = run.rows - 1;
  const holders = run.holders.length;
  const spoutRuns_s = run.firstVapour_s ?? run.time_s[last]!;
  let boils = 0;
  while (boils < last && run.holderVapourRate_mol_s[boils * holders]! <= 0) boils += 1;
  const wanted = run.collectedVolume_m3[0]! + chargeVolume / 100;
  let row = 0;
  while (row < last && run.collectedVolume_m3[row]! < wanted) row += 1;
  let best = 0;
  for (let i = 0; i <= last; i += 1) {
    if (run.collectedVolume_m3[i]! > 0.1 * wanted) best = Math.max(best, run.spoutStrength[i]!);
  }
  return {
    kettleBoils_s: run.time_s[boils]!,
    spoutRuns_s,
    first: run.pureAlcoholCollected_m3[row]! / Math.max(1e-12, run.collectedVolume_m3[row]!),
    best,
    collected_m3: run.collectedVolume_m3[last]!,
    pureAlcohol_m3: run.pureAlcoholCollected_m3[last]!,
    ended_s: run.time_s[last]!,
  };
}
