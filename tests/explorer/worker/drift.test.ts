// The azeotrope against pressure, as the worker answers it.

import { describe, expect, it } from 'vitest';
import { activityModel, azeotrope, azeotropeUncertainty, createEthanolWater } from '#lib/index.js';
import { drift, type DriftQuestion } from '../../../explorer/worker/kinds/drift.js';
import { createSolver } from '../../../explorer/worker/answering.js';

const atm_Pa = 101_325;
const question: DriftQuestion = {
  kind: 'drift',
  pressures_Pa: [5000, 30_000, atm_Pa, 2e6],
  endBetween_Pa: [3000, 30_000],
};

describe('the drift of the azeotrope', () => {
  const { points, end_Pa } = drift(question);
  const [low, vacuum, air, far] = points;

  it('is what the library says, with its standard error', () => {
    const found = azeotrope(atm_Pa, activityModel('redlich-kister'));
    const error = azeotropeUncertainty(atm_Pa);
    expect(found.found && error.found).toBe(true);
    if (!found.found || !error.found) return;
    expect(air!.azeotrope!.moleFraction).toBe(found.moleFraction);
    expect(air!.azeotrope!.moleFractionError).toBe(error.moleFraction);
    expect(air!.extrapolated).toBe(false);
  });

  it('stands near 97.2 % vol at 1 atm, by a tenth or two (Carey and Lewis, 1932: 0.8943)', () => {
    const printedDigit = 0.0005;
    expect(Math.abs(air!.azeotrope!.strength - 0.972)).toBeLessThan(printedDigit);
    expect(air!.azeotrope!.strengthError).toBeGreaterThan(0.0002);
    expect(air!.azeotrope!.strengthError).toBeLessThan(0.002);
  });

  it('moves up under vacuum and is gone far down', () => {
    expect(vacuum!.azeotrope!.moleFraction).toBeGreaterThan(air!.azeotrope!.moleFraction);
    expect(low!.azeotrope).toBeNull();
  });

  it('ends between 8 and 14 kPa, just where the library stops finding it', () => {
    expect(end_Pa).toBeGreaterThan(8000);
    expect(end_Pa).toBeLessThan(14_000);
    const model = activityModel('redlich-kister');
    expect(azeotrope(end_Pa!, model).found).toBe(true);
    expect(azeotrope(end_Pa! - 1, model).found).toBe(false);
  });

  it('has more points close to its end where they are asked for, the first at the very end', () => {
    const near = drift({ ...question, nearEnd: [1, 1.04] }).points.slice(question.pressures_Pa.length);
    expect(near.map(({ pressure_Pa }) => pressure_Pa)).toEqual([end_Pa!, 1.04 * end_Pa!]);
    expect(near[0]!.azeotrope!.strength).toBeGreaterThan(near[1]!.azeotrope!.strength);
    expect(drift({ ...question, endBetween_Pa: null, nearEnd: [1] }).points).toHaveLength(question.pressures_Pa.length);
  });

  it('is called extrapolated outside the temperatures of the fit', () => {
    expect(far!.extrapolated).toBe(true);
    expect(low!.extrapolated).toBe(true);
  });

  it('has no end where none was asked for, or where none lies between', () => {
    expect(drift({ ...question, endBetween_Pa: null }).end_Pa).toBeNull();
    expect(drift({ ...question, endBetween_Pa: [50_000, 90_000] }).end_Pa).toBeNull();
  });
});

describe('the solver', () => {
  const solve = createSolver(createEthanolWater());

  it('answers a drift with what it loads for it', async () => {
    expect(await solve(question)).toEqual({ kind: 'answered', answer: drift(question) });
  });

  it('hands back the fault of a pressure that cannot be', async () => {
    const refused = await solve({ ...question, pressures_Pa: [1] });
    // What goes through postMessage keeps the code.
    expect(structuredClone(refused)).toMatchObject({ kind: 'refused', faults: [{ code: 'outOfRange', value: 1 }] });
  });
});
