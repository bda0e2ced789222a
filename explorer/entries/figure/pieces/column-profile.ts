// Strength and temperature up the column at the cursor of the run by its sheet, one figure each.

import { columnStrength, columnTemperature } from '../../../figures/column-profile.js';
import { cursorPosition, timeCursor } from '../../../state/run-cursor.js';
import { profileRows } from '../../../state/still-profile.js';
import { sheetAsks, sheetRun, type SheetAsks, type SheetNow } from '../../run-sheet/asks.js';
import type { Here } from '../../entry.js';
import type { FigureData, FigurePiece } from '../piece.js';

function rows({ cursor, units, once }: Here<FigureData, SheetAsks>, now: SheetNow): ReturnType<typeof profileRows> {
  const run = sheetRun(now);
  const at = cursorPosition(timeCursor(cursor, run), run);
  return once('profile', [run, at, units], () => profileRows(run.problem.still, run, [at], units));
}

export const strengthUpTheColumn: FigurePiece<SheetAsks> = {
  asks: sheetAsks,
  draw: (here, now) => ({ figure: columnStrength, rows: rows(here, now) }),
};

export const temperatureUpTheColumn: FigurePiece<SheetAsks> = {
  asks: sheetAsks,
  draw: (here, now) => ({ figure: columnTemperature, rows: rows(here, now) }),
};
