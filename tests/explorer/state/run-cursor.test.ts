import { describe, expect, it } from 'vitest';
import { createEthanolWater, solve } from '#lib/index.js';
import { quickProblem } from '../../../explorer/state/problems.js';
import { startingScenario } from '../../../explorer/state/scenario.js';
import { cursorPosition, cursorX, turned } from '../../../explorer/state/run-cursor.js';
import { firstDrawn, readAt } from '../../../explorer/state/run-results.js';

const run = solve(quickProblem(startingScenario)!, createEthanolWater());
/** Reading a column between rows and looking the value up again: a few roundings, relative. */
const roundOff = 1e-9;

describe('the cursor of a run', () => {
  it('first stands where something has been collected', () => {
    const cursor = { along: 'volume', x: null } as const;
    expect(cursorPosition(cursor, run)).toBeGreaterThan(firstDrawn(run));
    expect(cursorX(cursor, run)).toBeGreaterThan(0);
  });

  it('stays at its moment when the figure is turned from volume to time and back', () => {
    const cursor = { along: 'volume', x: 0.004 } as const;
    const inTime = turned(cursor, run);
    expect(inTime.along).toBe('time');
    expect(readAt(run.collectedVolume_m3, cursorPosition(inTime, run))).toBeCloseTo(0.004, 9);
    const back = turned(inTime, run);
    expect(Math.abs(back.x! - cursor.x)).toBeLessThan(roundOff * cursor.x);
  });

  it('not yet moved is not moved by turning the figure', () => {
    const cursor = { along: 'volume', x: null } as const;
    expect(turned(cursor, run)).toEqual({ along: 'time', x: null });
    expect(cursorPosition(turned(cursor, run), run)).toBeCloseTo(cursorPosition(cursor, run), 6);
  });

  it('beyond the end of a run stands on its last row', () => {
    expect(cursorPosition({ along: 'time', x: 1e9 }, run)).toBe(run.rows - 1);
  });
});
