// Numbers whose kind is not known before: five digits that count.

import { describe, expect, it } from 'vitest';
import { numberText } from '../../../explorer/text/number-text.js';

describe('a number of any kind', () => {
  it.each([
    [0, '0'],
    [11.4, '11.4'],
    [1 / 3, '0.33333'],
    [92.35367, '92.354'],
    [18_766.78, '18\u2009767'],
    [-1.5, '−1.5'],
    [0.000_123_456, '0.00012346'],
    [1.2e-5, '1.2\u00a0×\u00a010⁻⁵'],
    [-3e12, '−3\u00a0×\u00a010¹²'],
    [39.999_999_999, '40'],
  ])('%f is written %s', (value, text) => {
    expect(numberText(value)).toBe(text);
  });
});
