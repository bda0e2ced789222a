// Which notebook is to be opened: this window's own where it is loaded anew, else the one that was open last in any
// window. A mark in the browser's simple storage only says that there is one, to those who cannot wait for the records.

import { addressKey, latestKey, windowKey } from './keys.js';
import type { Records } from './records.js';
import { latestMark } from './write-notebook.js';

/** The id, or null; an address that sets numbers opens no other window's notebook. */
export async function latestNotebook(records: Records, address: string): Promise<string | null> {
  const mine = inStorage(() => sessionStorage.getItem(windowKey));
  if (mine !== null || address.includes('?')) return mine;
  try {
    const mark = await records.look(['marks'], (all) => all.get('marks', latestMark));
    return typeof mark === 'string' ? mark : null;
  } catch {
    return null;
  }
}

/** Whether an address asks for numbers: one that this window wrote itself does not, it is only behind. */
export function asksForNumbers(address: string): boolean {
  return address.includes('?') && inStorage(() => sessionStorage.getItem(addressKey)) !== address;
}

/** Remembers what is open in this window. */
export async function rememberLatest(records: Records, id: string): Promise<void> {
  rememberAtOnce(id);
  try {
    await records.change(['marks'], (all) => {
      all.put('marks', latestMark, id);
    });
  } catch {
    // then it is found on the shelf
  }
}

/** The same for a window that is being left, within this call. */
export function rememberAtOnce(id: string): void {
  inStorage(() => sessionStorage.setItem(windowKey, id));
  inStorage(() => localStorage.setItem(latestKey, id));
}

/** Either storage may be forbidden, which is no harm here. */
function inStorage<T>(use: () => T): T | null {
  try {
    return use();
  } catch {
    return null;
  }
}
