import { describe, expect, it } from 'vitest';
import { decimalsFor, plusMinus } from '../../../explorer/text/plus-minus.js';

describe('a number with its ±', () => {
  it.each([
    [10.83, 1.12, 'L', '10.8\u00a0±\u00a01.1\u00a0L'],
    [10.83, 0.38, 'L', '10.8\u00a0±\u00a00.4\u00a0L'],
    [10.83, 4.2, 'L', '11\u00a0±\u00a04\u00a0L'],
    [0.021, 0.0019, '', '0.021\u00a0±\u00a00.002'],
    [65.82, 0.3, '% vol', '65.8\u00a0±\u00a00.3\u00a0%\u00a0vol'],
    [43, 0, '% vol', '43.000\u00a0%\u00a0vol'],
  ])('%d with %d is told in the digits that count', (value, uncertainty, unit, text) => {
    expect(plusMinus(value, uncertainty, unit)).toBe(text);
  });

  it('has as many decimals as the uncertainty has', () => {
    expect([12, 3, 0.96, 0.3, 0.012, 0].map(decimalsFor)).toEqual([0, 0, 2, 1, 3, 0]);
  });
});
