// The words of the notebook, each with one line. A new word is one line in one of the lists.

import { notebook } from './notebook.js';
import { physics } from './physics.js';
import { run } from './run.js';
import { still } from './still.js';
import { strength } from './strength.js';
import type { Term } from './term.js';

/** A part of the glossary. */
export interface GlossaryPart {
  readonly title: string;
  readonly terms: readonly Term[];
}

export const glossary: readonly GlossaryPart[] = [
  { title: 'The still', terms: still },
  { title: 'The run', terms: run },
  { title: 'Strength', terms: strength },
  { title: 'Boiling', terms: physics },
  { title: 'This notebook', terms: notebook },
];

const byName = new Map(
  glossary.flatMap(({ terms }) =>
    terms.flatMap((term) => [term.name, ...(term.also ?? [])].map((name) => [name.toLowerCase(), term] as const)),
  ),
);

/** The term a word of a text means; undefined where the glossary has none. */
export function termOf(word: string): Term | undefined {
  return byName.get(word.toLowerCase());
}
