// What every entry that shows the page's run sheet asks: its run.

import type { PlainEnergySolution, RunStep } from '#lib/index.js';
import { remembered } from '../../state/memo.js';
import type { Common } from '../../state/notebook-record.js';
import { runSheetIn, sheetQuestion } from '../../state/run-sheet.js';
import type { Scenario } from '../../state/scenario.js';
import type { TrainQuestion } from '../../worker/questions.js';
import type { Answered } from '../entry.js';

export type SheetAsks = { readonly sheetRun: TrainQuestion };
export type SheetNow = Answered<SheetAsks>;

const asked = remembered((question: TrainQuestion): SheetAsks => ({ sheetRun: question }));

/** The very same record as long as neither numbers nor sheet change. */
export function sheetAsks(scenario: Scenario, common: Common): SheetAsks {
  return asked(sheetQuestion(scenario, runSheetIn(common)));
}

/** The run of the sheet. */
export function sheetRun({ answers }: SheetNow): PlainEnergySolution {
  return answers.sheetRun.solution;
}

/** The steps as they were run: a bare pot sends nothing back, whatever the sheet says. */
export function stepsRun({ scenario }: SheetNow, common: Common): readonly RunStep[] {
  return sheetQuestion(scenario, runSheetIn(common)).problem.sheet;
}
