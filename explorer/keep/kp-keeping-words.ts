// <kp-keeping-words>: the last words of the contents list: share this page, keep and hand on notebooks, print.

import { html, LitElement, type PropertyDeclarations, type PropertyValues } from 'lit';
import { copy } from '../components/hand/hand-over.js';
import type { Keeping } from './keeping.js';
import { shareAddress } from './share.js';

export class KpKeepingWords extends LitElement {
  static override properties: PropertyDeclarations = {
    keeping: { attribute: false },
    page: { attribute: false },
    shelfAddress: { attribute: false },
    said: { state: true },
  };
  declare keeping: Keeping;
  /** Name of the page shown. */
  declare page: string;
  /** Of the page of kept notebooks, with the numbers that are set. */
  declare shelfAddress: string;
  declare private said: string;

  constructor() {
    super();
    this.page = '';
    this.shelfAddress = '';
    this.said = '';
  }

  protected override createRenderRoot(): this {
    return this;
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('page')) this.said = ''; // it was said of another page
  }

  protected override render(): unknown {
    return html`<ul class="keeping-words">
        <li><button class="plain-button" type="button" @click=${this.#share}>Share this page</button></li>
        <li>
          ${
            this.page === 'notebooks'
              ? html`<a href=${this.shelfAddress} aria-current="page"><span>Keep and open</span></a>`
              : html`<a href=${this.shelfAddress}>Keep and open</a>`
          }
        </li>
        <li><button class="plain-button" type="button" @click=${() => print()}>Print</button></li>
      </ul>
      <p class="said" role="status">${this.said}</p>`;
  }

  readonly #share = (): void => {
    void shareAddress(this.keeping.notebook, this.page).then(async ({ address, says }) => {
      this.said = (await copy(address)) ? says : `Copy it from the address line: ${address}`;
    });
  };
}

customElements.define('kp-keeping-words', KpKeepingWords);

declare global {
  interface HTMLElementTagNameMap {
    'kp-keeping-words': KpKeepingWords;
  }
}
