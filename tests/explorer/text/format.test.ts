import { describe, expect, it } from 'vitest';
import {
  clock,
  countInWords,
  fixed,
  grouped,
  hoursAndMinutes,
  joined,
  ordinal,
  percent,
  trimmed,
} from '../../../explorer/text/format.js';
import { askedMarkOf, decimalMarkOf } from '../../../explorer/text/locale.js';

describe('numbers as text', () => {
  it('keep their decimals in read-outs and lose those that say nothing in sentences', () => {
    expect(fixed(92, 1)).toBe('92.0');
    expect(trimmed(92, 1)).toBe('92');
    expect(trimmed(9.5, 2)).toBe('9.5');
    expect(trimmed(120, 1)).toBe('120');
    expect(trimmed(100, 0)).toBe('100');
  });

  it('have a thin space between thousands from five digits on', () => {
    expect(trimmed(18_767, 0)).toBe('18\u2009767');
    expect(fixed(-1_234_567.891, 2)).toBe('−1\u2009234\u2009567.89');
    expect(fixed(1234.5, 1)).toBe('1234.5');
    expect(grouped('0.123456')).toBe('0.123456');
  });

  it('have a true minus sign, and none before a zero', () => {
    expect(fixed(-1.25, 1)).toBe('−1.3');
    expect(fixed(-0.01, 1)).toBe('0.0');
    expect(trimmed(-0.01, 1)).toBe('0');
  });

  it('have the mark that number formats have, also where these are not asked', () => {
    const english = ['en', 'en-AU', 'en-CA', 'en-GB', 'en-IE', 'en-IN', 'en-NZ', 'en-US', 'en-ZA', 'en-DE'];
    expect(english.map(decimalMarkOf)).toEqual(english.map(askedMarkOf));
  });

  it('have a decimal comma where the reader writes one, and the thin space all the same', () => {
    expect(fixed(-18_767.25, 2, ',')).toBe('−18\u2009767,25');
    expect(trimmed(9.5, 2, ',')).toBe('9,5');
    expect(trimmed(120, 2, ',')).toBe('120');
    expect(['en-GB', 'en-US', 'de-DE', 'fr-FR', 'es-ES', 'de-CH', 'ar-EG'].map(decimalMarkOf)).toEqual([
      '.',
      '.',
      ',',
      ',',
      ',',
      '.',
      '.',
    ]);
  });

  it('never part from their unit', () => {
    expect(joined('9.5', '% vol')).toBe('9.5\u00a0%\u00a0vol');
    expect(percent(0.49)).toBe('49\u00a0%');
  });
});

describe('times and counts in words', () => {
  it('give hours and minutes, rounded to the minute, and seconds below one', () => {
    expect(clock(4920)).toBe('1\u00a0h 22\u00a0min');
    expect(clock(3600)).toBe('1\u00a0h');
    expect(clock(3599)).toBe('1\u00a0h');
    expect(clock(29)).toBe('29\u00a0s');
    expect(clock(59.6)).toBe('1\u00a0min');
    expect(clock(0)).toBe('0\u00a0min');
  });

  it('are short in a column of times, minutes always in two figures', () => {
    expect([4920, 3599, 29, 36_000].map(hoursAndMinutes)).toEqual(['1:22', '1:00', '0:00', '10:00']);
  });

  it('are words up to twelve and figures above', () => {
    expect([countInWords(7), countInWords(13)]).toEqual(['seven', '13']);
    expect([1, 7, 12, 13, 21, 22, 23, 24, 112].map(ordinal)).toEqual(
      'first seventh twelfth 13th 21st 22nd 23rd 24th 112th'.split(' '),
    );
  });
});
