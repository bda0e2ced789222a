// What a working says to its entry.

import type { Workings } from '../../state/workings.js';

/** The reader changed a number, a clause or a row; `next` makes the change from the workings of that moment. */
export class WorkingsChangedEvent extends CustomEvent<{
  readonly next: (workings: Workings) => Workings;
  readonly says: string;
  readonly together: string | undefined;
}> {
  constructor(next: (workings: Workings) => Workings, says: string, together?: string) {
    super('kp-workings', { detail: { next, says, together }, bubbles: true });
  }
}

declare global {
  interface HTMLElementEventMap {
    'kp-workings': WorkingsChangedEvent;
  }
}
