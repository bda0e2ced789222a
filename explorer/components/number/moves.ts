// Where the hand is, as soon as it is known: browsers hold 'pointermove' back until their next picture, some tell
// 'pointerrawupdate' at once. An answer can then be in the very next picture.

/** Calls `follow` with each move of a pointer that goes down on an element, until `signal` ends it. */
export function onMoves(element: Element, signal: AbortSignal, follow: (move: PointerEvent) => void): void {
  const listener = (event: Event): void => follow(event as PointerEvent);
  element.addEventListener('pointerrawupdate', listener, { signal });
  element.addEventListener('pointermove', listener, { signal });
}
