// What the reader has set as the problems of the library. Nothing is converted here: the settings are a problem already,
// but for plates that are none, doublers nobody charged, and a sheet that asks more of a condenser than it is.

import {
  DEFAULT_ACTIVITY,
  type DoublerCharge,
  type EnergyProblem,
  type Reflux,
  type RunProblem,
  type RunStep,
  type SimplifiedProblem,
  type Still,
} from '#lib/index.js';
import { drawingTolerance, drawnRows } from './drawn-runs.js';
import { stillAsRun, stillOf } from './paths.js';
import type { Scenario } from './scenario.js';

/** What a run of these pages is drawn with. */
const drawn = { outputs: drawnRows, tolerance: drawingTolerance } as const;

/** The run by its sheet, from lighting up, with its account of energy. */
export function energyProblem(scenario: Scenario): EnergyProblem {
  return { ...problem(scenario), ...drawn };
}

/** The same without heat-up and losses, for a figure that follows the hand; undefined where only a full run can be made of it. */
export function quickProblem(scenario: Scenario): SimplifiedProblem | undefined {
  if (!isSimple(scenario)) return undefined;
  return { ...problem(scenario), model: 'equalFlows', doublerCharges: [], jars: { kind: 'perStep' }, ...drawn };
}

/** Whether constant molar flows know all of this: plates or a bare pot, and reflux by ratios. */
function isSimple(scenario: Scenario): boolean {
  const { doublers, column, refluxCondenser } = stillOf(scenario);
  const known = doublers.length === 0 && column.kind !== 'packing' && refluxCondenser.kind !== 'partial';
  return known && scenario.sheet.every(({ reflux, heat }) => typeof reflux !== 'object' && heatBoils(heat));
}

function heatBoils(heat: RunStep['heat']): boolean {
  return heat?.kind !== 'power' || heat.power_W > 0;
}

/** What both have in common. */
function problem(scenario: Scenario) {
  const still = stillOf(scenario);
  return {
    still: stillAsRun(scenario.still),
    charge: scenario.charge,
    doublerCharges: still.doublers.map((doubler, i) => scenario.doublerCharges[i] ?? halfFull(doubler)),
    activity: DEFAULT_ACTIVITY,
    sheet: sheetOn(still, scenario.sheet),
    jars: scenario.jars,
  } satisfies Omit<RunProblem, 'model'>;
}

/** A doubler nobody charged: half full of low wines. Invented. */
function halfFull({ volume_m3 }: Still['doublers'][number]): DoublerCharge {
  return { charge: { kind: 'volume', volume_m3: volume_m3 / 2, strength: 0.3 } };
}

/** The sheet as this still can run it: a bare pot sends nothing back, a partial condenser runs as it is set. */
export function sheetOn({ refluxCondenser: { kind } }: Still, sheet: readonly RunStep[]): readonly RunStep[] {
  if (kind === 'total') return sheet;
  const able = (reflux: Reflux): Reflux => (kind === 'none' ? 'none' : typeof reflux === 'number' ? 'asSet' : reflux);
  return sheet.map((step) => ({ ...step, reflux: able(step.reflux) }));
}

/** Place of the first step that lets something out of a column; the last step where none does. */
export function drawingStep(sheet: readonly RunStep[]): number {
  const found = sheet.findIndex(({ reflux }) => reflux !== 'total');
  return found < 0 ? sheet.length - 1 : found;
}

/** The reflux ratio the sheet draws with; 0 where it draws otherwise. */
export function ratioOf({ sheet }: Pick<Scenario, 'sheet'>): number {
  const reflux = sheet[drawingStep(sheet)]?.reflux;
  return typeof reflux === 'number' ? reflux : 0;
}

/** The same with another ratio in the step that draws. */
export function withRatio(scenario: Scenario, ratio: number): Scenario {
  const at = drawingStep(scenario.sheet);
  return { ...scenario, sheet: scenario.sheet.map((step, i) => (i === at ? { ...step, reflux: ratio } : step)) };
}

/** The same run until so much has come over, m³; a pot gives from its first vapour on. */
export function untilCollected(scenario: Scenario, volume_m3: number): Scenario {
  const sheet = sheetOn(stillOf(scenario), scenario.sheet);
  const at = drawingStep(sheet);
  const last = { ...sheet[at]!, until: [{ kind: 'collectedVolume', volume_m3 } as const] };
  return { ...scenario, sheet: [...sheet.slice(0, at), last] };
}
