// Rows of the x-y diagram, its last corner and the boiling diagram, from a curve at one pressure and the
// kettle as it is at one moment.

import {
  fromSI,
  moleFractionFromStrength,
  strengthFromMoleFraction,
  temperatureOnSlice,
  vapourOnSlice,
  type CurveSlice,
} from '#lib/index.js';
import type { ShownQuantity } from '../rows/shown.js';
import type { AzeotropeRow, BoilingDiagramRows, CurveRows, StaircaseDiagramRows } from '../rows/equilibrium.js';
import { joined, trimmed } from '../text/format.js';
import { unitSystems, type UnitSystem } from '../text/unit-systems.js';
import type { EquilibriumAnswer } from '../worker/kinds/equilibrium.js';
import type { CeilingRun } from './derive.js';
import { remembered } from './memo.js';
import { positionIn, readAt, readPlate } from './run-results.js';
import { stillOf } from './paths.js';
import { ratioOf } from './problems.js';
import type { Scenario } from './scenario.js';

/** Points of a drawn curve; the weak end is steep and gets more than its share. */
const points = 160;
/** Ideal steps drawn: so many that the last ones cannot be told apart. */
const idealSteps = 30;
const strengthsOnScale = [0.9, 0.91, 0.92, 0.93, 0.94, 0.95, 0.96, 0.97, 0.98, 0.99];

const strengthScale = remembered(() =>
  strengthsOnScale.map((strength) => ({ strength, moleFraction: moleFractionFromStrength(strength) })),
);

/** A curve as columns. */
export function curveRows(slice: CurveSlice): CurveRows {
  const liquid = Array.from({ length: points + 1 }, (_, k) => (k / points) ** 1.6);
  return {
    liquidMoleFraction: liquid,
    vapourMoleFraction: liquid.map((x) => vapourOnSlice(slice, x)),
    temperature_K: liquid.map((x) => temperatureOnSlice(slice, x)),
  };
}

/** The azeotrope of an answer, with the pressure in words. */
export function azeotropeRow(
  answer: EquilibriumAnswer,
  pressure_Pa: number,
  pressure: ShownQuantity = unitSystems.metric.pressure,
): AzeotropeRow | null {
  return answer.azeotrope === null ? null : { ...answer.azeotrope, pressure: pressureInWords(pressure_Pa, pressure) };
}

/** '1 atm' at the standard atmosphere, else '83.4 kPa'. */
export function pressureInWords(pressure_Pa: number, pressure: ShownQuantity): string {
  const atmospheres = fromSI(pressure_Pa, 'atm');
  const nearOne = Math.abs(atmospheres - 1) < 5e-4;
  return nearOne ? joined('1', 'atm') : pressure.withUnit(pressure_Pa);
}

/** Rows of ideal steps with everything sent back, from the charge's strength; `raoult` to draw that curve too. */
export function idealStairRows(
  curve: CurveRows,
  answer: EquilibriumAnswer,
  raoult: CurveRows | null,
  chargeStrength: number,
  pressure: number,
  units: UnitSystem,
): StaircaseDiagramRows {
  const kettle = moleFractionFromStrength(chargeStrength);
  const liquid = [kettle];
  const vapour = [vapourOnSlice(answer.slice, kettle)];
  while (liquid.length < idealSteps) {
    const next = vapour.at(-1)!;
    liquid.push(next);
    vapour.push(vapourOnSlice(answer.slice, next));
  }
  return {
    curve,
    raoult,
    staircase: {
      liquidMoleFraction: liquid,
      vapourMoleFraction: vapour,
      strength: vapour.map(strengthFromMoleFraction),
    },
    operatingLine: null,
    kettleStrength: chargeStrength,
    azeotrope: azeotropeRow(answer, pressure, units.pressure),
    strengthScale: strengthScale(),
    units,
  };
}

/** Rows of the still's own plates at one moment of its run (a row with its part), with the line of its reflux. */
export function plateStairRows(
  curve: CurveRows,
  answer: EquilibriumAnswer,
  run: CeilingRun,
  scenario: Scenario,
  position: number,
  units: UnitSystem,
): StaircaseDiagramRows {
  const kettle = readAt(run.kettleMoleFraction, position);
  const head = readAt(run.spoutMoleFraction, position);
  const plates = Array.from({ length: run.plates }, (_, plate) => plate);
  const liquid = [kettle, ...plates.map((plate) => readPlate(run.plateLiquid, run.plates, plate, position))];
  const vapour = [
    vapourOnSlice(answer.slice, kettle),
    ...plates.map((plate) => readPlate(run.plateVapour, run.plates, plate, position)),
  ];
  const reflux = ratioOf(scenario);
  const slope = reflux / (reflux + 1);
  return {
    curve,
    raoult: null,
    staircase: {
      liquidMoleFraction: liquid,
      vapourMoleFraction: vapour,
      // Of a weak liquid a run may end a trace below nothing, by less than its tolerance.
      strength: vapour.map((y) => strengthFromMoleFraction(Math.min(1, Math.max(0, y)))),
    },
    operatingLine: run.plates === 0 ? null : { slope, intercept: (1 - slope) * head, label: refluxLabel(reflux) },
    kettleStrength: readAt(run.kettleStrength, position),
    azeotrope: azeotropeRow(answer, stillOf(scenario).air.pressure_Pa, units.pressure),
    strengthScale: strengthScale(),
    units,
  };
}

function refluxLabel(reflux: number): string {
  return `reflux ${joined(trimmed(reflux, 2), ': 1')}`;
}

/** Rows of the boiling diagram with kettle and head as they stand at one moment, each on the drawn curve. */
export function boilingDiagramRows(
  curve: CurveRows,
  answer: EquilibriumAnswer,
  pressure: number,
  kettleMoleFraction: number,
  headMoleFraction: number,
  units: UnitSystem,
): BoilingDiagramRows {
  const { liquidMoleFraction, vapourMoleFraction, temperature_K } = curve;
  const point = (label: string, position: number): BoilingDiagramRows['points'][number] => ({
    label,
    liquidMoleFraction: readAt(liquidMoleFraction, position),
    vapourMoleFraction: readAt(vapourMoleFraction, position),
    temperature_K: readAt(temperature_K, position),
  });
  return {
    curve,
    azeotrope: azeotropeRow(answer, pressure, units.pressure),
    units,
    points: [
      point('kettle', positionIn(liquidMoleFraction, kettleMoleFraction)),
      point('head', positionIn(vapourMoleFraction, headMoleFraction)),
    ],
  };
}

/** How far the boil moves between a strength and the azeotrope, K. */
export function boilingSpan_K(answer: EquilibriumAnswer, fromStrength: number): number | null {
  if (answer.azeotrope === null) return null;
  return temperatureOnSlice(answer.slice, moleFractionFromStrength(fromStrength)) - answer.azeotrope.temperature_K;
}
