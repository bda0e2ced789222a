// Text: plain paragraphs with a little emphasis, the reader's own or a page's.

import { html } from 'lit';
import { paragraphs, plainProse } from '../../components/term/prose.js';
import { letters, tooLong } from '../../state/limits.js';
import type { Json } from '../../state/notebook-record.js';
import { anyKind, good, wrong, type Checked } from '../entry.js';

/** Paragraphs stand apart by an empty line; marks as in components/term/prose.ts. */
export interface TextData {
  readonly text: string;
}

export const text = anyKind<TextData, Record<string, never>>({
  name: 'text',
  title: 'Text',
  about: 'words of your own, with *stress* where it is needed',
  start: { text: '' },
  check,
  label: ({ text }) => (text === '' ? 'empty text' : `text ‘${firstWords(text)}’`),
  view: ({ data }) =>
    data.text.trim() === ''
      ? html`<p class="nothing-yet">Nothing is written here yet.</p>`
      : paragraphs(paragraphsOf(data.text)),
  edit: async () => await import('./edit.js'),
  words: ({ data }) => paragraphsOf(data.text).map(plainProse).join('\n\n'),
});

/** Paragraphs of a text. */
function paragraphsOf(text: string): readonly string[] {
  const paragraphs: string[][] = [[]];
  for (const line of text.split('\n')) {
    if (line.trim() === '') paragraphs.push([]);
    else paragraphs.at(-1)!.push(line);
  }
  return paragraphs.filter((lines) => lines.length > 0).map((lines) => lines.join('\n'));
}

function firstWords(text: string): string {
  const words = plainProse(text).split(/\s+/u);
  return words.length > 5 ? `${words.slice(0, 5).join(' ')} …` : words.join(' ');
}

function check(data: Json): Checked<TextData> {
  const { text: written } = (data ?? {}) as { text?: Json };
  if (typeof written !== 'string') return wrong('a text entry needs `text`, a string');
  const why = tooLong(written, letters.text);
  return why === undefined ? good({ text: written }) : wrong(why);
}
