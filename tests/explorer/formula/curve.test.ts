// A formula drawn against a variable.

import { describe, expect, it } from 'vitest';
import { water } from '#lib/index.js';
import { answer } from '../../../explorer/formula/answer.js';
import { limits } from '../../../explorer/formula/limits.js';
import type { FormulaCurve } from '../../../explorer/formula/sheet.js';
import { sheetOf } from '../../support/formulas.js';

function curveOf(texts: readonly string[], against: string, from: string, to: string): FormulaCurve['outcome'] {
  const id = `line ${String(texts.length - 1)}`;
  return answer({ sheet: sheetOf(texts), curves: [{ id, against, from, to }] }).curves[0]!.outcome;
}

function drawn(...args: Parameters<typeof curveOf>): Exclude<FormulaCurve['outcome'], { fault: unknown }> {
  const outcome = curveOf(...args);
  if ('fault' in outcome) throw new Error(outcome.fault.wrong);
  return outcome;
}

describe('a curve', () => {
  it('against a number of the page goes through where the page stands', () => {
    const { x, y, now, missing } = drawn(['pure = volume * strength'], 'strength', '0', '50%');
    expect([x.unit, y.unit, x.numbers.length]).toEqual(['% vol', 'L', limits.points]);
    expect([x.numbers[0], x.numbers.at(-1)]).toEqual([0, 50]);
    expect([y.numbers[0], y.numbers.at(-1)]).toEqual([0, 60]);
    expect(now!.x).toBeCloseTo(9.5, 12);
    expect(now!.y).toBeCloseTo(11.4, 12);
    expect(missing).toBeNull();
  });

  it('takes the unit of the variable for ends without one', () => {
    const { x, y } = drawn(['volume * strength'], 'volume', '10', '20 L');
    expect([x.unit, x.numbers[0], x.numbers.at(-1)]).toEqual(['L', 10, 20]);
    expect(y.numbers.at(-1)).toBeCloseTo(1.9, 12);
  });

  it('computes the lines between the variable and the formula again', () => {
    const { y } = drawn(['half = volume / 2', 'third(v) = v / 3', 'third(half) + volume'], 'volume', '0 L', '60 L');
    expect(y.numbers.at(-1)).toBeCloseTo(70, 12);
  });

  it('against another line moves that line’s value', () => {
    const { x, y, now } = drawn(['share = 3', 'share^2'], 'share', '0', '10');
    expect([x.numbers.at(-1), y.numbers.at(-1)]).toEqual([10, 100]);
    expect(now).toEqual({ x: 3, y: 9 });
  });

  it('of a function of one thing is drawn against that thing, in temperature as well', () => {
    const { x, y, now } = drawn(['t(p) = boilingPoint(0, p)'], 'p', '50 kPa', '1 atm');
    expect([x.unit, y.unit]).toEqual(['kPa', '°C']);
    expect(y.numbers[0]).toBeCloseTo(
      water.boilingTemperature(50_000) - water.boilingTemperature(101_325) + y.numbers.at(-1)!,
      9,
    );
    expect(now).toBeNull();
    const warm = drawn(['density40(t) = density(40%, t)'], 't', '0 °C', '80 °C');
    expect([warm.x.unit, warm.x.numbers[60], warm.y.unit]).toEqual(['°C', expect.closeTo(40, 9), 'kg/m³']);
  });

  it('has a gap where there is no value, and says why', () => {
    const { y, missing } = drawn(['f(x) = sqrt(x)'], 'x', '-1', '1');
    expect(y.numbers.slice(0, 60).every(Number.isNaN)).toBe(true);
    expect(y.numbers.slice(60).every(Number.isFinite)).toBe(true);
    expect(missing).toBe('That has no value');
  });

  it('is in the unit of its first value all along', () => {
    const { y } = drawn(['f(x) = x < 1 ? 1 L : 1 m^3'], 'x', '0', '2');
    expect([y.unit, y.numbers[0], y.numbers.at(-1)]).toEqual(['L', 1, 1000]);
  });

  it.each([
    [['volume * 2'], 'strength', '0', '1', 'It does not depend on ‘strength’'],
    [['volume * 2'], 'nothing', '0', '1', 'It does not depend on ‘nothing’'],
    [['f(x, y) = x + y'], 'x', '0', '1', 'Only a function of one thing can be drawn'],
    [['volume * 2'], 'volume', '5 L', '5 L', 'The range has no length'],
    [['volume * 2'], 'volume', '5 kg', '9 L', 'The range, ‘from’: it is to be of the same kind as ‘volume’'],
    [['volume * 2'], 'volume', '5 +', '9', 'The range, ‘from’: The formula ends before it is complete'],
    [['volume * 2'], 'volume', '5', 'vol', 'The range, ‘to’: nothing with a value is called ‘vol’'],
    [['volume * strength'], 'strength', '0', '50', 'The range, ‘to’: a share goes from 0 to 1'],
    [['f(x) = x'], 'x', '1 L', '5', 'The ends of the range are not of the same kind'],
    [['volume > 5 L'], 'volume', '1', '9', 'True or false has no curve'],
    [['volume +'], 'volume', '1', '9', 'The formula cannot be read'],
  ] as const)('of %j against %s from %s to %s is refused: %s', (texts, against, from, to, wrong) => {
    expect(curveOf(texts, against, from, to)).toMatchObject({ fault: { wrong } });
  });
});
