// Where the hand is, as soon as it is known: browsers hold 'pointermove' back until their next picture, some tell
// 'pointerrawupdate' at once, and an answer can then be in that picture. A hand that moves on and on is followed picture
// by picture: more would be worked out than is seen.

/** A move that comes later than this after the last one followed is the first after a rest. */
const rest_ms = 24;

/** Calls `follow` with the moves of a pointer that goes down on an element, until `signal` ends it. */
export function onMoves(element: Element, signal: AbortSignal, follow: (move: PointerEvent) => void): void {
  let last = -Infinity;
  const listener = (event: Event): void => {
    if (event.type === 'pointerrawupdate' && event.timeStamp - last < rest_ms) return;
    last = event.timeStamp;
    follow(event as PointerEvent);
  };
  element.addEventListener('pointerrawupdate', listener, { signal });
  element.addEventListener('pointermove', listener, { signal });
}
