// The solver off the page's thread. Nothing happens here but handing on: see questions.ts.

import { expose } from 'comlink';
import { createEthanolWater } from '#lib/index.js';
import { createSolver, type LateAnswers, lateNeeded, type Question, type Reply } from './questions.js';

/** A reply, or that a part of the solver that is loaded when first needed could not be. */
export type WorkersReply = Reply | { readonly kind: 'part-missing'; readonly why: string };

const system = createEthanolWater();
const atOnce = createSolver(system);
const loaders: { readonly [Name in keyof LateAnswers]: () => Promise<Pick<LateAnswers, Name>> } = {
  drift: () => import('./drift.js'),
  train: () => import('./train.js'),
};

async function answer(questions: readonly Question[]): Promise<WorkersReply> {
  const needed = lateNeeded(questions);
  if (needed.length === 0) return atOnce(questions);
  const modules = await Promise.all(needed.map((name) => loaders[name]())).catch(String);
  if (typeof modules === 'string') return { kind: 'part-missing', why: modules };
  return createSolver(system, Object.assign({}, ...modules) as Partial<LateAnswers>)(questions);
}

expose({ answer });
