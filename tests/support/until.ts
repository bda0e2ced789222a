// For tests in a page: waits for what the page does, looked at as often as it draws.

import { inject } from 'vitest';

/** Waits until `condition` holds, and returns what it then gives. */
export async function until<Found>(condition: () => Found): Promise<Exclude<Found, false | null | undefined>> {
  const patience_ms = inject('patience_ms');
  const asked = performance.now();
  for (;;) {
    const found = condition();
    if (found) return found as Exclude<Found, false | null | undefined>;
    if (performance.now() - asked > patience_ms)
      throw new Error(`Waited ${patience_ms / 1000} s, and still this does not hold: ${condition.toString()}`);
    await new Promise(requestAnimationFrame);
  }
}
