// The azeotrope against pressure, as the worker answers it.

import { describe, expect, it } from 'vitest';
import { activityModel, azeotrope, azeotropeUncertainty, createEthanolWater } from '#lib/index.js';
import { drift } from '../../../explorer/worker/drift.js';
import { createSolver, lateNeeded, type DriftQuestion } from '../../../explorer/worker/questions.js';

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
  const system = createEthanolWater();

  it('hands a drift to what was loaded late', () => {
    expect(lateNeeded([question])).toEqual(['drift']);
    const reply = createSolver(system, { drift })([question]);
    expect(reply).toEqual({ kind: 'answered', answers: [drift(question)] });
  });

  it('hands back the fault of a pressure that cannot be', () => {
    const reply = createSolver(system, { drift })([{ ...question, pressures_Pa: [1] }]);
    expect(reply.kind).toBe('refused');
  });
});
