// The run sheet of a page: steps as the library takes them, and the jars; shared by all entries of the page that show the run.
// With the page's numbers it makes the one question they all ask.

import { DEFAULT_ACTIVITY, toSI, type Reflux, type StopRule, type TrainStep } from '#lib/index.js';
import type { TrainQuestion } from '../worker/questions.js';
import { chargeOf } from './derive.js';
import { inventedStill } from './invented-stills.js';
import { remembered } from './memo.js';
import type { Scenario } from './scenario.js';

/** Steps and the size of a jar. */
export interface RunSheet {
  readonly steps: readonly TrainStep[];
  /** m³; null for a jar a step. */
  readonly jar_m3: number | null;
}

/** Where a page keeps it among what its entries share. */
export const runSheetName = 'runSheet';

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

export const mostSteps = 12;
export const mostRules = 3;

/** The sheet in what a page shares; the starting one where there is none that can be read. */
export function runSheetIn(common: Readonly<Record<string, unknown>>): RunSheet {
  const found = common[runSheetName];
  return isRunSheet(found) ? found : startingSheet;
}

/** Whether a value from outside is a run sheet in shape; the library checks its numbers. */
export function isRunSheet(value: unknown): value is RunSheet {
  if (typeof value !== 'object' || value === null) return false;
  const { steps, jar_m3 } = value as Partial<RunSheet>;
  if (!(jar_m3 === null || typeof jar_m3 === 'number')) return false;
  if (!Array.isArray(steps) || steps.length === 0 || steps.length > mostSteps) return false;
  return steps.every((step: Partial<TrainStep> | null) => {
    if (typeof step !== 'object' || step === null || !isReflux(step.reflux)) return false;
    if (step.power_W !== undefined && typeof step.power_W !== 'number') return false;
    return Array.isArray(step.until) && step.until.length > 0 && step.until.every(isRule);
  });
}

function isReflux(value: unknown): value is Reflux {
  if (typeof value === 'number' || value === 'total' || value === 'none' || value === 'asSet') return true;
  return typeof value === 'object' && value !== null && 'kind' in value;
}

function isRule(value: unknown): value is StopRule {
  return typeof value === 'object' && value !== null && 'kind' in value;
}

/** Ten times the library's: a run of the page moves by less than its last printed digit. */
const drawingTolerance = 1e-4;

/** The run of a scenario by a sheet; the same question for the same numbers, whoever asks. */
export const sheetQuestion = remembered((scenario: Scenario, sheet: RunSheet): TrainQuestion => {
  const { chargeVolume, heat, pressure, plates, efficiency, columnDiameter, plateSpacing } = scenario;
  const sieve = { diameter: columnDiameter, spacing: plateSpacing };
  return {
    kind: 'train',
    limits: true,
    problem: {
      kind: 'train',
      still: inventedStill({ chargeVolume, heat, pressure, doublerCharges: [], plates, efficiency, sieve }),
      charge: chargeOf(scenario),
      doublerCharges: [],
      activity: DEFAULT_ACTIVITY,
      power_W: heat,
      // Without plates the invented still is a bare pot, which sends nothing back.
      sheet: plates === 0 ? sheet.steps.map((step) => ({ ...step, reflux: 'none' })) : sheet.steps,
      outputs: { kind: 'perStep', points: 1 },
      jars: sheet.jar_m3 === null ? { kind: 'perStep' } : { kind: 'size', volume_m3: sheet.jar_m3 },
      start: 'cold',
      tolerance: drawingTolerance,
    },
  };
});
