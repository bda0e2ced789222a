// The kinds of entry there are, in the order of the list of what can be added. A new kind is one folder and one
// line here; its code is loaded when a page first holds one.

import type { EntryKind } from './entry.js';

const load = {
  text: async () => (await import('./text/kind.js')).text,
  setup: async () => (await import('./setup/kind.js')).setup,
  figure: async () => (await import('./figure/kind.js')).figure,
  words: async () => (await import('./words/kind.js')).words,
  table: async () => (await import('./table/kind.js')).table,
  'ceiling-moves': async () => (await import('./ceiling-moves/kind.js')).ceilingMoves,
  guess: async () => (await import('./guess/kind.js')).guess,
  question: async () => (await import('./question/kind.js')).question,
  formula: async () => (await import('./formula/kind.js')).formula,
  data: async () => (await import('./data/kind.js')).dataKind,
  'own-words': async () => (await import('./own-words/kind.js')).ownWords,
  lesson: async () => (await import('./lesson/kind.js')).lesson,
  'run-sheet': async () => (await import('./run-sheet/kind.js')).runSheet,
  working: async () => (await import('./working/kind.js')).working,
  'still-picture': async () => (await import('./still-picture/kind.js')).stillPictureKind,
} as const satisfies Readonly<Record<string, () => Promise<EntryKind>>>;

export const kindNames: readonly string[] = Object.keys(load);

const loaded = new Map<string, EntryKind>();

/** The kind of this name where it has been loaded. */
export function kindAtHand(name: string): EntryKind | undefined {
  return loaded.get(name);
}

/** The kind of this name; undefined where this explorer has none. */
export async function kindNamed(name: string): Promise<EntryKind | undefined> {
  if (!Object.hasOwn(load, name)) return undefined;
  const kind: EntryKind = await load[name as keyof typeof load]();
  loaded.set(name, kind);
  return kind;
}
