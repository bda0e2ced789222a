// Text typed into a blank -> one SI number. Plain numbers are in the unit shown; a number with a unit is
// read by the small table; a unit that table does not know is for the formula engine (asked by the blank).

import type { Reading } from '../components/number/number-spec.js';
import { decimalMark, type DecimalMark } from './locale.js';

/** What a number may be typed as. */
export interface Readable {
  /** SI from a bare number, in the unit shown. */
  readonly fromShown: (shown: number) => number;
  /** SI from a number with a unit the small table knows, keyed by `plainUnit`. */
  readonly units: ReadonlyMap<string, (value: number) => number>;
  /** Whether other units may be asked of the formula engine. */
  readonly engine: boolean;
}

/** Letters of a number with its unit; what is longer is none. */
const longest = 100;
const numberThenUnit = /^([+−-]?[\d.,'’ ]*\d[.,]?)(.*)$/u;

/** What `text` says. */
export function readText(text: string, readable: Readable, mark: DecimalMark = decimalMark): Reading {
  const cleaned = text.replace(/[\s\u00a0\u2009\u202f]+/gu, ' ').trim();
  if (cleaned.length > longest) return { kind: 'refused', reason: 'noNumber' };
  if (cleaned === '') return { kind: 'refused', reason: 'empty' };
  const match = numberThenUnit.exec(cleaned.startsWith('.') || cleaned.startsWith(',') ? `0${cleaned}` : cleaned);
  if (match === null) return { kind: 'refused', reason: 'noNumber' };
  const number = readNumber(match[1] ?? '', mark);
  if (number === undefined) return { kind: 'refused', reason: 'noNumber' };
  if (number === 'ambiguous') return { kind: 'refused', reason: 'ambiguousComma' };
  const unit = (match[2] ?? '').trim();
  if (unit === '') return { kind: 'value', si: readable.fromShown(number) };
  const known = readable.units.get(plainUnit(unit));
  if (known !== undefined) return { kind: 'value', si: known(number) };
  return readable.engine ? { kind: 'ask', number, unit } : { kind: 'refused', reason: 'unknownUnit' };
}

/** A unit without the spaces, dots and capitals people differ in. */
export function plainUnit(unit: string): string {
  return unit.toLowerCase().replace(/[\s.]/gu, '');
}

/**
 * A number with a decimal point or a decimal comma. Marks between thousands are read where they can mean
 * nothing else ('18 767', '1,234.5'). One mark before three digits ('1,234') is decimal where it is the reader's own
 * decimal mark; the other could be either and is refused.
 */
function readNumber(text: string, mark: DecimalMark): number | 'ambiguous' | undefined {
  const sign = /^[−-]/u.test(text) ? -1 : 1;
  const digits = text.replace(/^[+−-]/u, '').replace(/[.,]$/u, '');
  if (/^[1-9]\d{0,2}(?:[ '’]\d{3})+(?:[.,]\d+)?$/u.test(digits)) {
    return sign * Number(digits.replace(/[ '’]/gu, '').replace(',', '.'));
  }
  if (/^[1-9]\d{0,2}(?:,\d{3})+\.\d+$/u.test(digits)) return sign * Number(digits.replaceAll(',', ''));
  if (/^[1-9]\d{0,2}(?:\.\d{3})+,\d+$/u.test(digits)) {
    return sign * Number(digits.replaceAll('.', '').replace(',', '.'));
  }
  const thousands = mark === '.' ? /^[1-9]\d{0,2}(?:,\d{3})+$/u : /^[1-9]\d{0,2}(?:\.\d{3})+$/u;
  if (thousands.test(digits)) return 'ambiguous';
  return /^\d+(?:[.,]\d+)?$/u.test(digits) ? sign * Number(digits.replace(',', '.')) : undefined;
}
