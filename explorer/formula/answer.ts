// All a page asks of the engine at once. The worker runs it step by step, so that it can listen in between; a test may
// run it through.

import { computeSheet } from './compute.js';
import { curveSteps, type Steps } from './curve.js';
import { Memory } from './memory.js';
import { curveKey } from './stopped.js';
import type { FormulaAsk, FormulaCurve, FormulaReply } from './sheet.js';

/** `began` is told the line that is worked on next; what has not changed since it was asked last is in `memory`. */
export function* answerSteps(
  { sheet, curves }: FormulaAsk,
  memory: Memory,
  began: (id: string) => void,
): Steps<FormulaReply> {
  const computed = computeSheet(sheet, began, memory);
  const drawn: FormulaCurve[] = [];
  for (const ask of curves) {
    began(curveKey(ask.id));
    drawn.push(yield* curveSteps(computed, ask, memory));
  }
  return { results: computed.results, curves: drawn };
}

/** The answer, without a rest. */
export function answer(
  ask: FormulaAsk,
  began: (id: string) => void = () => undefined,
  memory = new Memory(),
): FormulaReply {
  const steps = answerSteps(ask, memory, began);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}
