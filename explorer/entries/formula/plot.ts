// A formula drawn: the figure, and under it the sentence that says against what and from where to where.

import { html, nothing } from 'lit';
import { live } from 'lit/directives/live.js';
import { atMost } from '../../components/field/at-most.js';
import '../../components/figure/kp-figure.js';
import { formulaCurve } from '../../figures/plots/formula-curve.js';
import type { FormulaCurveRows } from '../../rows/formula.js';
import { letters } from '../../state/limits.js';
import type { Here } from '../entry.js';
import { numbersAt, type FormulaBook, type Known } from './book.js';
import type { FormulaData, PlotData } from './data.js';
import { faultWords } from './fault-words.js';
import { firstPlot } from './first-plot.js';

export function plotView(here: Here<FormulaData>, book: FormulaBook): unknown {
  const known = book.known(here.id);
  const { plot } = here.data;
  if (plot === null) return nothing;
  const outcome = known.curve?.outcome;
  const fault = outcome !== undefined && 'fault' in outcome ? outcome.fault : null;
  const missing = outcome !== undefined && 'missing' in outcome ? outcome.missing : null;
  return html`${figureOf(here, known, book.failed)}
    <p class="formula-range">${rangeSentence(here, book, plot)}</p>
    ${fault === null ? nothing : html`<p class="correction" role="status">${faultWords(fault)}</p>`}
    ${missing === null ? nothing : html`<p class="formula-missing">Where the curve has a gap: ${missing}.</p>`}`;
}

function figureOf(here: Here<FormulaData>, known: Known, failed: boolean): unknown {
  // On its way, or there is none, which is said below.
  if (known.lastCurve === null)
    return known.curve === undefined && !failed ? html`<div class="figure-to-come"></div>` : nothing;
  return html`<kp-figure
    data-figure=${here.mark('curve')}
    .figure=${formulaCurve}
    .rows=${here.rows('curve', () => rowsOf(here.data, known))}
  ></kp-figure>`;
}

const made = new WeakMap<object, FormulaCurveRows>();

/** The very same rows for the same curve, so that it is not drawn again. */
function rowsOf({ text }: FormulaData, { lastCurve, result }: Known): FormulaCurveRows {
  const { drawn, against } = lastCurve!;
  const known = made.get(drawn);
  if (known !== undefined) return known;
  const name = result?.name ?? text.trim();
  const rows = {
    x: { name: against, unit: drawn.x.unit, numbers: drawn.x.numbers },
    y: { name, unit: drawn.y.unit, numbers: drawn.y.numbers },
    now: drawn.now,
  };
  made.set(drawn, rows);
  return rows;
}

function rangeSentence(here: Here<FormulaData>, book: FormulaBook, plot: PlotData): unknown {
  if (!here.own) return `Drawn against ${plot.against}, from ${plot.from} to ${plot.to}.`;
  const choices = new Set([plot.against, ...againstOf(here, book)]);
  const change = (next: Partial<PlotData>, together?: string): void =>
    here.change((data) => ({ ...data, plot: data.plot === null ? null : { ...data.plot, ...next } }), {
      says: 'plot changed',
      ...(together === undefined ? {} : { together: `${together}:${here.id}` }),
    });
  const end = (which: 'from' | 'to'): unknown =>
    html`<input
      class="formula-end"
      type="text"
      data-in-history
      autocapitalize="off"
      autocomplete="off"
      spellcheck="false"
      aria-label=${which === 'from' ? 'range from' : 'range to'}
      ${atMost(letters.rangeEnd)}
      size=${Math.max(4, plot[which].length)}
      .value=${live(plot[which])}
      @input=${(event: Event) => change({ [which]: (event.target as HTMLInputElement).value }, which)}
    />`;
  return html`Drawn against
    <select
      aria-label="drawn against"
      .value=${live(plot.against)}
      @change=${(event: Event) => {
        const against = (event.target as HTMLSelectElement).value;
        change(firstPlot(against, numbersAt(here)));
      }}
    >
      ${[...choices].map((name) => html`<option value=${name} ?selected=${name === plot.against}>${name}</option>`)}
    </select>
    from ${end('from')} to ${end('to')}.`;
}

function againstOf(here: Here<FormulaData>, book: FormulaBook): readonly string[] {
  const outcome = book.known(here.id).result?.outcome;
  if (outcome !== undefined && 'value' in outcome && outcome.value.is === 'function') return outcome.value.of;
  return book.against(here.id);
}
