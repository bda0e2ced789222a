// The run by the page's sheet, from lighting up: the one question that all entries ask that show it.

import type { KeptRun, RunPart, RunQuestion } from '../worker/kinds/run.js';
import { energyProblem } from './problems.js';
import { drawnParts } from './run-results.js';
import type { Scenario } from './scenario.js';

/** What is kept of the run: nearly all, for figures along the clock, the picture of the still, jars and limits. */
const sheetParts = [
  ...drawnParts,
  'spoutMoleFraction',
  'distillateRate_mol_s',
  'distillateRate_m3_s',
  'collectedEthanol_mol',
  'collectedWater_mol',
  'drumAmount_mol',
  'refluxRatio',
  'power_W',
  'condenserDuty_W',
  'refluxDuty_W',
  'lost_W',
  'supplied_J',
  'holderAmount_mol',
  'holderLiquid',
  'holderVapour',
  'holderTemperature_K',
  'holderVapourRate_mol_s',
  'holderLiquidRate_mol_s',
  'jars',
  'limits',
] as const satisfies readonly RunPart[];
type SheetPart = (typeof sheetParts)[number];
/** The run of a sheet without the limits it passes: what any solution of the library has. */
export type SheetRun = KeptRun<Exclude<SheetPart, 'limits'>>;

/** The run of the page: one question, whoever asks. */
export function sheetQuestion(scenario: Scenario): RunQuestion<SheetPart> {
  return { kind: 'run', keep: sheetParts, problem: energyProblem(scenario) };
}
