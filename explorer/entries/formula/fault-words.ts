// A fault of a formula as the correction line says it.

import type { FormulaFault } from '../../formula/sheet.js';

/** 'Nothing here is called ‘volum’: did you mean volume?' */
export function faultWords({ wrong, right }: FormulaFault): string {
  if (right === '') return `${wrong}.`;
  return `${wrong}: ${right}${/[?.]$/u.test(right) ? '' : '.'}`;
}
