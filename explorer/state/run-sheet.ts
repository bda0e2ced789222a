// The run sheet of a page: steps as the library takes them, and the jars; shared by all entries of the page that show the run.
// With the page's numbers it makes the one question they all ask.

import { DEFAULT_ACTIVITY, toSI, type RunStep } from '#lib/index.js';
import type { KeptRun, RunPart, RunQuestion } from '../worker/kinds/run.js';
import { chargeOf } from './derive.js';
import { drawingTolerance, drawnRows } from './drawn-runs.js';
import { inventedStill } from './invented-stills.js';
import { faultInRunSheet, runSheetName } from './run-sheet-check.js';
import { drawnParts } from './run-results.js';
import type { Scenario } from './scenario.js';

/** Steps and the size of a jar. */
export interface RunSheet {
  readonly steps: readonly RunStep[];
  /** m³; null for a jar a step. */
  readonly jar_m3: number | null;
}

/** Invented, like everything a page starts with. */
export const startingSheet: RunSheet = {
  steps: [
    { reflux: 'total', until: [{ kind: 'firstVapour' }] },
    { reflux: 'total', until: [{ kind: 'duration', seconds: toSI(20, 'min') }] },
    { reflux: 3, until: [{ kind: 'spoutStrengthBelow', strength: 0.85 }] },
    // By strength, so that it can be met at any pressure: 98 °C is never reached far above the sea.
    { reflux: 1, until: [{ kind: 'kettleStrengthBelow', strength: 0.03 }] },
  ],
  jar_m3: toSI(1, 'L'),
};

/** The sheet in what a page shares; the starting one where there is none that can be read. */
export function runSheetIn(common: Readonly<Record<string, unknown>>): RunSheet {
  const found = common[runSheetName];
  return faultInRunSheet(found) === undefined ? (found as RunSheet) : startingSheet;
}

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

/** The run of a scenario by a sheet: one question, whoever asks. */
export function sheetQuestion(scenario: Scenario, sheet: RunSheet): RunQuestion<SheetPart> {
  const { chargeVolume, heat, pressure, plates, efficiency, columnDiameter, plateSpacing } = scenario;
  const sieve = { diameter: columnDiameter, spacing: plateSpacing };
  return {
    kind: 'run',
    keep: sheetParts,
    problem: {
      still: inventedStill({ chargeVolume, heat, pressure, doublerCharges: [], plates, efficiency, sieve }),
      charge: chargeOf(scenario),
      doublerCharges: [],
      activity: DEFAULT_ACTIVITY,
      heat: { kind: 'power', power_W: heat },
      // Without plates the invented still is a bare pot, which sends nothing back.
      sheet: plates === 0 ? sheet.steps.map((step) => ({ ...step, reflux: 'none' })) : sheet.steps,
      outputs: drawnRows,
      jars: sheet.jar_m3 === null ? { kind: 'perStep' } : { kind: 'size', volume_m3: sheet.jar_m3 },
      start: 'cold',
      tolerance: drawingTolerance,
    },
  };
}
