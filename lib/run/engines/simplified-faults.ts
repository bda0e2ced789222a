// What no simplification without an account of energy can run: each is refused by its name.

import type { Fault } from '../../errors.js';
import type { CompleteProblem } from '../complete.js';

/** Faults that both such models share. */
export function simplifiedFaults({ model, still, start, lags, sheet }: CompleteProblem): Fault[] {
  const only = `'energy': the model '${model}' knows no`;
  const faults: Fault[] = [];
  const refuse = (argument: string, value: unknown, what: string): void => {
    faults.push({ argument, value, expected: `nothing, or the model ${only} ${what}` });
  };
  if (still.doublers.length > 0) refuse('still.doublers', still.doublers.length, 'doublers');
  if (still.refluxCondenser.kind === 'partial') {
    refuse('still.refluxCondenser.kind', 'partial', 'partial condenser');
  }
  if (start === 'cold') refuse('start', start, 'heating up');
  if (lags !== undefined) refuse('lags', lags, 'lags');
  sheet.forEach(({ reflux }, i) => {
    const where = `sheet[${String(i)}]`;
    if (typeof reflux === 'object') refuse(`${where}.reflux`, reflux.kind, `reflux of the kind '${reflux.kind}'`);
    if (reflux === 'asSet') refuse(`${where}.reflux`, reflux, 'partial condenser');
  });
  return faults;
}
