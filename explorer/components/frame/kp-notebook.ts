// The frame of the notebook: name and contents list at the left of a wide page, at the foot of a narrow
// one with two words at the top that lead there, and the switch of units. The page itself is handed in.

import { html, LitElement, type PropertyDeclarations } from 'lit';

/** A page that exists, for the contents list. */
export interface ContentsEntry {
  readonly name: string;
  readonly title: string;
  /** Its address, settings included. */
  readonly address: string;
  /** The heading it stands under; 'Pages' where none is named. */
  readonly group?: string;
}

/** One way of showing quantities. */
export interface UnitsChoice {
  readonly name: string;
  readonly label: string;
}

/** The reader chose other units. */
export class UnitsChosenEvent extends CustomEvent<{ readonly name: string }> {
  constructor(name: string) {
    super('kp-units', { detail: { name }, bubbles: true });
  }
}

export class Notebook extends LitElement {
  static override properties: PropertyDeclarations = {
    entries: { attribute: false },
    current: { attribute: false },
    units: { attribute: false },
    unitsInUse: { attribute: false },
    page: { attribute: false },
    complaints: { attribute: false },
  };
  declare entries: readonly ContentsEntry[];
  /** Name of the page shown. */
  declare current: string;
  declare units: readonly UnitsChoice[];
  declare unitsInUse: string;
  /** The page: an element. */
  declare page: HTMLElement | null;
  /** What could not be read in the address. */
  declare complaints: readonly string[];

  constructor() {
    super();
    this.entries = [];
    this.current = '';
    this.units = [];
    this.unitsInUse = '';
    this.page = null;
    this.complaints = [];
  }

  protected override createRenderRoot(): this {
    return this;
  }

  protected override render(): unknown {
    return html`<header class="top-bar">
        <span class="book-name">Kettle &amp; Plate</span>
        <button type="button" class="plain-button" @click=${() => this.#goTo('contents-pages')}>Pages</button>
        <button type="button" class="plain-button" @click=${() => this.#goTo('contents-units')}>Units</button>
      </header>
      <main>
        ${this.complaints.map((complaint) => html`<p class="complaint" role="status">${complaint}</p>`)} ${this.page}
      </main>
      <nav class="contents" aria-label="Contents">
        <p class="book-name">Kettle &amp; Plate</p>
        <h2 id="contents-pages" tabindex="-1">Pages</h2>
        <ul>
          ${this.#inGroup(undefined).map((entry) => this.#pageLink(entry))}
        </ul>
        ${[...new Set(this.entries.flatMap(({ group }) => group ?? []))].map(
          (group) =>
            html`<h2>${group}</h2>
              <ul>
                ${this.#inGroup(group).map((entry) => this.#pageLink(entry))}
              </ul>`,
        )}
        <h2 id="contents-units" tabindex="-1">Units</h2>
        <ul>
          ${this.units.map((choice) => this.#unitsButton(choice))}
        </ul>
      </nav>`;
  }

  #inGroup(group: string | undefined): readonly ContentsEntry[] {
    return this.entries.filter((entry) => entry.group === group);
  }

  #pageLink({ name, title, address }: ContentsEntry): unknown {
    return name === this.current
      ? html`<li>
          <a href=${address} aria-current="page"><span>${title}</span></a>
        </li>`
      : html`<li><a href=${address}>${title}</a></li>`;
  }

  #unitsButton({ name, label }: UnitsChoice): unknown {
    const choose = (): boolean => this.dispatchEvent(new UnitsChosenEvent(name));
    return html`<li>
      <button type="button" class="plain-button" aria-pressed=${name === this.unitsInUse} @click=${choose}>
        <span>${label}</span>
      </button>
    </li>`;
  }

  #goTo(id: string): void {
    const heading = this.querySelector<HTMLElement>(`#${id}`);
    heading?.scrollIntoView();
    heading?.focus({ preventScroll: true });
  }
}

customElements.define('kp-notebook', Notebook);

declare global {
  interface HTMLElementTagNameMap {
    'kp-notebook': Notebook;
  }
  interface HTMLElementEventMap {
    'kp-units': UnitsChosenEvent;
  }
}
