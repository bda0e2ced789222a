// The page's side of the solver: starts the worker, asks it only what is not known yet, and gives the
// very same answer to the same question, so that figures of what did not change are not drawn again.

import { wrap } from 'comlink';
import type { Answer, Question, Reply } from './questions.js';

/** Whatever answers questions: the worker, or a stand-in in a test. */
export interface Solver {
  answer(questions: readonly Question[]): Promise<Reply>;
}

/** Answers kept; a page asks less than ten questions at a time. */
const kept = 48;

/** Starts the worker; it lives as long as the page. */
export function startSolver(): Solver {
  const worker = new Worker(new URL('./solver.worker.ts', import.meta.url), { type: 'module' });
  const remote = wrap<Solver>(worker);
  return rememberingSolver({ answer: (questions) => remote.answer(questions) });
}

/** A solver that asks `remote` each question once, as long as it is among the latest. */
export function rememberingSolver(remote: Solver): Solver {
  const known = new Map<string, Answer>();
  return {
    async answer(questions) {
      const keys = questions.map((question) => JSON.stringify(question));
      const news = questions.filter((_, index) => !known.has(keys[index]!));
      const found = new Map(keys.flatMap((key) => (known.has(key) ? [[key, known.get(key)!] as const] : [])));
      if (news.length > 0) {
        const reply = await remote.answer(news);
        if (reply.kind === 'refused') return reply;
        news.forEach((question, index) => found.set(JSON.stringify(question), reply.answers[index]!));
      }
      const answers = keys.map((key) => found.get(key)!);
      keys.forEach((key, index) => {
        known.delete(key);
        known.set(key, answers[index]!);
      });
      for (const oldest of known.keys()) {
        if (known.size <= kept) break;
        known.delete(oldest);
      }
      return { kind: 'answered', answers };
    },
  };
}
