// The setup sentence: words with the numbers of the page in them, and the ruler under it.

import { html, nothing } from 'lit';
import type { SentencePart } from '../../components/number/kp-setup.js';
import { numberWithUnit } from '../../components/number/number-spec.js';
import { letters, tooLong } from '../../state/limits.js';
import type { Json } from '../../state/notebook-record.js';
import { isPath, type Path } from '../../state/inputs.js';
import { numberAt } from '../../state/paths.js';
import { anyKind, good, shown, wrong, type Checked } from '../entry.js';
import { written } from './written.js';

export interface SetupData {
  /** Words, and numbers by their key. */
  readonly sentence: readonly SentencePart<Path>[];
  /** Whether the margin says what ink, print and pencil are. */
  readonly hands?: boolean;
}

/** The three hands, said once. */
const hands = html`<p>
  <b class="ink">Ink</b> is yours: what you set, and what follows from it. <b>Print</b> holds for every still.
  <b class="pencil">Pencil</b> is what you had before.
</p>`;

const sentence = [
  'A charge of ',
  { blank: 'charge.volume_m3' },
  ' at ',
  { blank: 'charge.strength' },
  ' in a kettle with ',
  { blank: 'still.column.count' },
  ', reflux ',
  { blank: 'sheet[2].reflux' },
  '.',
] as const;

export const setup = anyKind<SetupData, Record<string, never>>({
  name: 'setup',
  title: 'Setup sentence',
  about: 'the numbers of the page, in a sentence, to be set',
  start: { sentence },
  check,
  label: () => 'setup sentence',
  view: ({ id, data, entries, setup: drawn, blank }) => {
    if (data.sentence.length === 0) return html`<p class="nothing-yet">Nothing stands in this sentence yet.</p>`;
    // A page has one ruler, under its first sentence; the numbers of another are set there too.
    if (entries.find(({ kind }) => kind === 'setup')?.id === id) return drawn(data.sentence);
    return html`<p class="setup-sentence">
      ${data.sentence.map((part) => (typeof part === 'string' ? part : blank(part.blank)))}
    </p>`;
  },
  notes: ({ data }) => (data.hands === true ? hands : nothing),
  edit: async () => await import('./edit.js'),
  words: ({ data, specs, scenario }) => {
    const said = (path: Path): string => {
      const value = numberAt(scenario, path);
      return value === undefined ? '(not there)' : numberWithUnit(specs(path), value);
    };
    return data.sentence.map((part) => (typeof part === 'string' ? part : said(part.blank))).join('');
  },
});

function check(data: Json): Checked<SetupData> {
  const { sentence: parts, hands: says } = (data ?? {}) as { sentence?: Json; hands?: Json };
  if (!Array.isArray(parts)) return wrong('a setup sentence needs `sentence`, a list of words and numbers');
  const unknown = (parts as readonly Json[]).find((part) => typeof part !== 'string' && !isBlank(part));
  if (unknown !== undefined) return wrong(`${shown(unknown)} is neither words nor a number of the notebook`);
  const read = { sentence: parts as SetupData['sentence'] };
  const why = tooLong(written(read.sentence), letters.sentence);
  if (why !== undefined) return wrong(why);
  return good(says === true ? { ...read, hands: true } : read);
}

function isBlank(part: Json): boolean {
  const { blank } = (part ?? {}) as { blank?: Json };
  return isPath(blank);
}
