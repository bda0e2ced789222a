// The page's side of the solver: asks the workers only what is not known and not on its way yet, and gives the very
// same answer to the same question, so that figures of what did not change are not drawn again.

import { fetchAnew } from '../offline/load-part.js';
import { startWorker } from '../offline/start-worker.js';
import { AnswerMemory } from './memory.js';
import { Pool, type Ticket, type Urgency } from './pool.js';
import { keyOf, type Answer, type Question, type Reply } from './questions.js';
import type { FromSolver } from './solver.worker.js';
import workerAddress from './solver.worker.ts?worker&url';

/** How a question is asked. */
export interface How {
  readonly urgency?: Urgency;
  /** Aborted when the answer is not wanted any more; the promise is then rejected. */
  readonly signal?: AbortSignal;
  /** Told now and then how far a long run has come, s. */
  readonly reached?: (reached_s: number) => void;
}

/** Whatever answers questions: the workers, or a stand-in in a test. */
export interface Solver {
  readonly answer: (question: Question, how?: How) => Promise<Reply>;
}

/** What answers are remembered, bytes: some hundred runs as pages keep them. */
const most_bytes = 16e6;
const mostWorkers = 4;

/** The solver in its workers; they live as long as the page. */
export function startSolver(): Solver {
  const pool = new Pool({
    start: ({ said, gone }) => {
      const worker = startWorker(workerAddress);
      worker.addEventListener('message', ({ data }: MessageEvent<FromSolver>) => said(data));
      worker.addEventListener('error', ({ message }) => gone(message));
      return { post: (message) => worker.postMessage(message), end: () => worker.terminate() };
    },
    afresh: () => fetchAnew(workerAddress),
    most: Math.min(mostWorkers, navigator.hardwareConcurrency),
  });
  return rememberingSolver(pool, new AnswerMemory(most_bytes));
}

/** A question on its way, with those who wait for it. */
interface Flight {
  readonly ticket: Ticket;
  readonly waiting: Set<How>;
}

/** Asks each question once, as long as its answer is remembered; drops it when all who asked have gone. */
export function rememberingSolver(pool: Pick<Pool, 'ask'>, memory: AnswerMemory): Solver {
  const flights = new Map<string, Flight>();

  const begin = (key: string, question: Question, urgency: Urgency): Flight => {
    const waiting = new Set<How>();
    const ticket = pool.ask(question, urgency, (reached_s) => waiting.forEach(({ reached }) => reached?.(reached_s)));
    const flight = { ticket, waiting };
    const over = (): void => {
      if (flights.get(key) === flight) flights.delete(key);
    };
    ticket.reply.then((reply) => {
      if (reply.kind === 'answered') memory.put(key, reply.answer);
      over();
    }, over);
    flights.set(key, flight);
    return flight;
  };

  return {
    answer(question, how = {}) {
      const key = keyOf(question);
      const answer: Answer | undefined = memory.get(key);
      if (answer !== undefined) return Promise.resolve({ kind: 'answered', answer });
      const { urgency = 'now', signal } = how;
      const flight = flights.get(key) ?? begin(key, question, urgency);
      flight.ticket.keep(urgency);
      flight.waiting.add(how);
      return new Promise((resolve, reject) => {
        flight.ticket.reply.then(resolve, reject);
        signal?.addEventListener('abort', () => {
          reject(signal.reason as Error);
          flight.waiting.delete(how);
          if (flight.waiting.size === 0 && flight.ticket.drop()) flights.delete(key);
        });
      });
    },
  };
}
