// Formula: one line that computes, `pure = volume * strength`, with what it comes to after it. All formulas of a page
// share one book (book.ts), which asks the engine in its worker; mathjs is loaded there and nowhere else.

import { html } from 'lit';
import '../../styles/formula.css';
import { anyKind, type Here } from '../entry.js';
import { FormulaBook } from './book.js';
import { checkFormula, emptyFormula, type FormulaData } from './data.js';
import { faultWords } from './fault-words.js';
import './kp-formula.js';
import { valueText } from './value-text.js';

export const formula = anyKind<FormulaData, Record<string, never>>({
  name: 'formula',
  title: 'Formula',
  about: 'a line that computes with the numbers of the page, like pure = volume * strength',
  start: emptyFormula,
  check: checkFormula,
  label: ({ text }) => (text.trim() === '' ? 'empty formula' : `formula ‘${text.trim()}’`),
  prepare: ({ plot }) => (plot === null || plotView !== undefined ? undefined : loadPlot()),
  meanwhile: true,
  view: (here) => {
    const book = bookOf(here);
    return html`<kp-formula .here=${here} .book=${book} .known=${book.see(here)} .failed=${book.failed}></kp-formula>
      ${here.data.plot === null ? '' : (plotView?.(here, book) ?? '')}`;
  },
  words,
});

let plotView: ((here: Here<FormulaData>, book: FormulaBook) => unknown) | undefined;

/** Drawing is loaded when a formula is drawn. */
async function loadPlot(): Promise<void> {
  plotView = (await import('./plot.js')).plotView;
}

function bookOf(here: Here<FormulaData>): FormulaBook {
  return here.shared(() => new FormulaBook());
}

function words(here: Here<FormulaData>): string {
  const { text } = here.data;
  const outcome = bookOf(here).see(here).result?.outcome;
  if (outcome === undefined || text.trim() === '') return text;
  return 'fault' in outcome ? `${text} (${faultWords(outcome.fault)})` : `${text} = ${valueText(outcome.value)}`;
}
