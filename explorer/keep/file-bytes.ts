// The bytes of a file that was chosen, dropped or handed over by the system; or why it is not read at all.

import { limits } from './format.js';
import { tooLarge, unreadable, type Refused } from './reading.js';

/** Its size is looked at first: what is larger than any notebook is never read into the browser. */
export async function bytesOf(file: Pick<Blob, 'size' | 'arrayBuffer'>): Promise<Uint8Array<ArrayBuffer> | Refused> {
  if (file.size > limits.bytes) return tooLarge(file.size);
  try {
    return new Uint8Array(await file.arrayBuffer());
  } catch {
    return unreadable(); // a folder, or gone since it was chosen
  }
}
