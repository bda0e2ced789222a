// Drawing by keys: arrows move a hand along x and y, the space bar or Enter draws to where it stands,
// Backspace takes the last stroke back. Steps are whole steps of the quantities shown.

import { within, type GuessField, type Point } from './guess.js';

/** How a quantity steps: from SI to the unit shown and back, and the step in it. */
export interface Steps {
  readonly toShown: (si: number) => number;
  readonly fromShown: (shown: number) => number;
  readonly step: number;
}

/** What a key asks for. */
export type KeyAct =
  { readonly kind: 'move'; readonly to: Point } | { readonly kind: 'draw' } | { readonly kind: 'takeBack' };

/** Steps of a Page key. */
const page = 10;

/** What a key means to a hand that stands at `hand`; null for a key that means nothing here. */
export function guessKey(key: string, hand: Point, field: GuessField, x: Steps, y: Steps): KeyAct | null {
  const move = (across: number, up: number): KeyAct => {
    const to = { x: stepped(hand.x, across, x), y: stepped(hand.y, up, y) };
    return { kind: 'move', to: within(to, field) };
  };
  switch (key) {
    case 'ArrowLeft':
      return move(-1, 0);
    case 'ArrowRight':
      return move(1, 0);
    case 'ArrowDown':
      return move(0, -1);
    case 'ArrowUp':
      return move(0, 1);
    case 'PageDown':
      return move(0, -page);
    case 'PageUp':
      return move(0, page);
    case 'Home':
      return { kind: 'move', to: within({ ...hand, x: field.x[0] }, field) };
    case 'End':
      return { kind: 'move', to: within({ ...hand, x: field.x[1] }, field) };
    case ' ':
    case 'Enter':
      return { kind: 'draw' };
    case 'Backspace':
    case 'Delete':
      return { kind: 'takeBack' };
    default:
      return null;
  }
}

/** Moved by whole steps, onto their grid; where it stands if by none. */
function stepped(si: number, steps: number, { toShown, fromShown, step }: Steps): number {
  if (steps === 0) return si;
  const position = toShown(si) / step;
  const slack = 1e-6;
  const start = steps > 0 ? Math.floor(position + slack) : Math.ceil(position - slack);
  return fromShown((start + steps) * step);
}
