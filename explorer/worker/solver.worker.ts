// The solver off the page's thread. Nothing happens here but handing on: see questions.ts.

import { expose } from 'comlink';
import { createEthanolWater } from '#lib/index.js';
import { createSolver, needsLate, type Question, type Reply } from './questions.js';

const system = createEthanolWater();
const atOnce = createSolver(system);

async function answer(questions: readonly Question[]): Promise<Reply> {
  if (!questions.some(needsLate)) return atOnce(questions);
  return createSolver(system, await import('./drift.js'))(questions);
}

expose({ answer });
