// What the run sheet says to its entry.

import type { RunSheet } from '../../state/run-sheet.js';

/** The reader changed the sheet. */
export class SheetChangedEvent extends CustomEvent<{
  readonly sheet: RunSheet;
  readonly says: string;
  readonly together: string | undefined;
}> {
  constructor(sheet: RunSheet, says: string, together?: string) {
    super('kp-sheet', { detail: { sheet, says, together }, bubbles: true });
  }
}

declare global {
  interface HTMLElementEventMap {
    'kp-sheet': SheetChangedEvent;
  }
}
