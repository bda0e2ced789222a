// A kind of question: what it asks, what comes back, and the function that answers. One file and one line in registry.ts.

import type { EthanolWater } from '#lib/index.js';

/** What a kind may use while it answers. */
export interface Bench {
  readonly system: EthanolWater;
  /** Tells how far a run has come, s of its own time. */
  readonly tell: (reached_s: number) => void;
}

/** How a kind answers; what it cannot answer it throws as an InputError. */
export type Answering<Question, Answer> = (question: Question, bench: Bench) => Answer | Promise<Answer>;

/** A part of the solver that is loaded when first needed did not come. */
export class PartMissing extends Error {}

/** What `load` comes to; that it failed is told apart from what the part itself throws. */
export async function part<Loaded>(load: () => Promise<Loaded>): Promise<Loaded> {
  return load().catch((error: unknown) => {
    throw new PartMissing(String(error));
  });
}

/** A kind that is loaded when first asked for. */
export function late<Question, Answer>(load: () => Promise<Answering<Question, Answer>>): Answering<Question, Answer> {
  return async (question, bench) => (await part(load))(question, bench);
}
