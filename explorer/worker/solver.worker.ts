// The solver off the page's thread. Nothing happens here but handing on: see questions.ts.

import { expose } from 'comlink';
import { createEthanolWater } from '#lib/index.js';
import { createSolver, type LateAnswers, lateNeeded, type Question, type Reply } from './questions.js';

const system = createEthanolWater();
const atOnce = createSolver(system);
const loaders: { readonly [Name in keyof LateAnswers]: () => Promise<Pick<LateAnswers, Name>> } = {
  drift: () => import('./drift.js'),
  train: () => import('./train.js'),
};

async function answer(questions: readonly Question[]): Promise<Reply> {
  const needed = lateNeeded(questions);
  if (needed.length === 0) return atOnce(questions);
  const modules = await Promise.all(needed.map((name) => loaders[name]()));
  return createSolver(system, Object.assign({}, ...modules) as Partial<LateAnswers>)(questions);
}

expose({ answer });
