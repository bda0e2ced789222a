// The sentences of a working with their numbers, its clauses, and the rows of its list. It sends changes and keeps nothing
// itself but what is being typed.

import { html, LitElement, nothing, type PropertyDeclarations } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import '../../components/number/kp-blank.js';
import '../../styles/working.css';
import type { NumberChange, NumberFaultReport } from '../../components/number/events.js';
import type { NumberFault, NumberSpec } from '../../components/number/number-spec.js';
import { specOf } from '../../state/number-specs.js';
import { workingNumbers, type WorkingNumberName } from '../../state/working-numbers.js';
import { mostRows, valuesOf, type WorkingRow, type Workings } from '../../state/workings.js';
import { correctionOf } from '../../text/messages.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import { choiceOf } from '../run-sheet/choice-of.js';
import { WorkingsChangedEvent } from './events.js';
import { clauseStands, rowsOf, type OfferedRow, type Working, type WorkingList, type WorkingPart } from './working.js';

type Clause = Extract<WorkingPart, { readonly clause: string }>;

export class WorkingElement extends LitElement {
  static override properties: PropertyDeclarations = {
    working: { attribute: false },
    workings: { attribute: false },
    units: { attribute: false },
    name: { attribute: false },
    offered: { attribute: false },
    fault: { state: true },
  };
  declare working: Working;
  declare workings: Workings;
  declare units: UnitSystem;
  /** Of the entry: no two lines of correction on a page have one id. */
  declare name: string;
  /** Rows that can be put in by a press. */
  declare offered: readonly OfferedRow[];
  declare private fault: { readonly key: string; readonly fault: NumberFault } | null;

  #specs = new Map<string, NumberSpec>();
  #specsOf: UnitSystem | undefined;

  constructor() {
    super();
    this.fault = null;
    this.offered = [];
    this.addEventListener('kp-number-focus', (event) => event.stopPropagation());
    this.addEventListener('kp-fault', (event) => this.#faulted(event));
    this.addEventListener('kp-change', (event) => this.#changed(event));
  }

  protected override createRenderRoot(): this {
    return this;
  }

  protected override render(): unknown {
    const { sentences, list } = this.working;
    return html`${sentences.map((parts) => html`<p class="working-sentence">${parts.map((part) => this.#part(part))}</p>`)}
    ${this.#leftOut()} ${list === undefined ? nothing : this.#list(list)} ${this.#correction()}`;
  }

  #part(part: WorkingPart): unknown {
    if (typeof part === 'string') return part;
    if ('blank' in part) return this.#blank(part.blank, part.blank, valuesOf(this.workings)[part.blank]);
    if (!this.#stands(part)) return part.instead ?? nothing;
    return html`${part.parts.map((one) => this.#part(one))}${this.#word(
      'Leave it out',
      () => this.#say(part, false, 'a reading left out'),
      part.put,
    )} `;
  }

  /** The clauses that do not stand, as words to press. */
  #leftOut(): unknown {
    const clauses = this.working.sentences
      .flat()
      .filter((part): part is Clause => typeof part === 'object' && 'clause' in part && !this.#stands(part));
    if (clauses.length === 0) return nothing;
    return html`<p class="words-to-press">
      ${clauses.map((clause) => this.#word(clause.put, () => this.#say(clause, true, 'a reading put in')))}
    </p>`;
  }

  #stands({ clause }: Clause): boolean {
    return clauseStands(this.working, this.workings, clause);
  }

  #say({ clause }: Clause, said: boolean, says: string): void {
    this.#send((before) => ({ ...before, said: { ...before.said, [clause]: said } }), says);
  }

  #list(list: WorkingList): unknown {
    const rows = rowsOf(this.working, this.workings);
    return html`<ol class="working-rows">
        ${rows.map(
          (row, index) =>
            html`<li>
              ${list.parts.map((part) => this.#rowPart(list, row, index, part))}
              ${rows.length > 1 ? this.#word('Take away', () => this.#rows(list, rows.toSpliced(index, 1), `a ${list.row} taken away`), `${list.row} ${String(index + 1)}`) : nothing}
            </li>`,
        )}
      </ol>
      ${
        rows.length < mostRows
          ? html`<p class="words-to-press">
                ${this.#word(`Add a ${list.row}`, () => this.#rows(list, [...rows, rows.at(-1) ?? list.start[0]!], `a ${list.row} added`))}
              </p>
              ${this.#offers(list, rows)}`
          : nothing
      }`;
  }

  #offers(list: WorkingList, rows: readonly WorkingRow[]): unknown {
    if (this.offered.length === 0) return nothing;
    return html`<p class="words-to-press">
      ${this.offered.map(({ words, row }) => this.#word(words, () => this.#rows(list, [...rows, row], `a ${list.row} put in`)))}
    </p>`;
  }

  #rowPart(list: WorkingList, row: WorkingRow, index: number, part: WorkingList['parts'][number]): unknown {
    if (typeof part === 'string') return part;
    if ('choice' in part) {
      const choices = list.choices!;
      const chosen = row.choice ?? choices[0]![0];
      const choose = (choice: string): void =>
        this.#row(list, index, (before) => ({ ...before, choice }), `${list.row} ${String(index + 1)} changed`);
      return choiceOf(`what ${list.row} ${String(index + 1)} is`, choices, chosen, choose);
    }
    const value = row.numbers[part.blank] ?? workingNumbers[part.blank].start;
    const label = `${list.row} ${String(index + 1)}: ${workingNumbers[part.blank].label}`;
    return keyed(
      `${list.name} ${String(index)}`,
      this.#blank(`${list.name} ${String(index)} ${part.blank}`, part.blank, value, label),
    );
  }

  #blank(key: string, name: WorkingNumberName, value: number, label?: string): unknown {
    return html`<kp-blank
      .spec=${this.#spec(key, name, label)}
      .value=${value}
      .correctionId=${`correction-${this.name}`}
    ></kp-blank>`;
  }

  #spec(key: string, name: WorkingNumberName, label: string = workingNumbers[name].label): NumberSpec {
    if (this.#specsOf !== this.units) this.#specs = new Map();
    this.#specsOf = this.units;
    const spec = this.#specs.get(key) ?? specOf({ ...workingNumbers[name], key, label }, this.units);
    this.#specs.set(key, spec);
    return spec;
  }

  #word(text: string, act: () => void, of?: string): unknown {
    return html`<button
      type="button"
      class="word-button"
      aria-label=${of === undefined ? nothing : `${text}: ${of}`}
      @click=${act}
    >
      ${text}
    </button>`;
  }

  #correction(): unknown {
    const { fault } = this;
    const id = `correction-${this.name}`;
    const blank =
      fault === null ? undefined : [...this.querySelectorAll('kp-blank')].find(({ spec }) => spec.key === fault.key);
    if (fault === null || blank === undefined) return html`<p class="correction" id=${id} role="status"></p>`;
    const { draft, says, putBack } = correctionOf(blank.spec, fault.fault, blank.value);
    return html`<p class="correction" id=${id} role="status">
      <b>${draft}</b> ${says}
      <button type="button" class="put-back" @click=${() => blank.putBack()}>${putBack}</button>
    </p>`;
  }

  #faulted(event: CustomEvent<NumberFaultReport>): void {
    event.stopPropagation();
    const { key, fault } = event.detail;
    if (fault !== null) this.fault = { key, fault };
    else if (this.fault?.key === key) this.fault = null;
  }

  #changed(event: CustomEvent<NumberChange>): void {
    event.stopPropagation();
    const { key, value } = event.detail;
    const [list, index, name] = key.split(' ');
    if (name === undefined) {
      this.#send((before) => ({ ...before, numbers: { ...before.numbers, [key]: value } }), 'a number changed', key);
      return;
    }
    const change = (row: WorkingRow): WorkingRow => ({ ...row, numbers: { ...row.numbers, [name]: value } });
    const own = this.working.list!;
    if (own.name === list) this.#row(own, Number(index), change, 'a number changed', key);
  }

  #row(
    list: WorkingList,
    index: number,
    change: (row: WorkingRow) => WorkingRow,
    says: string,
    together?: string,
  ): void {
    const { working } = this;
    this.#send(
      (before) => {
        const rows = rowsOf(working, before).map((row, at) => (at === index ? change(row) : row));
        return { ...before, rows: { ...before.rows, [list.name]: rows } };
      },
      says,
      together,
    );
  }

  #rows({ name }: WorkingList, rows: readonly WorkingRow[], says: string): void {
    this.#send((before) => ({ ...before, rows: { ...before.rows, [name]: rows } }), says);
  }

  #send(next: (workings: Workings) => Workings, says: string, together?: string): void {
    this.dispatchEvent(new WorkingsChangedEvent(next, says, together));
  }
}

customElements.define('kp-working', WorkingElement);

declare global {
  interface HTMLElementTagNameMap {
    'kp-working': WorkingElement;
  }
}
