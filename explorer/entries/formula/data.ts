// What a formula entry keeps: the text as typed, and what it is drawn against, if it is.

import { letters, tooLong } from '../../state/limits.js';
import type { Json } from '../../state/notebook-record.js';
import { good, wrong, type Checked } from '../entry.js';

export interface PlotData {
  readonly against: string;
  /** Ends of the range, as typed. */
  readonly from: string;
  readonly to: string;
}

export interface FormulaData {
  readonly text: string;
  readonly plot: PlotData | null;
}

export const emptyFormula: FormulaData = { text: '', plot: null };

/** Text of a file is never run: it is kept as it is, and what it says is read by the engine like typed text. */
export function checkFormula(data: Json): Checked<FormulaData> {
  const { text, plot = null } = (data ?? {}) as { text?: Json; plot?: Json };
  if (typeof text !== 'string') return wrong('a formula entry needs `text`, a string');
  const why = tooLong(text, letters.formula);
  if (why !== undefined) return wrong(why);
  if (plot === null) return good({ text, plot });
  const { against, from, to } = plot as { against?: Json; from?: Json; to?: Json };
  if (typeof against !== 'string' || typeof from !== 'string' || typeof to !== 'string') {
    return wrong('the `plot` of a formula entry needs `against`, `from` and `to`, all strings');
  }
  const long = [against, from, to].map((one) => tooLong(one, letters.rangeEnd)).find((one) => one !== undefined);
  return long === undefined ? good({ text, plot: { against, from, to } }) : wrong(long);
}

/** The formula entries among the entries of a page, those with damaged data left out. */
export function formulasIn(
  entries: readonly { readonly id: string; readonly kind: string; readonly data: Json }[],
): readonly { readonly id: string; readonly data: FormulaData }[] {
  return entries.flatMap(({ id, kind, data }) => {
    const checked = kind === 'formula' ? checkFormula(data) : undefined;
    return checked?.good === true ? [{ id, data: checked.data }] : [];
  });
}
