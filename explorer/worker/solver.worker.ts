// The solver off the page's thread. Nothing happens here but handing on: see answering.ts.

import { createEthanolWater } from '#lib/index.js';
import { createSolver } from './answering.js';
import { PartMissing } from './kinds/kind.js';
import type { Question, Reply } from './questions.js';

/** A question on its way to the worker. */
export interface ToSolver {
  readonly id: number;
  readonly question: Question;
}
/** What becomes of it. */
export type FromSolver = { readonly id: number } & (
  | { readonly reply: Reply }
  /** A part of the solver that is loaded when first needed could not be. */
  | { readonly missing: string }
  /** A fault of the solver's own. */
  | { readonly threw: Error }
  /** How far a run has come, s. */
  | { readonly reached_s: number }
);

const solve = createSolver(createEthanolWater());
const post = (message: FromSolver): void => (self as unknown as Worker).postMessage(message);

addEventListener('message', ({ data: { id, question } }: MessageEvent<ToSolver>) => {
  solve(question, (reached_s) => post({ id, reached_s })).then(
    (reply) => post({ id, reply }),
    (error: unknown) =>
      post(error instanceof PartMissing ? { id, missing: error.message } : { id, threw: error as Error }),
  );
});
