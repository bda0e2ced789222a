// The page 'Notebooks': the open notebook, the others on the shelf, and the way in and out for files.

import { html, LitElement, nothing, type PropertyDeclarations } from 'lit';
import { atMost } from '../components/field/at-most.js';
import { saveFile } from '../components/hand/hand-over.js';
import type { PageElement } from '../pages/page-element.js';
import { letters } from '../state/limits.js';
import type { Scenario } from '../state/scenario.js';
import type { UnitSystem } from '../text/unit-systems.js';
import type { Solver } from '../worker/solver-client.js';
import '../styles/notebooks.css';
import type { AsideFile } from './aside.js';
import { extension, mediaType } from './format.js';
import { KeepingWantedEvent } from './keeping-event.js';
import type { Keeping } from './keeping.js';
import { mostDeleted, type Shelved } from './shelf.js';
import { dateWords, shelfTrouble, stateWords, titleOf } from './words.js';
import { notebookFileName } from './write-file.js';

export class NotebooksPage extends LitElement implements PageElement {
  static override properties: PropertyDeclarations = { next: { attribute: false }, keeping: { state: true } };
  declare solver: Solver;
  declare scenario: Scenario;
  declare units: UnitSystem;
  declare next: PageElement['next'];
  declare private keeping: Keeping | undefined;
  readonly #changed = (): void => this.requestUpdate();

  constructor() {
    super();
    this.next = null;
  }

  protected override createRenderRoot(): this {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    const take = (keeping: Keeping): void => {
      this.keeping = keeping;
      keeping.addEventListener('change', this.#changed);
    };
    this.dispatchEvent(new KeepingWantedEvent(take));
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.keeping?.removeEventListener('change', this.#changed);
  }

  protected override render(): unknown {
    const { keeping } = this;
    return html`<header class="page-head">
        <h1>Notebooks</h1>
        <p class="promise">What is kept in this browser, and what you hand on.</p>
      </header>
      ${keeping === undefined ? nothing : [this.#open(keeping), this.#shelf(keeping), this.#bringIn(keeping)]}`;
  }

  #open(keeping: Keeping): unknown {
    const { name } = keeping.notebook;
    const rename = (event: Event): void => keeping.name((event.target as HTMLInputElement).value);
    return html`<section class="entry" aria-labelledby="open-notebook">
      <h2 id="open-notebook">This notebook</h2>
      <p class="notebook-line">
        <label
          >Its name
          <input
            class="name-blank"
            .value=${name}
            placeholder="Untitled"
            ${atMost(letters.notebookName)}
            @input=${rename}
            data-in-history
          />
        </label>
      </p>
      <p class=${keeping.state.kind === 'not-kept' ? 'correction' : 'kept-line'} role="status">
        ${stateWords(keeping.state)}
      </p>
      ${keeping.said === '' ? nothing : html`<p class="correction">${keeping.said}</p>`}
      <p class="words-to-press">
        ${word('Save it as a file', () => saveText(notebookFileName(name), keeping.file()))}
        ${word('Begin another', () => void keeping.begin())}
      </p>
      <aside class="notes">
        <p>
          A notebook is the numbers of all pages, your own pages, pencil lines, guesses and answers. It stays on this
          device: nobody else has it unless you hand on its file. It goes when you delete this site’s data, and in a
          private window when you close it.
        </p>
      </aside>
    </section>`;
  }

  #shelf(keeping: Keeping): unknown {
    const { kept: all, deleted: gone } = keeping.shelf.lists;
    const { trouble } = keeping.shelf;
    return html`<section class="entry" aria-labelledby="the-shelf">
      <h2 id="the-shelf" tabindex="-1">On the shelf</h2>
      ${trouble === undefined ? nothing : html`<p class="correction" role="alert">${shelfTrouble(trouble)}</p>`}
      ${
        all.length === 0
          ? trouble === undefined
            ? html`<p class="kept-line">Nothing yet.</p>`
            : nothing
          : html`<ul class="shelf">
              ${all.map((one) => this.#book(keeping, one))}
            </ul>`
      }
      ${
        gone.length === 0
          ? nothing
          : html`<h3>Deleted</h3>
              <ul class="shelf">
                ${gone.map(
                  (one) =>
                    html`<li>
                      <span class="title">${titleOf(one.name)}</span>
                      <span class="date">${dateWords(one.written)}</span>
                      ${word('Put it back', () => this.#do(() => keeping.shelf.putBack(one.id)), `Put ${titleOf(one.name)} back`)}
                    </li>`,
                )}
              </ul>`
      }
      <aside class="notes"><p>The last ${mostDeleted} that were deleted can be put back.</p></aside>
    </section>`;
  }

  #book(keeping: Keeping, { id, name, written }: Shelved): unknown {
    const title = titleOf(name);
    const isOpen = id === keeping.id;
    const save = (): void =>
      void keeping.shelf.textOf(id).then((text) => text !== undefined && saveText(notebookFileName(name), text));
    const remove = (): void => this.#do(() => keeping.remove(id));
    return html`<li>
      <span class="title">${title}</span> <span class="date">${isOpen ? 'open here' : dateWords(written)}</span>
      ${isOpen ? nothing : word('Open', () => void keeping.open(id), `Open ${title}`)}
      ${isOpen ? nothing : word('Save as a file', save, `Save ${title} as a file`)}
      ${word('Delete', remove, `Delete ${title}`)}
    </li>`;
  }

  #bringIn(keeping: Keeping): unknown {
    const choose = (event: Event): void => {
      const input = event.target as HTMLInputElement;
      const file = input.files?.[0];
      if (file !== undefined) void keeping.bringIn(file.name, file);
      input.value = '';
    };
    const { refused } = keeping;
    const others = keeping.shelf.lists.aside;
    return html`<section class="entry" aria-labelledby="bring-in">
      <h2 id="bring-in" tabindex="-1">Open a file</h2>
      <p class="words-to-press">
        <label class="word-button file-word"
          >Choose a file
          <input class="spoken-only" type="file" accept=".${extension},.json,.txt,${mediaType}" @change=${choose} />
        </label>
      </p>
      <p class="kept-line">Or drop one anywhere on the explorer. It opens beside the others and replaces none.</p>
      ${
        refused === undefined
          ? nothing
          : html`<p class="correction" role="alert">
              <b>${refused.name}</b> was not opened. ${refused.refusal.says}
              ${refused.aside ? 'The file is kept aside, unchanged.' : 'It is not kept aside; the file itself is as it was.'}
              ${refused.bytes === null ? nothing : word('Save it unchanged', () => saveBytes(refused.name, refused.bytes ?? undefined))}
            </p>`
      }
      ${
        others.length === 0
          ? nothing
          : html`<h3>Kept aside</h3>
              <ul class="shelf">
                ${others.map((one) => this.#aside(keeping, one))}
              </ul>`
      }
      <aside class="notes">
        <p>A file is read and checked, and nothing in it is ever run. Text with an address of a page will do, too.</p>
      </aside>
    </section>`;
  }

  #aside({ shelf }: Keeping, { id, kind, name, at, why }: AsideFile): unknown {
    const save = (): void => void shelf.asideBytes(id).then((bytes) => saveBytes(name, bytes));
    const drop = (): void => this.#do(() => shelf.dropAside(id), 'bring-in');
    return html`<li>
      <span class="title">${name}</span> <span class="date">${dateWords(at)}</span>
      ${word('Save it unchanged', save, `Save ${name} unchanged`)} ${word('Throw it away', drop, `Throw ${name} away`)}
      <span class="why">${kind === 'notebook' ? 'A notebook that was kept here. ' : ''}${why}</span>
    </li>`;
  }

  /** The word that was pressed may be gone afterwards: those on a keyboard go on from the heading above it. */
  #do(act: () => Promise<unknown>, heading = 'the-shelf'): void {
    void act().then(async () => {
      await this.updateComplete;
      if (document.activeElement === document.body) this.querySelector<HTMLElement>(`#${heading}`)?.focus();
    });
  }
}

function word(text: string, press: () => void, spoken = text): unknown {
  return html`<button class="word-button" type="button" aria-label=${spoken} @click=${press}>${text}</button>`;
}

function saveText(name: string, text: string): void {
  saveFile(name, new Blob([text], { type: mediaType }));
}

function saveBytes(name: string, bytes: Uint8Array<ArrayBuffer> | undefined): void {
  if (bytes !== undefined) saveFile(name, new Blob([bytes]));
}

customElements.define('kp-notebooks-page', NotebooksPage);
