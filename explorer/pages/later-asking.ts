// What entries ask once the page stands and the numbers rest: one question at a time, entry by entry, each shown as
// it comes. It can be stopped and gone on with; new numbers begin anew.

import type { Asks } from '../entries/asking.js';
import type { Later } from '../entries/entry.js';
import type { Scenario } from '../state/scenario.js';
import type { Answer } from '../worker/questions.js';
import type { Solver } from '../worker/solver-client.js';

/** Quiet after the last change before it is begun, ms. */
const quiet_ms = 250;

interface Task {
  readonly asks: Asks;
  readonly scenario: Scenario;
  answers: Readonly<Record<string, Answer>>;
  stopped: boolean;
  /** Questions that cannot be answered; passed over. */
  readonly refused: Set<string>;
}

export class LaterAsking {
  readonly #solver: () => Solver;
  readonly #changed: () => void;
  #tasks = new Map<string, Task>();
  /** What an entry had before new numbers; shown until the first new answer comes. */
  readonly #before = new Map<string, Later>();
  #timer: ReturnType<typeof setTimeout> | undefined;
  /** Only the round with this number goes on. */
  #round = 0;

  constructor(solver: () => Solver, changed: () => void) {
    this.#solver = solver;
    this.#changed = changed;
  }

  /** What is wanted now, by entry, in the order of the page. */
  want(wanted: ReadonlyMap<string, Asks>, scenario: Scenario): void {
    const same =
      wanted.size === this.#tasks.size && [...wanted].every(([id, asks]) => this.#tasks.get(id)?.asks === asks);
    if (same) return;
    const before = this.#tasks;
    this.#tasks = new Map(
      [...wanted].map(([id, asks]) => {
        const task = before.get(id);
        if (task?.asks === asks) return [id, task];
        const had = this.of(id);
        if (had !== undefined && had.done > 0) this.#before.set(id, had);
        return [id, { asks, scenario, answers: {}, stopped: false, refused: new Set() }];
      }),
    );
    this.#begin(quiet_ms);
  }

  /** How far an entry's questions have come. */
  of(id: string): Later | undefined {
    const task = this.#tasks.get(id);
    if (task === undefined) return undefined;
    const done = Object.keys(task.answers).length + task.refused.size;
    const before = this.#before.get(id);
    if (done === 0 && before !== undefined && !task.stopped) return before;
    const of = Object.keys(task.asks).length;
    const state = done >= of ? 'finished' : task.stopped ? 'stopped' : done > 0 ? 'running' : 'waiting';
    const { scenario, answers } = task;
    const set = (stopped: boolean): void => {
      task.stopped = stopped;
      if (!stopped) this.#begin(0);
      this.#changed();
    };
    return { scenario, answers, done, of, state, stop: () => set(true), goOn: () => set(false) };
  }

  /** Leaves off; `want` with something new begins again. */
  rest(): void {
    clearTimeout(this.#timer);
    this.#round += 1;
  }

  /** Goes on where it was left. */
  wake(): void {
    if (this.#tasks.size > 0) this.#begin(quiet_ms);
  }

  #begin(wait_ms: number): void {
    clearTimeout(this.#timer);
    this.#round += 1;
    const round = this.#round;
    this.#timer = setTimeout(() => void this.#work(round), wait_ms);
  }

  async #work(round: number): Promise<void> {
    for (const [id, task] of this.#tasks) {
      for (const [name, question] of Object.entries(task.asks)) {
        if (task.stopped) break;
        if (name in task.answers || task.refused.has(name)) continue;
        const reply = await this.#solver()
          .answer([question])
          .catch(() => ({ kind: 'refused' as const }));
        if (round !== this.#round) return;
        if (reply.kind === 'answered') task.answers = { ...task.answers, [name]: reply.answers[0]! };
        else task.refused.add(name);
        this.#before.delete(id);
        this.#changed();
      }
    }
  }
}
