// Answers of the explorer's solver without a worker, for tests.

import { createEthanolWater } from '#lib/index.js';
import { createSolver } from '../../explorer/worker/answering.js';
import type { Answers, AnswerTo, Asks, Question } from '../../explorer/worker/questions.js';
import type { Solver } from '../../explorer/worker/solver-client.js';

const solve = createSolver(createEthanolWater());

/** Answers on the thread of the test. */
export const solverAtHand: Solver = { answer: (question) => solve(question) };

/** The answer to a question that can be answered. */
export async function answerTo<Asked extends Question>(question: Asked): Promise<AnswerTo<Asked>> {
  const reply = await solve(question);
  if (reply.kind === 'refused') throw new Error(`The solver refused ${JSON.stringify(reply.faults)}`);
  return reply.answer as AnswerTo<Asked>;
}

/** The answers to several, by name. */
export async function answersTo<Asked extends Asks>(asks: Asked): Promise<Answers<Asked>> {
  const answers = Object.entries(asks).map(async ([name, question]) => [name, await answerTo(question)] as const);
  return Object.fromEntries(await Promise.all(answers)) as unknown as Answers<Asked>;
}
