// What earlier versions kept in the browser's simple storage (localStorage), one text a notebook: taken over into the
// records when keeping starts. A text is removed there only once it is in the records. The browser may forget that it
// was removed when it is killed; so what was taken is remembered, and the same text is not taken twice.

import { putAside } from './aside.js';
import { fieldsOf, headOf, allHeads } from './head.js';
import { newId } from './new-id.js';
import { storeNames, type Changing, type Records } from './records.js';
import { latestMark, putWhole } from './write-notebook.js';
import { keptPrefix as kept, latestKey } from './keys.js';

/** The part of the browser's simple storage that is used. */
export type OldStorage = Pick<Storage, 'getItem' | 'removeItem' | 'key' | 'length'>;

const deleted = 'kettle-and-plate.deleted.';
const aside = 'kettle-and-plate.aside.';

/** Takes over what is there; what cannot be read of it stays where it is. `mine` is left by this very page, which still has it. */
export async function takeOver(records: Records, storage: OldStorage | undefined, mine = ''): Promise<void> {
  const texts = textsIn(storage).filter(([key]) => key !== mine);
  if (storage === undefined || texts.length === 0) return;
  const latest = textIn(storage, latestKey);
  await records.change(storeNames, async (all) => {
    for (const [key, text] of texts) {
      const taken = `taken ${key}`;
      if ((await all.get('marks', taken)) === printOf(text)) continue;
      all.put('marks', taken, printOf(text));
      await take(all, key, text);
      // What was left before keeping had loaded was open last.
      if (key === `${kept}${latest ?? ''}`) all.put('marks', latestMark, latest);
    }
    if (latest !== null && (await all.get('marks', latestMark)) === undefined) all.put('marks', latestMark, latest);
  });
  // In memory it is there for this window only.
  if (records.lasting) for (const [key] of texts) storage.removeItem(key);
}

async function take(all: Changing, key: string, text: string): Promise<void> {
  if (key.startsWith(aside)) return takeAside(all, text);
  const isDeleted = key.startsWith(deleted);
  const id = key.slice(isDeleted ? deleted.length : kept.length);
  const { name, written } = fieldsOf(parsed(text));
  const ours = {
    id: (await headOf(all, id)) === undefined ? id : newId(),
    writer: '',
    name: typeof name === 'string' ? name : '',
    written: typeof written === 'string' ? written : '',
  };
  await putWhole(all, ours, { count: 1, text, good: false });
  if (!isDeleted) return;
  const last = Math.max(0, ...(await allHeads(all)).map((head) => head.deleted ?? 0));
  all.put('heads', ours.id, { ...(await headOf(all, ours.id))!, deleted: last + 1 });
}

async function takeAside(all: Changing, text: string): Promise<void> {
  const { name, at, why, bytes } = fieldsOf(parsed(text));
  const file = {
    kind: 'file',
    name: typeof name === 'string' ? name : 'without a name',
    at: typeof at === 'string' ? at : '',
    why: typeof why === 'string' ? why : 'What was said of it is damaged.',
  } as const;
  // What cannot be taken apart is kept as it stands there.
  await putAside(
    all,
    file,
    (typeof bytes === 'string' ? fromBase64(bytes) : undefined) ?? new TextEncoder().encode(text),
  );
}

/** Everything of ours with its key, deleted notebooks by the time they were written, which is all that is known. */
function textsIn(storage: OldStorage | undefined): (readonly [key: string, text: string])[] {
  const texts: (readonly [string, string])[] = [];
  try {
    for (let i = 0; i < (storage?.length ?? 0); i++) {
      const key = storage?.key(i) ?? '';
      const text = [kept, deleted, aside].some((prefix) => key.startsWith(prefix)) ? storage?.getItem(key) : null;
      if (typeof text === 'string') texts.push([key, text]);
    }
  } catch {
    return texts;
  }
  const time = (text: string): string => {
    const { written } = fieldsOf(parsed(text));
    return typeof written === 'string' ? written : '';
  };
  return texts.sort(([, one], [, other]) => (time(one) < time(other) ? -1 : 1));
}

function textIn(storage: OldStorage, key: string): string | null {
  try {
    return storage.getItem(key);
  } catch {
    return null;
  }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function fromBase64(text: string): Uint8Array<ArrayBuffer> | undefined {
  try {
    return Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
  } catch {
    return undefined;
  }
}

/** Tells one text from another: its length and two sums over its letters. */
function printOf(text: string): string {
  let [one, other] = [0x811c9dc5, 0x1234567];
  for (let i = 0; i < text.length; i++) {
    const letter = text.charCodeAt(i);
    one = Math.imul(one ^ letter, 0x01000193);
    other = Math.imul(other + letter, 0x5bd1e995) ^ (other >>> 13);
  }
  return `${String(text.length)} ${(one >>> 0).toString(36)} ${(other >>> 0).toString(36)}`;
}
