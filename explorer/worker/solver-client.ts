// The page's side of the solver: starts the worker, asks it only what is not known yet, and gives the
// very same answer to the same question, so that figures of what did not change are not drawn again.

import { wrap, type Remote } from 'comlink';
import { fetchAnew } from '../offline/load-part.js';
import { startWorker } from '../offline/start-worker.js';
import { wanted } from '../offline/wanted.js';
import type { Answer, Question, Reply } from './questions.js';
import type { WorkersReply } from './solver.worker.js';
import workerAddress from './solver.worker.ts?worker&url';

/** Whatever answers questions: the worker, or a stand-in in a test. */
export interface Solver {
  answer(questions: readonly Question[]): Promise<Reply>;
}

/** The solver as it stands in its worker. */
export interface WorkersSolver {
  answer(questions: readonly Question[]): Promise<WorkersReply>;
}

/** Answers kept; a page asks less than ten questions at a time. */
const kept = 48;

const says = 'The figures cannot be computed: the solver, or a part of it, could not be loaded.';

/** Starts the worker; it lives as long as the page. Where it or a part of it cannot be loaded, questions wait until it
 * can: the frame says so. */
export function startSolver({ start, afresh }: SolverOptions = usual): Solver {
  let running: Running | undefined;

  /** Asks once; rejects where the worker is not there or lacks a part. */
  const ask = async (questions: readonly Question[]): Promise<Reply | Threw> => {
    const worker = (running ??= start());
    try {
      const reply = await Promise.race([worker.answer(questions), worker.gone]);
      if ('kind' in reply && reply.kind === 'part-missing') throw new Error(reply.why);
      return reply;
    } catch (error) {
      worker.end();
      if (running === worker) running = undefined;
      throw error;
    }
  };

  return rememberingSolver({
    async answer(questions) {
      const got = await wanted(says, () =>
        ask(questions).catch(async () => {
          await afresh();
          return ask(questions);
        }),
      );
      if ('threw' in got) throw got.threw;
      return got;
    },
  });
}

/** What the solver threw: a fault of its own, not of the network. */
interface Threw {
  readonly threw: Error;
}

/** A solver's worker that runs. */
export interface Running {
  readonly answer: (questions: readonly Question[]) => Promise<WorkersReply | Threw>;
  /** Rejects when the worker cannot be loaded or ends. */
  readonly gone: Promise<never>;
  readonly end: () => void;
}

export interface SolverOptions {
  readonly start: () => Running;
  /** What is done before a worker that could not answer is started once more. */
  readonly afresh: () => Promise<void>;
}

const usual: SolverOptions = { start: started, afresh: () => fetchAnew(workerAddress) };

function started(): Running {
  const worker = startWorker(workerAddress);
  const remote: Remote<WorkersSolver> = wrap<WorkersSolver>(worker);
  let end: (why: string) => void = () => undefined;
  const gone = new Promise<never>((_, reject) => {
    end = (why) => reject(new Error(`The solver's worker is gone: ${why}`));
  });
  gone.catch(() => undefined); // nobody may be waiting
  worker.addEventListener('error', ({ message }) => end(message));
  return {
    answer: (questions) => remote.answer(questions).catch((error: unknown) => ({ threw: error as Error })),
    gone,
    end: () => {
      worker.terminate();
      // Others may wait for it still.
      end('it was ended');
    },
  };
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
