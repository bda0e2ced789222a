// All a page asks of the engine at once. This is what the worker runs; a test may call it without one.

import { computeSheet } from './compute.js';
import { computeCurve } from './curve.js';
import { curveKey } from './stopped.js';
import type { FormulaAsk, FormulaReply } from './sheet.js';

/** `began` is told the line that is worked on next. */
export function answer({ sheet, curves }: FormulaAsk, began: (id: string) => void = () => undefined): FormulaReply {
  const computed = computeSheet(sheet, began);
  const drawn = curves.map((ask) => {
    began(curveKey(ask.id));
    return computeCurve(computed, ask);
  });
  return { results: computed.results, curves: drawn };
}
