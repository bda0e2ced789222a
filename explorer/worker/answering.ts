// Answers questions, in the worker or, in a test, wherever one likes.

import { InputError, type EthanolWater } from '#lib/index.js';
import type { Answering } from './kinds/kind.js';
import { kinds } from './kinds/registry.js';
import type { Answer, Question, Reply } from './questions.js';

/** A solver with its equilibrium; it throws what is a fault of its own, or a PartMissing. */
export function createSolver(system: EthanolWater) {
  return async (question: Question, tell: (reached_s: number) => void = () => undefined): Promise<Reply> => {
    const answering = kinds[question.kind] as unknown as Answering<Question, Answer>;
    try {
      return { kind: 'answered', answer: await answering(question, { system, tell }) };
    } catch (error) {
      if (error instanceof InputError) return { kind: 'refused', faults: error.toPlain().faults };
      throw error;
    }
  };
}
