// Strength and temperature up the column at the cursor of the run by its sheet, one figure each.

import type { PlainEnergySolution } from '#lib/index.js';
import { columnStrength, columnTemperature } from '../../../figures/column-profile.js';
import { remembered } from '../../../state/memo.js';
import { cursorPosition, timeCursor } from '../../../state/run-cursor.js';
import { profileRows } from '../../../state/still-profile.js';
import { sheetAsks, sheetRun, type SheetAsks, type SheetNow } from '../../run-sheet/asks.js';
import type { Here } from '../../entry.js';
import type { FigureData, FigurePiece } from '../piece.js';

const rowsAt = remembered(
  (
    still: Parameters<typeof profileRows>[0],
    run: PlainEnergySolution,
    at: number,
    units: Parameters<typeof profileRows>[3],
  ) => profileRows(still, run, [at], units),
);

function rows({ cursor, units }: Here<FigureData, SheetAsks>, now: SheetNow): ReturnType<typeof profileRows> {
  const run = sheetRun(now);
  return rowsAt(run.problem.still, run, cursorPosition(timeCursor(cursor, run), run), units);
}

export const strengthUpTheColumn: FigurePiece<SheetAsks> = {
  asks: sheetAsks,
  draw: (here, now) => ({ figure: columnStrength, rows: rows(here, now) }),
};

export const temperatureUpTheColumn: FigurePiece<SheetAsks> = {
  asks: sheetAsks,
  draw: (here, now) => ({ figure: columnTemperature, rows: rows(here, now) }),
};
