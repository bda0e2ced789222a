// The page's side of the solver: starts the worker and asks it.

import { wrap } from 'comlink';
import type { Question, Reply } from './questions.js';

/** Whatever answers questions: the worker, or a stand-in in a test. */
export interface Solver {
  answer(questions: readonly Question[]): Promise<Reply>;
}

/** Starts the worker; it lives as long as the page. */
export function startSolver(): Solver {
  const worker = new Worker(new URL('./solver.worker.ts', import.meta.url), { type: 'module' });
  const remote = wrap<Solver>(worker);
  return { answer: (questions) => remote.answer(questions as Question[]) };
}
