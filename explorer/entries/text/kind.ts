// Text: plain paragraphs with a little emphasis, the reader's own or a page's.

import { html } from 'lit';
import { paragraphs } from '../../components/term/prose.js';
import type { Json } from '../../state/notebook-record.js';
import { plainText } from './plain-text.js';
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
  words: ({ data }) => paragraphsOf(data.text).map(plainText).join('\n\n'),
});

/** Paragraphs of a text. */
function paragraphsOf(text: string): readonly string[] {
  return text.split(/\n\s*\n/u).filter((paragraph) => paragraph.trim() !== '');
}

function firstWords(text: string): string {
  const words = plainText(text).split(/\s+/u);
  return words.length > 5 ? `${words.slice(0, 5).join(' ')} …` : words.join(' ');
}

function check(data: Json): Checked<TextData> {
  const { text: written } = (data ?? {}) as { text?: Json };
  return typeof written === 'string' ? good({ text: written }) : wrong('a text entry needs `text`, a string');
}
