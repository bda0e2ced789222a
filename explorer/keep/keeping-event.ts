// A page that deals with kept notebooks asks the wiring for what keeps them; it may come later.

import type { Keeping } from './keeping.js';

export class KeepingWantedEvent extends CustomEvent<{ readonly take: (keeping: Keeping) => void }> {
  constructor(take: (keeping: Keeping) => void) {
    super('kp-keeping-wanted', { detail: { take }, bubbles: true });
  }
}

declare global {
  interface HTMLElementEventMap {
    'kp-keeping-wanted': KeepingWantedEvent;
  }
}
