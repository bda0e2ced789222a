// Data: rows of the reader's own, pasted or opened as CSV, drawn with the page's curves; what they come to can be used in
// formulas. The text is kept as it came, every letter of it.

import { html, nothing } from 'lit';
import type { Json } from '../../state/notebook-record.js';
import { asking, type CeilingAsks } from '../../pages/the-ceiling/asks.js';
import type { Asks } from '../../worker/questions.js';
import { anyKind, good, wrong, type Answered, type Checked, type Here } from '../entry.js';
import { letters, tooLong } from '../../state/limits.js';
import { offered } from './offered.js';
import { readRows, type OwnRows, type RowFault } from './read-rows.js';

export interface OwnData {
  /** As pasted or opened. */
  readonly text: string;
  /** Number of the column the others are drawn along, from 0. */
  readonly along: number;
}

/** The run of the page, for curves to lay beside the rows; nothing is asked while there are none. */
const asksRun = asking('run');
const noAsks: Asks = {};

type Asked = CeilingAsks<'run'>;

export const dataKind = anyKind<OwnData, Asks>({
  name: 'data',
  title: 'Data',
  about: 'rows of your own, pasted or opened as CSV, drawn with the curves of the page',
  start: { text: '', along: 0 },
  check,
  label: ({ text }) => (text.trim() === '' ? 'data, no rows yet' : `data, ${String(rowsOf(text).rows)} rows`),
  // Not with the first letter: a page that waits shows the text as it was before.
  prepare: () => (figure.rows !== undefined ? undefined : loadFigure()),
  asks: ({ text }, scenario) => (text.trim() === '' ? noAsks : asksRun(scenario)),
  view,
  provides: ({ data }) => offered(rowsOf(data.text).columns),
  edit: async () => await import('./edit.js'),
  words: ({ data }) => data.text.trim(),
});

const figure: { rows?: typeof import('./figure.js').figureOf } = {};

/** Plot is loaded with the first data entry. */
async function loadFigure(): Promise<void> {
  figure.rows = (await import('./figure.js')).figureOf;
}

/** The last texts that were read, so that a page that is drawn again reads nothing again. */
const read = new Map<string, OwnRows>();

export function rowsOf(text: string): OwnRows {
  const known = read.get(text);
  if (known !== undefined) return known;
  const rows = readRows(text);
  if (read.size >= 8) read.delete(read.keys().next().value!);
  read.set(text, rows);
  return rows;
}

function check(data: Json): Checked<OwnData> {
  const { text, along = 0 } = (data ?? {}) as { text?: Json; along?: Json };
  if (typeof text !== 'string') return wrong('a data entry needs `text`, a string: the rows as CSV');
  const long = tooLong(text, letters.any);
  if (long !== undefined) return wrong(`the \`text\` of a data entry is too long: ${long}`);
  return typeof along === 'number' && Number.isInteger(along) && along >= 0
    ? good({ text, along })
    : wrong('`along` of a data entry is the number of a column, from 0');
}

function view(here: Here<OwnData>): unknown {
  const rows = rowsOf(here.data.text);
  if (rows.columns.length === 0) {
    return html`<p class="nothing-yet">
      No rows yet. Paste them or open a file: a header with units, then a line a row.
    </p>`;
  }
  const drawn = figure.rows?.(here, rows, here.now as Answered<Asked> | undefined) ?? nothing;
  return html`${drawn} ${faultsView(rows.faults)}`;
}

const mostShown = 12;

function faultsView(faults: readonly RowFault[]): unknown {
  if (faults.length === 0) return nothing;
  const more = faults.length - mostShown;
  return html`<div class="data-faults" role="status">
    <p class="correction">
      ${faults.length === 1 ? 'One thing' : `${String(faults.length)} things`} could not be read and
      ${faults.length === 1 ? 'is' : 'are'} left out of the figure; your text is kept as it is.
    </p>
    <ul>
      ${faults
        .slice(0, mostShown)
        .map(
          ({ line, column, value, right }) =>
            html`<li>
              Line ${String(line)}${column === '' ? '' : `, ${column}`}: <b class="red">${value}</b>; right would be
              ${right}.
            </li>`,
        )}
      ${more > 0 ? html`<li>… and ${String(more)} more.</li>` : nothing}
    </ul>
  </div>`;
}
