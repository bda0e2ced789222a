// The frame of the notebook: name and contents list at the left of a wide page, at the foot of a narrow
// one with two words at the top that lead there, and the switch of units. The page itself is handed in.

import { html, LitElement, nothing, type PropertyDeclarations } from 'lit';
import { whyNotLoaded } from '../../offline/wanted.js';
import { notLoaded } from './not-loaded.js';

/** Heading of the reader's own pages. */
const own = 'Your pages';

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

/** The reader undoes or redoes. */
export class StepEvent extends CustomEvent<{ readonly way: 'undo' | 'redo' }> {
  constructor(way: 'undo' | 'redo') {
    super('kp-step', { detail: { way }, bubbles: true });
  }
}

/** The reader begins a page of their own. */
export class BlankPageEvent extends CustomEvent<null> {
  constructor() {
    super('kp-blank-page', { detail: null, bubbles: true });
  }
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
    trouble: { attribute: false },
    complaints: { attribute: false },
    keeping: { attribute: false },
    opensOffline: { attribute: false },
    notebookName: { attribute: false },
    undo: { attribute: false },
    redo: { attribute: false },
    refused: { attribute: false },
    said: { state: true },
  };
  declare entries: readonly ContentsEntry[];
  /** Name of the page shown. */
  declare current: string;
  declare units: readonly UnitsChoice[];
  declare unitsInUse: string;
  /** The page: an element. */
  declare page: HTMLElement | null;
  /** Tries the page again that could not be loaded; null where none failed. */
  declare trouble: (() => void) | null;
  /** What could not be read in the address. */
  declare complaints: readonly string[];
  /** The words about keeping, once they are loaded. */
  declare keeping: HTMLElement | null;
  /** Whether the explorer opens without a network; undefined as long as that is not known. */
  declare opensOffline: boolean | undefined;
  /** Name of the open notebook; may be empty. */
  declare notebookName: string;
  /** What would be undone and redone, in words; null where there is nothing. */
  declare undo: string | null;
  declare redo: string | null;
  /** Why the latest act was not done; '' where it was. */
  declare refused: string;
  /** The latest thing done, for those who hear the page. */
  declare private said: string;

  constructor() {
    super();
    this.entries = [];
    this.current = '';
    this.units = [];
    this.unitsInUse = '';
    this.page = null;
    this.trouble = null;
    this.complaints = [];
    this.keeping = null;
    this.notebookName = '';
    this.undo = null;
    this.redo = null;
    this.refused = '';
    this.said = '';
  }

  /** Says to those who hear the page what was done. */
  say(words: string): void {
    this.said = this.said === words ? `${words}\u00a0` : words; // the same again is said again
  }

  protected override createRenderRoot(): this {
    return this;
  }

  protected override render(): unknown {
    return html`<header class="top-bar">
        <span class="book-name">Kettle &amp; Plate</span>
        ${this.#stepWords()}
        <button type="button" class="plain-button" @click=${() => this.#goTo('contents-pages')}>Pages</button>
        <button type="button" class="plain-button" @click=${() => this.#goTo('contents-units')}>Units</button>
      </header>
      <main>
        ${this.complaints.map((complaint) => html`<p class="complaint" role="status">${complaint}</p>`)}
        ${this.#troubleWords()} ${this.page}
      </main>
      <nav class="contents" aria-label="Contents">
        <p class="book-name">Kettle &amp; Plate</p>
        <p class="notebook-name">${this.notebookName}</p>
        <p class="step-words">${this.#stepWords()}</p>
        <h2 id="contents-pages" tabindex="-1">Pages</h2>
        <ul>
          ${this.#inGroup(undefined).map((entry) => this.#pageLink(entry))}
        </ul>
        ${[...new Set([...this.entries.flatMap(({ group }) => group ?? []), own])].map(
          (group) =>
            html`<h2>${group}</h2>
              <ul>
                ${this.#inGroup(group).map((entry) => this.#pageLink(entry))}
                ${group === own ? html`<li>${this.#blankPage()}</li>` : nothing}
              </ul>`,
        )}
        <h2 id="contents-units" tabindex="-1">Units</h2>
        <ul>
          ${this.units.map((choice) => this.#unitsButton(choice))}
        </ul>
        ${this.keeping} ${this.keeping === null ? nothing : this.#aboutWords()}
      </nav>
      <div class="refused-act" aria-live="assertive">
        ${
          this.refused === ''
            ? nothing
            : html`<p>
                <span class="correction">${this.refused}</span>
                <button type="button" class="word-button" @click=${() => (this.refused = '')}>Put this away</button>
              </p>`
        }
      </div>
      <p class="spoken-only" role="status">${this.said}</p>`;
  }

  /** In place of a page that could not be loaded. */
  #troubleWords(): unknown {
    const { trouble } = this;
    const title = this.entries.find(({ name }) => name === this.current)?.title;
    const says = `${title === undefined ? 'This page' : `‘${title}’`} could not be loaded. ${whyNotLoaded()}`;
    return trouble === null ? nothing : html`<div>${notLoaded(says, trouble)}</div>`;
  }

  /** 'Undo' and 'Redo'; they keep the focus when there is no more to undo. */
  #stepWords(): unknown {
    const word = (way: 'undo' | 'redo', text: string, what: string | null): unknown =>
      html`<button
        type="button"
        class="plain-button"
        aria-disabled=${what === null}
        title=${what === null ? nothing : `${text}: ${what}`}
        @click=${() => what !== null && this.dispatchEvent(new StepEvent(way))}
      >
        ${text}<span class="spoken-only">${what === null ? '' : `: ${what}`}</span>
      </button>`;
    return [word('undo', 'Undo', this.undo), word('redo', 'Redo', this.redo)];
  }

  #aboutWords(): unknown {
    const opens =
      this.opensOffline === undefined
        ? ''
        : this.opensOffline
          ? 'Opens without a network.'
          : 'Does not open without a network yet.';
    return html`<p class="about-words">
      <span>${opens}</span>
      <a href="licences.txt">Licences</a>
    </p>`;
  }

  #blankPage(): unknown {
    return html`<button type="button" class="plain-button" @click=${() => this.dispatchEvent(new BlankPageEvent())}>
      Blank page
    </button>`;
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
    'kp-step': StepEvent;
    'kp-blank-page': BlankPageEvent;
  }
}
