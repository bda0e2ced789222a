// <kp-term>: a word that opens its one-line explanation. Where the margin beside its line is free the
// explanation stands there and nothing moves; else it stands in the text, right after the word. It covers nothing.

import { html, LitElement, nothing, type PropertyDeclarations, type PropertyValues } from 'lit';
import '../../styles/term.css';
import { termOf } from '../../text/glossary/glossary.js';

let made = 0;
const withMargin = '(min-width: 1000px)';
/** What may stand in the margin already. */
const inMargin = '.notes > *, .read-out, .term-means.beside';
/** Px to keep free above and below. */
const apart = 8;

export class TermWord extends LitElement {
  static override properties: PropertyDeclarations = {
    word: { type: String },
    tail: { type: String },
    open: { state: true },
  };
  /** As it stands in the text; any form the glossary knows. */
  declare word: string;
  /** What follows it without a space: a full stop, a comma. */
  declare tail: string;
  declare private open: boolean;

  readonly #id = `term-${String(++made)}`;

  constructor() {
    super();
    this.word = '';
    this.tail = '';
    this.open = false;
  }

  protected override createRenderRoot(): this {
    return this;
  }

  protected override render(): unknown {
    const term = termOf(this.word);
    if (term === undefined) return this.word + this.tail;
    const { open } = this;
    return html`<button
        type="button"
        class="term"
        aria-expanded=${open}
        aria-controls=${this.#id}
        @click=${() => (this.open = !open)}
        @keydown=${this.#key}
      >
        ${this.word}</button
      >${this.tail}<span class="term-means" id=${this.#id} role="status"
        >${open ? html`<b>${term.name}</b> ${term.means}` : nothing}</span
      >`;
  }

  protected override updated(changed: PropertyValues): void {
    if (!changed.has('open')) return;
    const means = this.querySelector<HTMLElement>('.term-means');
    means?.classList.remove('beside');
    if (means === null || !this.open || !matchMedia(withMargin).matches || this.closest('.entry') === null) return;
    means.classList.add('beside');
    if (!free(means)) means.classList.remove('beside');
  }

  #key = (event: KeyboardEvent): void => {
    if (event.key === 'Escape') this.open = false;
  };
}

/** Whether nothing else stands in the margin where `means` stands. */
function free(means: HTMLElement): boolean {
  const { top, bottom, left } = means.getBoundingClientRect();
  return [...document.querySelectorAll(inMargin)].every((other) => {
    if (other === means) return true;
    const box = other.getBoundingClientRect();
    return box.right < left || box.bottom + apart < top || box.top - apart > bottom || box.height === 0;
  });
}

customElements.define('kp-term', TermWord);

declare global {
  interface HTMLElementTagNameMap {
    'kp-term': TermWord;
  }
}
