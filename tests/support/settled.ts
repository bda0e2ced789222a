// For tests: lets what has begun run to its end.

import { vi } from 'vitest';

/** One turn of the event loop: promises that are settled have run on. */
export function turn(): Promise<void> {
  return new Promise((done) => setTimeout(done));
}

/** Some time on the test's own clock: for stand-ins that take time, where `vi.useFakeTimers` has stopped the real one. */
export function onFakeClock(ms: number): Promise<void> {
  if (!vi.isFakeTimers()) throw new Error('onFakeClock is for tests that have called vi.useFakeTimers.');
  return new Promise((done) => setTimeout(done, ms));
}

interface Updating extends Element {
  readonly isUpdatePending: boolean;
  readonly updateComplete: Promise<boolean>;
}

/** All elements of the page have drawn what they were told, and what was to happen then has happened. What is loaded or
 * computed meanwhile is not waited for: that is for `until`. */
export async function settled(): Promise<void> {
  for (;;) {
    await turn();
    const updating = [...document.querySelectorAll('*')].filter(
      (one): one is Updating => 'isUpdatePending' in one && one.isUpdatePending === true,
    );
    if (updating.length === 0) return;
    await Promise.all(updating.map((one) => one.updateComplete));
  }
}
