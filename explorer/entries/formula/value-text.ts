// What a formula comes to, as text: five digits that count, no more than say something.

import type { FormulaValue } from '../../formula/sheet.js';
import { grouped, joined, trimmed } from '../../text/format.js';

/** '11.4 L', '18 767 BTU/h', 'true', 'a function of x'. */
export function valueText(value: FormulaValue): string {
  if (value.is === 'truth') return value.truth ? 'true' : 'false';
  if (value.is === 'function') return `a function of ${value.of.join(', ')}`;
  return joined(numberText(value.shown), value.unit);
}

/** Five digits that count. */
export function numberText(value: number): string {
  const size = Math.abs(value);
  if (value !== 0 && (size < 1e-4 || size >= 1e9)) return scientific(value);
  const decimals = size === 0 ? 0 : Math.max(0, 4 - Math.floor(Math.log10(size)));
  return trimmed(value, Math.min(8, decimals));
}

function scientific(value: number): string {
  const [digits = '', exponent = ''] = value.toExponential(4).split('e');
  const raised = exponent.replace('+', '').replace(/./gu, (sign) => (sign === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(sign)]!));
  const short = digits.includes('.') ? digits.replace(/\.?0+$/u, '') : digits;
  return `${grouped(short).replace('-', '−')}\u00a0×\u00a010${raised}`;
}
