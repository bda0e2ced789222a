// <kp-formula>: the line of a formula. On the reader's own page the text is typed where it stands; what it comes to
// follows it, a fault stands under it, and the list of names opens below. It keeps nothing but what is open.

import { html, LitElement, nothing, type PropertyDeclarations, type PropertyValues } from 'lit';
import { live } from 'lit/directives/live.js';
import { atMost } from '../../components/field/at-most.js';
import type { FormulaFault } from '../../formula/sheet.js';
import { whyNotLoaded } from '../../offline/wanted.js';
import { letters } from '../../state/limits.js';
import type { Here } from '../entry.js';
import { numbersAt, type FormulaBook, type Known } from './book.js';
import type { FormulaData } from './data.js';
import { faultWords } from './fault-words.js';
import { firstPlot } from './first-plot.js';
import './kp-names.js';
import { valueText } from './value-text.js';

let made = 0;

/** Whether a line has to be drawn again for what it is handed; what it acts with is always the newest. */
function looksOtherwise(here: Here<FormulaData>, before: Here<FormulaData> | undefined): boolean {
  return before?.data !== here.data || before.own !== here.own || before.units !== here.units;
}

export class FormulaElement extends LitElement {
  static override properties: PropertyDeclarations = {
    here: { attribute: false },
    book: { attribute: false },
    known: { attribute: false },
    failed: { attribute: false },
    namesShown: { state: true },
  };
  declare here: Here<FormulaData>;
  declare book: FormulaBook;
  declare known: Known;
  declare failed: boolean;
  declare private namesShown: boolean;

  readonly #correctionId = `kp-formula-${String(++made)}`;
  /** Where a name of the list goes: the field's caret when it was left. */
  #caret: number | null = null;

  constructor() {
    super();
    this.namesShown = false;
    this.addEventListener('kp-name-chosen', ({ detail }) => this.#insert(detail.text));
  }

  protected override createRenderRoot(): this {
    return this;
  }

  /** A page of hundreds of lines is drawn at each keystroke in one of them. */
  protected override shouldUpdate(changed: PropertyValues<this>): boolean {
    return (
      this.namesShown || changed.size !== 1 || !changed.has('here') || looksOtherwise(this.here, changed.get('here'))
    );
  }

  protected override render(): unknown {
    const { own, data } = this.here;
    const fault = this.#fault;
    return html`<div class="formula-line">
        ${own ? this.#field(fault) : html`<span class="formula-text">${marked(data.text, fault)}</span>`}${this.#result()}
      </div>
      <div class="formula-under">
        <p class="correction formula-correction" id=${this.#correctionId} role="status">${this.#correction(fault)}</p>
        ${own ? this.#words() : nothing}
      </div>
      ${own && this.namesShown ? this.#names() : nothing}`;
  }

  /** What is wrong with the text as it stands; null while it is empty or has not been read yet. */
  get #fault(): FormulaFault | null {
    const outcome = this.known.result?.outcome;
    if (outcome === undefined || 'value' in outcome || outcome.fault.kind === 'empty') return null;
    return outcome.fault;
  }

  #field(fault: FormulaFault | null): unknown {
    const { text } = this.here.data;
    return html`<label class="formula-field ${fault === null ? '' : 'invalid'}">
      <span class="formula-mirror" aria-hidden="true">${marked(text, fault)}&#8203;</span>
      <textarea
        rows="1"
        data-in-history
        data-writes
        aria-label="Formula"
        aria-describedby=${this.#correctionId}
        aria-invalid=${fault === null ? 'false' : 'true'}
        placeholder="pure = volume * strength"
        autocapitalize="off"
        autocomplete="off"
        autocorrect="off"
        spellcheck="false"
        ${atMost(letters.formula)}
        .value=${live(text)}
        @input=${this.#typed}
        @keydown=${this.#pressed}
        @blur=${this.#left}
      ></textarea>
    </label>`;
  }

  #result(): unknown {
    const { result, lastValue } = this.known;
    if (result === undefined || this.here.data.text.trim() === '') return nothing;
    const { outcome } = result;
    if ('fault' in outcome) {
      return lastValue === null ? nothing : html` <span class="formula-result pencil">${lastValue}, before</span>`;
    }
    const { value } = outcome;
    const sign = value.is === 'number' ? '=' : 'is';
    return html` <output class="formula-result"
      ><span class="formula-sign">${sign}</span> <span class="ink number">${valueText(value)}</span></output
    >`;
  }

  #correction(fault: FormulaFault | null): unknown {
    if (this.failed)
      return html`Formulas cannot be computed: their engine could not be loaded. ${whyNotLoaded()}
        <button type="button" class="put-back" @click=${() => this.book.again()}>Try again</button>`;
    if (fault === null) return nothing;
    const { at, instead } = fault;
    const put =
      at === null || instead === null || !this.here.own
        ? nothing
        : html` <button type="button" class="put-back" @click=${() => this.#replace(at.from, at.to, instead)}>
            Put ${instead}
          </button>`;
    return html`${faultWords(fault)}${put}`;
  }

  #words(): unknown {
    const { plot } = this.here.data;
    const against = this.#couldBeAgainst();
    return html`<div class="formula-words">
      <button type="button" class="word-button" aria-expanded=${this.namesShown} @click=${this.#showNames}>
        ${this.namesShown ? 'Put the names away' : 'Names and functions'}
      </button>
      ${
        plot === null && against.length === 0
          ? nothing
          : html`<button type="button" class="word-button" aria-pressed=${plot !== null} @click=${this.#plot}>
              ${plot === null ? 'Plot it' : 'Take the plot away'}
            </button>`
      }
    </div>`;
  }

  #names(): unknown {
    const { here, book } = this;
    return html`<kp-names
      .numbers=${numbersAt(here)}
      .lines=${book.namedLines(here.id)}
      .functions=${book.functions ?? []}
      .units=${here.units.name}
    ></kp-names>`;
  }

  #couldBeAgainst(): readonly string[] {
    const outcome = this.known.result?.outcome;
    if (outcome === undefined || 'fault' in outcome) return [];
    const { value } = outcome;
    if (value.is === 'function') return value.of.length === 1 ? value.of : [];
    return value.is === 'number' ? this.book.against(this.here.id) : [];
  }

  readonly #typed = (event: Event): void => {
    const field = event.target as HTMLTextAreaElement;
    this.#write(oneLine(field.value));
  };

  /** One line: the key that would begin another ends the typing. */
  readonly #pressed = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') event.preventDefault();
  };

  readonly #left = (event: Event): void => {
    this.#caret = (event.target as HTMLTextAreaElement).selectionStart;
  };

  readonly #showNames = (): void => {
    this.namesShown = !this.namesShown;
    if (this.namesShown)
      void this.updateComplete.then(() => this.querySelector<HTMLElement>('kp-names input')?.focus());
  };

  readonly #plot = (): void => {
    const { here } = this;
    const first = this.#couldBeAgainst()[0];
    here.change(
      (data) => ({
        ...data,
        plot: data.plot === null && first !== undefined ? firstPlot(first, numbersAt(here)) : null,
      }),
      { says: here.data.plot === null ? 'formula plotted' : 'plot taken away' },
    );
  };

  #insert(name: string): void {
    const at = this.#caret ?? this.here.data.text.length;
    this.#replace(at, at, name);
  }

  #replace(from: number, to: number, name: string): void {
    const { text } = this.here.data;
    const [before, after] = [text.slice(0, from), text.slice(to)];
    const space = /[\p{L}\d_)%]$/u.test(before) ? ' ' : '';
    this.#write(`${before}${space}${name}${after}`);
    const caret = from + space.length + name.length;
    this.#caret = caret;
    void this.updateComplete.then(() => {
      const field = this.querySelector('textarea');
      field?.focus();
      field?.setSelectionRange(caret, caret);
    });
  }

  #write(text: string): void {
    const { here } = this;
    here.change((data) => ({ ...data, text }), { says: 'formula written', together: `formula:${here.id}` });
    this.requestUpdate(); // so that a text that is not kept does not stay in the field
  }
}

/** A text of several lines, as when it is pasted, on one. */
function oneLine(text: string): string {
  if (!text.includes('\n')) return text;
  const lines = text.split('\n').map((line, at, all) => {
    const tail = at < all.length - 1 ? line.trimEnd() : line;
    return at > 0 ? tail.trimStart() : tail;
  });
  return lines.filter((line, at, all) => line !== '' || at === 0 || at === all.length - 1).join(' ');
}

/** The text with the part a fault speaks of marked. */
function marked(text: string, fault: FormulaFault | null): unknown {
  const at = fault?.at ?? null;
  if (at === null || at.from === at.to || at.to > text.length) return text;
  return html`${text.slice(0, at.from)}<mark>${text.slice(at.from, at.to)}</mark>${text.slice(at.to)}`;
}

customElements.define('kp-formula', FormulaElement);

declare global {
  interface HTMLElementTagNameMap {
    'kp-formula': FormulaElement;
  }
}
