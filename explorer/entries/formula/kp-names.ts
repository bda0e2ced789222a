// <kp-names>: every name a formula may use, found by typing: numbers of the page with their values, other formulas,
// functions with an example each, units. Pressing a name sends it to the formula the list stands under.

import { html, LitElement, nothing, type PropertyDeclarations } from 'lit';
import type { ListedFunction } from '../../formula/functions/registry.js';
import { formulaUnits } from '../../formula/units.js';
import { unitSystems, type UnitSystemName } from '../../text/unit-systems.js';
import { joined } from '../../text/format.js';
import { decimalMark } from '../../text/locale.js';
import { numberText } from '../../text/number-text.js';
import type { NamedNumber } from './page-names.js';

/** A name was pressed. */
export class NameChosenEvent extends CustomEvent<{ readonly text: string }> {
  constructor(text: string) {
    super('kp-name-chosen', { detail: { text }, bubbles: true });
  }
}

/** Another formula with a name. */
export interface NamedLine {
  readonly name: string;
  readonly text: string;
  readonly value: string;
}

interface Row {
  /** What is put into the formula. */
  readonly puts: string;
  readonly says: string;
  readonly note: string;
}

export class NamesElement extends LitElement {
  static override properties: PropertyDeclarations = {
    numbers: { attribute: false },
    lines: { attribute: false },
    functions: { attribute: false },
    units: { attribute: false },
    wanted: { state: true },
  };
  declare numbers: readonly NamedNumber[];
  declare lines: readonly NamedLine[];
  declare functions: readonly ListedFunction[];
  declare units: UnitSystemName;
  declare private wanted: string;

  constructor() {
    super();
    this.numbers = [];
    this.lines = [];
    this.functions = [];
    this.wanted = '';
  }

  protected override createRenderRoot(): this {
    return this;
  }

  protected override render(): unknown {
    const groups = this.#groups()
      .map(({ title, rows }) => ({ title, rows: rows.filter((row) => this.#matches(row)) }))
      .filter(({ rows }) => rows.length > 0);
    const found = groups.reduce((sum, { rows }) => sum + rows.length, 0);
    return html`<div class="names">
      <label class="names-search"
        >Find a name
        <input type="search" autocomplete="off" spellcheck="false" .value=${this.wanted} @input=${this.#search} />
      </label>
      <p class="names-count" role="status">${found === 0 ? 'Nothing is called so here.' : countWords(found)}</p>
      <div class="names-found">
        ${groups.map(
          ({ title, rows }) =>
            html`<p class="names-title"><b>${title}</b></p>
              <ul>
                ${rows.map((row) => this.#row(row))}
              </ul>`,
        )}
      </div>
    </div>`;
  }

  #row({ puts, says, note }: Row): unknown {
    return html`<li>
      <button type="button" class="name-button" @click=${() => this.dispatchEvent(new NameChosenEvent(puts))}>
        ${puts}
      </button>
      <span class="name-says">${says}</span>
      ${note === '' ? nothing : html`<span class="name-note">${note}</span>`}
    </li>`;
  }

  #groups(): readonly { readonly title: string; readonly rows: readonly Row[] }[] {
    const system = unitSystems[this.units];
    return [
      { title: 'Numbers of the page', rows: this.numbers.map((number) => numberRow(number, system)) },
      {
        title: 'Other formulas',
        rows: this.lines.map(({ name, text, value }) => ({ puts: name, says: value, note: text })),
      },
      {
        title: 'Functions',
        rows: this.functions.map(({ signature, says, takes, example }) => ({
          puts: signature,
          says,
          note: `${example.formula} = ${example.gives.replace('.', decimalMark)}${takes === '' ? '' : `. ${takes}`}`,
        })),
      },
      {
        title: 'Constants and units',
        rows: [
          { puts: 'pi', says: '3.1416', note: '' },
          { puts: 'e', says: '2.7183, base of the natural logarithm', note: '' },
          ...formulaUnits.map(({ name, says }) => ({ puts: name, says, note: '' })),
        ],
      },
    ];
  }

  #matches({ puts, says, note }: Row): boolean {
    const text = `${puts} ${says} ${note}`.toLowerCase();
    return this.wanted
      .toLowerCase()
      .split(/\s+/u)
      .every((word) => text.includes(word));
  }

  readonly #search = (event: Event): void => {
    this.wanted = (event.target as HTMLInputElement).value;
  };
}

function numberRow({ name, label, kind, si }: NamedNumber, system: (typeof unitSystems)[UnitSystemName]): Row {
  const quantity = kind === 'length' ? system.across : kind in system ? system[kind as 'volume'] : undefined;
  const bare = kind === 'percent' ? joined(numberText(100 * si), '%') : numberText(si);
  return { puts: name, says: `${label}: ${quantity === undefined ? bare : quantity.withUnit(si)}`, note: '' };
}

function countWords(count: number): string {
  return count === 1 ? '1 name' : `${String(count)} names`;
}

customElements.define('kp-names', NamesElement);

declare global {
  interface HTMLElementTagNameMap {
    'kp-names': NamesElement;
  }
  interface HTMLElementEventMap {
    'kp-name-chosen': NameChosenEvent;
  }
}
