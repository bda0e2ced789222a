// What every entry that shows the page's run sheet asks: its run.

import { sheetQuestion, type SheetRun } from '../../state/run-sheet.js';
import type { Scenario } from '../../state/scenario.js';
import type { Answered } from '../entry.js';

export type SheetAsks = { readonly sheetRun: ReturnType<typeof sheetQuestion> };
export type SheetNow = Answered<SheetAsks>;

export function sheetAsks(scenario: Scenario): SheetAsks {
  return { sheetRun: sheetQuestion(scenario) };
}

/** The run of the sheet. */
export function sheetRun({ answers }: SheetNow): SheetRun {
  return answers.sheetRun.solution;
}
