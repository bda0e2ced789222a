// What a formula comes to, as text.

import type { FormulaValue } from '../../formula/sheet.js';
import { joined } from '../../text/format.js';
import { numberText } from '../../text/number-text.js';

/** '11.4 L', '18 767 BTU/h', 'true', 'a function of x'. */
export function valueText(value: FormulaValue): string {
  if (value.is === 'truth') return value.truth ? 'true' : 'false';
  if (value.is === 'function') return `a function of ${value.of.join(', ')}`;
  return joined(numberText(value.shown), value.unit);
}
