// What entries ask once the page stands and the numbers rest, each answer shown as it comes. It can be stopped and gone
// on with; new numbers begin anew, and what was asked for the old ones is dropped.

import type { Answered, Later } from '../entries/entry.js';
import type { Answer, Asks, Reply } from '../worker/questions.js';
import type { Solver } from '../worker/solver-client.js';
import { answersOf, type Want, type Wanted } from './page-asking.js';

/** Quiet after the last change before it is begun, ms. */
const quiet_ms = 250;

interface Task {
  readonly key: string;
  readonly asks: Asks;
  data: Want['data'];
  scenario: Want['scenario'];
  common: Want['common'];
  readonly replies: Map<string, Reply>;
  /** Of those, the answers by name; a new record with every one. */
  answers: Readonly<Record<string, Answer>>;
  stopped: boolean;
  /** All answers, once they have come; until then those of the numbers before. */
  whole: Answered | undefined;
  /** What the entry had before; shown until the first new answer comes. */
  before: Task | undefined;
}

export class LaterAsking {
  readonly #solver: () => Solver;
  readonly #changed: () => void;
  #tasks = new Map<string, Task>();
  #timer: ReturnType<typeof setTimeout> | undefined;
  #round = new AbortController();

  constructor(solver: () => Solver, changed: () => void) {
    this.#solver = solver;
    this.#changed = changed;
  }

  /** What is wanted now, by entry, in the order of the page. */
  want(wanted: Wanted): void {
    const known = this.#tasks;
    this.#tasks = new Map([...wanted].map(([id, want]) => [id, next(want, known.get(id))]));
    const fresh = [...this.#tasks].filter(([id, task]) => known.get(id) !== task).map(([, task]) => task);
    if (fresh.length > 0 || known.size > this.#tasks.size)
      this.#begin(fresh.some(({ before }) => before !== undefined) ? quiet_ms : 0);
  }

  /** How far an entry's questions have come. */
  of(id: string): Later | undefined {
    const own = this.#tasks.get(id);
    if (own === undefined) return undefined;
    const task = own.replies.size === 0 && !own.stopped ? (own.before ?? own) : own;
    const { scenario, answers, replies } = task;
    const [done, of] = [replies.size, Object.keys(task.asks).length];
    const set = (stopped: boolean): void => {
      own.stopped = stopped;
      this.#begin(0);
      this.#changed();
    };
    return {
      scenario,
      answers,
      whole: own.whole,
      done,
      of,
      refused: done - Object.keys(answers).length,
      state: done >= of ? 'finished' : task.stopped ? 'stopped' : done > 0 ? 'running' : 'waiting',
      stop: () => set(true),
      goOn: () => set(false),
    };
  }

  /** Leaves off; `want` with something new begins again. */
  rest(): void {
    clearTimeout(this.#timer);
    this.#round.abort();
  }

  /** Goes on where it was left. */
  wake(): void {
    if (this.#tasks.size > 0) this.#begin(quiet_ms);
  }

  #begin(wait_ms: number): void {
    this.rest();
    this.#round = new AbortController();
    const { signal } = this.#round;
    this.#timer = setTimeout(() => this.#tasks.forEach((task) => this.#work(task, signal)), wait_ms);
  }

  #work(task: Task, signal: AbortSignal): void {
    if (task.stopped) return;
    for (const [name, question] of Object.entries(task.asks)) {
      if (task.replies.has(name)) continue;
      this.#solver()
        .answer(question, { urgency: 'later', signal })
        .catch((): Reply => ({ kind: 'refused', faults: [] }))
        .then((reply) => {
          if (signal.aborted) return;
          this.#take(task, name, reply);
          this.#changed();
        }, console.error);
    }
  }

  #take(task: Task, name: string, reply: Reply): void {
    task.replies.set(name, reply);
    task.before = undefined;
    if (reply.kind === 'answered') task.answers = { ...task.answers, [name]: reply.answer };
    if (task.replies.size < Object.keys(task.asks).length) return;
    const found = answersOf(task.asks, (_question, one) => task.replies.get(one)!);
    const { scenario, common } = task;
    if ('answers' in found) task.whole = { scenario, common, ...found };
  }
}

/** The task of an entry: the one it has where it asks the same. */
function next(want: Want, has: Task | undefined): Task {
  const key = JSON.stringify(want.asks);
  if (has?.key === key) {
    const { data, scenario, common } = want;
    const changed = has.scenario !== scenario || has.common !== common;
    Object.assign(has, { data, scenario, common });
    if (changed && has.whole !== undefined && has.replies.size === Object.keys(has.asks).length)
      has.whole = { scenario, common, answers: has.whole.answers };
    return has;
  }
  const same = has?.data === want.data ? has : undefined;
  const before = same !== undefined && same.replies.size === 0 ? (same.before ?? same) : same;
  const { asks, scenario, common } = want;
  const whole = Object.keys(asks).length === 0 ? { scenario, common, answers: {} } : same?.whole;
  return { ...want, key, replies: new Map(), answers: {}, stopped: false, whole, before };
}
