// When keeping has to start: before the first page where something was kept or comes with the address, else once
// the first figure stands, since nothing of it is needed to read. Small: it is loaded with the explorer.

import { addressKey, latestKey } from './keys.js';

/** Rest after the first figure, and how long a page without one is waited for, ms. */
const rest_ms = 500;
const longest_ms = 5000;

export function mustStartFirst(address: string): boolean {
  try {
    return /[?&]own=/u.test(address) || localStorage.getItem(latestKey) !== null;
  } catch {
    return false;
  }
}

/** Notes an address that the explorer wrote: it is a little behind the notebook, which it must not overrule. */
export function rememberAddress(address: string): void {
  try {
    sessionStorage.setItem(addressKey, address);
  } catch {
    // then the numbers in it count as asked for
  }
}

/** Calls `run` once a figure stands in `frame` and has had time to be seen, or when none comes. */
export function afterFirstFigure(frame: Element, run: () => void): void {
  const start = (): void => {
    watch.disconnect();
    clearTimeout(longest);
    setTimeout(run, rest_ms);
  };
  const watch = new MutationObserver(() => frame.querySelector('main figure') !== null && start());
  const longest = setTimeout(start, longest_ms);
  watch.observe(frame, { childList: true, subtree: true });
}
