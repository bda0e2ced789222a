// What a figure tells its page: the cursor moved, and the two words about pencil lines were pressed.

/** The reader moved the cursor; x in SI of the figure's x quantity. */
export class CursorMovedEvent extends CustomEvent<{ readonly x: number }> {
  constructor(x: number) {
    super('cursor-moved', { detail: { x }, bubbles: true });
  }
}

/** 'Keep as a pencil line' or 'Rub out' was pressed; the page owns the lines. */
export class PencilEvent extends CustomEvent<{ readonly action: 'keep' | 'rubOut' }> {
  constructor(action: 'keep' | 'rubOut') {
    super('pencil', { detail: { action }, bubbles: true });
  }
}

declare global {
  interface HTMLElementEventMap {
    'cursor-moved': CursorMovedEvent;
    pencil: PencilEvent;
  }
}
