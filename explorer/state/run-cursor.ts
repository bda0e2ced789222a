// The cursor of a run's figure: a collected volume or a time, and the row of the run it stands on.

import { type DrawnRun, firstDrawn, positionIn, readAt } from './run-results.js';

/** Of a run, what is needed here. */
type Run = Pick<DrawnRun, 'time_s' | 'collectedVolume_m3' | 'stepStarts' | 'rows'>;

export interface RunCursor {
  readonly along: 'volume' | 'time';
  /** Collected volume, m³, or time, s; null until it has been moved. */
  readonly x: number | null;
}

/** Where it stands before it is moved: this share of all that is collected. */
const firstShare = 0.2;

/** Where the cursor stands, m³ or s. */
export function cursorX({ along, x }: RunCursor, run: Run): number {
  if (x !== null) return x;
  const volume = firstShare * run.collectedVolume_m3[run.rows - 1]!;
  return readAt(column(along, run), Math.max(positionIn(run.collectedVolume_m3, volume), firstDrawn(run)));
}

/** Row, with its part, under the cursor. */
export function cursorPosition(cursor: RunCursor, run: Run): number {
  return positionIn(column(cursor.along, run), cursorX(cursor, run));
}

/** The cursor along the other quantity, at the same moment. */
export function turned(cursor: RunCursor, run: Run): RunCursor {
  const along = cursor.along === 'volume' ? 'time' : 'volume';
  return { along, x: cursor.x === null ? null : readAt(column(along, run), cursorPosition(cursor, run)) };
}

/** The cursor along time, wherever it stood. */
export function timeCursor(cursor: RunCursor, run: Run): RunCursor {
  return cursor.along === 'time' ? cursor : turned(cursor, run);
}

function column(along: RunCursor['along'], run: Run): Float64Array {
  return along === 'volume' ? run.collectedVolume_m3 : run.time_s;
}
