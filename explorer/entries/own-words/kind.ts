// 'Say it in your own words' as a kind of entry: a question without a number, and how we would answer it.

import { html } from 'lit';
import { letters, tooLong } from '../../state/limits.js';
import type { Json } from '../../state/notebook-record.js';
import { anyKind, good, wrong, type Checked, type Here } from '../entry.js';
import { leaderLooksOn, paperWanted } from '../leader.js';
import './kp-own-words.js';

export interface OwnWordsData {
  readonly prompt: string;
  /** How we would say it; '' where there is nothing to compare with. */
  readonly ours: string;
}

export const ownWords = anyKind<OwnWordsData, Record<string, never>>({
  name: 'own-words',
  title: 'Own words',
  about: 'a question to answer in your own words',
  start: { prompt: 'Say it in your own words.', ours: '' },
  check,
  label: ({ prompt }) => `own words: ${prompt}`,
  view,
  notes: () => html`<p class="on-screen">What you write here stays in this notebook and is sent nowhere.</p>`,
  edit: () => import('./edit.js'),
  checkWork,
  words: (here) => [here.data.prompt, textIn(here)].filter((text) => text !== '').join('\n'),
});

function view(here: Here<OwnWordsData>): unknown {
  const { id, data, keep } = here;
  const said = ({ detail }: HTMLElementEventMap['kp-own-words']): void =>
    keep(() => ({ text: detail.text }), { says: 'words written', together: `own-words:${id}` });
  return html`<kp-own-words
    .prompt=${data.prompt}
    .ours=${data.ours}
    .text=${paperWanted() === null ? textIn(here) : ''}
    .leads=${leaderLooksOn()}
    @kp-own-words=${said}
  ></kp-own-words>`;
}

/** What was written before, read without trust. */
function textIn({ work }: Here<OwnWordsData>): string {
  const { text } = (work ?? {}) as { text?: Json };
  return typeof text === 'string' ? text : '';
}

function checkWork(work: Json): string | undefined {
  const { text } = (work ?? {}) as { text?: Json };
  return typeof text === 'string' ? tooLong(text, letters.ownWords) : 'words of one’s own need `text`, a string';
}

function check(data: Json): Checked<OwnWordsData> {
  const { prompt, ours } = (data ?? {}) as { prompt?: Json; ours?: Json };
  if (typeof prompt !== 'string' || typeof ours !== 'string') {
    return wrong('own words need `prompt` and `ours`, two strings');
  }
  const why = tooLong(prompt, letters.question) ?? tooLong(ours, letters.ownWords);
  return why === undefined ? good({ prompt, ours }) : wrong(why);
}
