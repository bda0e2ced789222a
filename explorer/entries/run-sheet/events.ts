// What the run sheet says to its entry.

import type { SheetSet } from '../../state/scenario.js';

/** The reader changed the sheet. */
export class SheetChangedEvent extends CustomEvent<{
  readonly sheet: SheetSet;
  readonly says: string;
  readonly together: string | undefined;
}> {
  constructor(sheet: SheetSet, says: string, together?: string) {
    super('kp-sheet', { detail: { sheet, says, together }, bubbles: true });
  }
}

declare global {
  interface HTMLElementEventMap {
    'kp-sheet': SheetChangedEvent;
  }
}
