// Any number as text: five digits that count, no more than say something. For numbers whose kind is not known before.

import { withoutZeros } from './ends.js';
import { grouped, trimmed } from './format.js';
import { decimalMark } from './locale.js';

/** '11.4', '18 767', '1.2 × 10⁻⁵'. */
export function numberText(value: number): string {
  const size = Math.abs(value);
  if (value !== 0 && (size < 1e-4 || size >= 1e9)) return scientific(value);
  const decimals = size === 0 ? 0 : Math.max(0, 4 - Math.floor(Math.log10(size)));
  return trimmed(value, Math.min(8, decimals));
}

function scientific(value: number): string {
  const [digits = '', exponent = ''] = value.toExponential(4).split('e');
  const raised = exponent.replace('+', '').replace(/./gu, (sign) => (sign === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(sign)]!));
  const short = digits.includes('.') ? withoutZeros(digits) : digits;
  return `${grouped(short).replace('-', '−').replace('.', decimalMark).replace('.', decimalMark)}\u00a0×\u00a010${raised}`;
}
