// Numbers as text. Fixed decimals in read-outs and tables, so that columns line up; trimmed ones in
// sentences. A true minus sign; the reader's decimal mark; a thin space between thousands from five digits on.

import { withoutZeros } from './ends.js';
import { decimalMark } from './locale.js';

/** '92.2', '18\u2009767': always so many decimals. */
export function fixed(value: number, decimals: number, mark = decimalMark): string {
  const text = value.toFixed(decimals);
  return grouped((Number(text) === 0 ? text.replace('-', '') : text).replace('-', '−').replace('.', mark));
}

/** A thin space between thousands where there are five digits or more before the decimal mark. */
export function grouped(text: string): string {
  const whole = /\d{5,}/u.exec(text.split(/[.,]/u, 1)[0]!)?.[0];
  return whole === undefined ? text : text.replace(whole, inThousands(whole));
}

function inThousands(digits: string): string {
  const first = digits.length % 3;
  const threes = digits.slice(first).match(/\d{3}/gu) ?? [];
  return [...(first === 0 ? [] : [digits.slice(0, first)]), ...threes].join('\u2009');
}

/** '9.5', '120': at most so many decimals, none that say nothing. */
export function trimmed(value: number, decimals: number, mark = decimalMark): string {
  const text = fixed(value, decimals, mark);
  return text.includes(mark) ? withoutZeros(text) : text;
}

/** A number and its unit, which never part: no-break space before words, none before a degree sign's unit. */
export function joined(digits: string, unit: string): string {
  return unit === '' ? digits : `${digits}\u00a0${unit.replaceAll(' ', '\u00a0')}`;
}

/** '1 h 22 min', '45 min', '20 s' for what is less than a minute, '0 min' for nothing. */
export function clock(seconds: number): string {
  if (seconds >= 0.5 && seconds < 59.5) return joined(String(Math.round(seconds)), 's');
  const minutes = Math.round(seconds / 60);
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  if (hours === 0) return joined(String(rest), 'min');
  return rest === 0 ? joined(String(hours), 'h') : `${joined(String(hours), 'h')} ${joined(String(rest), 'min')}`;
}

/** '1:22' for a column headed 'h:min'. */
export function hoursAndMinutes(seconds: number): string {
  const minutes = Math.round(seconds / 60);
  return `${String(Math.floor(minutes / 60))}:${String(minutes % 60).padStart(2, '0')}`;
}

/** '49 %' from 0.49. */
export function percent(share: number, decimals = 0): string {
  return joined(fixed(100 * share, decimals), '%');
}

const wordsToTwelve = 'no one two three four five six seven eight nine ten eleven twelve'.split(' ');

/** 'seven' up to twelve, '13' above. */
export function countInWords(count: number): string {
  return wordsToTwelve[count] ?? String(count);
}

const ordinals = 'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth'.split(' ');

/** 'seventh' up to twelfth, '13th' above. */
export function ordinal(count: number): string {
  const word = ordinals[count - 1];
  if (word !== undefined) return word;
  const ending = count % 100 > 10 && count % 100 < 14 ? 'th' : (['th', 'st', 'nd', 'rd'][count % 10] ?? 'th');
  return `${String(count)}${ending}`;
}
