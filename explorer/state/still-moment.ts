// A still at one moment of its run, as a plain record: what a picture of it shows. Levels are those of the hot liquid;
// between two rows of the solution states are read along a straight line, rates only where no step of the run sheet begins.

import type { Flow, PartMoment, KettleMoment, DoublerMoment, StageMoment, StillMoment } from '../rows/still-moment.js';
import {
  chargeAmounts,
  densityOfLiquid,
  massFractionFromMoleFraction,
  strengthFromMoleFraction,
  volumeAt20C,
  type HoldUp,
  type Still,
} from '#lib/index.js';
import { readAt, readPlate } from './run-results.js';
import { jarsAt } from './still-jars.js';
import { stillMeasures, type StillMeasures } from './still-measures.js';
import type { SheetRun } from './run-sheet.js';

/** A part that holds less than this share of the most it ever holds counts as dry. */
const dry = 0.03;
/** A reflux ratio above this is total reflux. */
const total = 1e4;
/** Less vapour than this share of the largest flow is as good as none. */
const simmer = 0.01;
const twentyCelsius_K = 293.15;

/** The still at a row of its run, `position` counted with its part from 0 and kept within the run. */
export function stillMoment(still: Still, run: SheetRun, position: number): StillMoment {
  const reader = readerAt(run, stillMeasures(still, run), position);
  const { at, own, measures } = reader;
  const indexOf = (kind: string): number => run.holders.findIndex((holder) => holder.kind === kind);
  const firstDoubler = indexOf('doubler');
  const stages = run.holders.flatMap(({ kind }, j) => (kind === 'plate' || kind === 'packing' ? [j] : []));
  const partial = indexOf('partialCondenser');
  const drumFilled = drumOf(still, reader);
  return {
    time_s: at(run.time_s),
    firstVapour_s: run.firstVapour_s,
    power_W: own(run.power_W),
    condenserDuty_W: own(run.condenserDuty_W),
    refluxDuty_W: own(run.refluxDuty_W),
    kettle: kettleOf(still, partOf(reader, 0)),
    doublers: still.doublers.map((_doubler, i) => doublerOf(still, run, i, firstDoubler, reader)),
    stages: stages.map((j, i) => stageOf(still, reader, j, i + 1)),
    head: { temperature_K: at(run.headTemperature_K), vapour: partOf(reader, run.holders.length - 1).vapour },
    partial: partial < 0 ? null : partOf(reader, partial),
    drumFilled,
    refluxRatio: still.refluxCondenser.kind === 'none' ? null : ratioOf(reader),
    reflux: reader.flow(measures.refluxRate_mol_s, measures.refluxPassed_mol),
    distillate: reader.flow(run.distillateRate_mol_s, measures.distillatePassed_mol),
    distillateRate_m3_s: own(run.distillateRate_m3_s),
    spoutStrength: drumFilled > dry ? at(run.spoutStrength) : null,
    collectedVolume_m3: at(run.collectedVolume_m3),
    jars: jarsAt(run, at(run.time_s), reader.position),
  };
}

interface Reader {
  readonly run: SheetRun;
  readonly measures: StillMeasures;
  readonly position: number;
  /** A state between rows; a rate between rows of one step; both of a holder when one is named. */
  readonly at: (column: ArrayLike<number>, holder?: number) => number;
  readonly own: (column: ArrayLike<number>, holder?: number) => number;
  readonly flow: (rate: ArrayLike<number>, passed: ArrayLike<number>, holder?: number) => Flow;
}

function readerAt(run: SheetRun, measures: StillMeasures, asked: number): Reader {
  const position = Math.min(Math.max(0, asked), run.rows - 1);
  const row = Math.floor(position);
  // The row at which a step begins has the rates of that step: before it, those of the row before hold.
  const steady = run.stepStarts.includes(row + 1) ? row : position;
  const width = run.holders.length;
  const read = (column: ArrayLike<number>, holder: number | undefined, where: number): number =>
    holder === undefined ? readAt(column, where) : readPlate(column, width, holder, where);
  const at: Reader['at'] = (column, holder) => read(column, holder, position);
  const own: Reader['own'] = (column, holder) => read(column, holder, steady);
  return {
    run,
    measures,
    position,
    at,
    own,
    flow: (rate, passed, holder) => {
      const rate_mol_s = Math.max(0, own(rate, holder));
      const share = rate_mol_s / measures.mostFlow_mol_s;
      return { rate_mol_s, share, passed: at(passed, holder) / measures.mostPassed_mol };
    },
  };
}

/** L/D by what runs back and what leaves. */
function ratioOf({ run, measures, own }: Reader): number {
  const drawn = own(run.distillateRate_mol_s);
  const back = own(measures.refluxRate_mol_s);
  return drawn * total > back ? back / drawn : back > 0 ? Infinity : 0;
}

function drumOf({ refluxCondenser, productCondenser }: Still, { run, at }: Reader): number {
  const stays_m3 =
    (refluxCondenser.kind === 'total' ? heldVolume(refluxCondenser.holdUp, run) : 0) +
    heldVolume(productCondenser.holdUp, run);
  const moleFraction = Math.min(1, Math.max(0, at(run.spoutMoleFraction)));
  return hotVolume(Math.max(0, at(run.drumAmount_mol)), moleFraction, at(run.headTemperature_K)) / stays_m3;
}

/** What a condenser holds, m³; an amount counts as its volume of charge at 20 °C, as in the run itself. */
function heldVolume(holdUp: HoldUp, { problem }: SheetRun): number {
  if (holdUp.kind === 'volume') return holdUp.volume_m3;
  const { ethanol_mol, water_mol } = chargeAmounts(problem.charge);
  return (holdUp.amount_mol * volumeAt20C(ethanol_mol, water_mol)) / (ethanol_mol + water_mol);
}

function partOf({ run, measures, at, flow }: Reader, j: number): PartMoment {
  const moleFraction = Math.min(1, Math.max(0, at(run.holderLiquid, j)));
  const amount_mol = Math.max(0, at(run.holderAmount_mol, j));
  const temperature_K = at(run.holderTemperature_K, j);
  const vapour = flow(run.holderVapourRate_mol_s, measures.vapourPassed_mol, j);
  return {
    temperature_K,
    strength: amount_mol > dry * measures.mostHeld_mol[j]! ? strengthFromMoleFraction(moleFraction) : null,
    volume_m3: hotVolume(amount_mol, moleFraction, temperature_K),
    boiling: vapour.share > simmer,
    vapour,
    liquid: flow(run.holderLiquidRate_mol_s, measures.liquidPassed_mol, j),
  };
}

/** The liquid of so much at 20 °C takes up more room when hot. */
function hotVolume(amount_mol: number, moleFraction: number, temperature_K: number): number {
  const massFraction = massFractionFromMoleFraction(moleFraction);
  const cold_m3 = volumeAt20C(amount_mol * moleFraction, amount_mol * (1 - moleFraction));
  return (cold_m3 * densityOfLiquid(massFraction, twentyCelsius_K)) / densityOfLiquid(massFraction, temperature_K);
}

function kettleOf({ kettle }: Still, part: PartMoment): KettleMoment {
  const level_m = part.volume_m3 / floorOf(kettle);
  const heatingSurface_m = kettle.heatingSurfaceHeight_m;
  const covered = level_m >= heatingSurface_m;
  return { ...part, brim_m: kettle.volume_m3 / floorOf(kettle), level_m, heatingSurface_m, covered };
}

function doublerOf(still: Still, run: SheetRun, i: number, first: number, reader: Reader): DoublerMoment {
  const doubler = still.doublers[i]!;
  const part = partOf(reader, first + i);
  const filled = partOf(readerAt(run, reader.measures, 0), first + i);
  const level_m = part.volume_m3 / floorOf(doubler);
  const mouth_m = Math.max(0, filled.volume_m3 / floorOf(doubler) - doubler.dipDepth_m);
  return {
    ...part,
    brim_m: doubler.volume_m3 / floorOf(doubler),
    level_m,
    mouth_m,
    covered: level_m > mouth_m && part.strength !== null,
  };
}

function stageOf({ column }: Still, reader: Reader, j: number, number: number): StageMoment {
  const part = partOf(reader, j);
  const most = reader.measures.mostHeld_mol[j]!;
  return {
    ...part,
    number,
    depth_m: column.kind === 'none' ? 0 : part.volume_m3 / floorOf(column),
    filled: most > 0 ? reader.at(reader.run.holderAmount_mol, j) / most : 0,
  };
}

function floorOf({ diameter_m }: { readonly diameter_m: number }): number {
  return (Math.PI * diameter_m ** 2) / 4;
}
