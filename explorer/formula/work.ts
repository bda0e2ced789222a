// What the worker does with what it is asked: one ask at a time, laid down every few milliseconds to listen. What the
// page no longer wants is not finished.

import { answerSteps } from './answer.js';
import type { ToPage, ToWorker } from './formula-client.js';
import type { Memory } from './memory.js';

/** Work between two looks at what has arrived, ms. */
const slice_ms = 8;
/** Longest without a sign that it goes on, ms. */
const silence_ms = 100;

export interface Around {
  readonly post: (message: ToPage) => void;
  readonly memory: Memory;
  readonly now: () => number;
  /** Calls back once whatever has arrived has been taken. */
  readonly rest: (go: () => void) => void;
}

export class Work {
  readonly #around: Around;
  /** Asks up to this one are not wanted any more. */
  #dropped = 0;

  constructor(around: Around) {
    this.#around = around;
  }

  take(message: ToWorker): void {
    if ('drop' in message) this.#dropped = Math.max(this.#dropped, message.drop);
    else this.#answer(message);
  }

  #answer({ turn, ask }: Extract<ToWorker, { readonly ask: unknown }>): void {
    const { post, memory, now, rest } = this.#around;
    let key = '';
    let told = now();
    const began = (next: string): void => {
      key = next;
      told = now();
      post({ is: 'began', turn, key });
    };
    const steps = answerSteps(ask, memory, began);
    const go = (): void => {
      if (turn <= this.#dropped) {
        post({ is: 'dropped', turn });
        return;
      }
      const until = now() + slice_ms;
      do {
        const step = steps.next();
        if (step.done === true) {
          post({ is: 'reply', turn, reply: step.value });
          return;
        }
      } while (now() < until);
      if (now() - told > silence_ms) began(key);
      rest(go);
    };
    go();
  }
}
