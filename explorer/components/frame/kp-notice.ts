// What the reader has to know about keeping and versions: one line at the lower edge of the window, over nothing
// that is being read, with what can be done about it. It stays until it is answered.

import { html, LitElement, nothing, type PropertyDeclarations } from 'lit';

export interface Notice {
  readonly says: string;
  /** What can be done, besides putting the line away: words to press. */
  readonly words?: readonly (readonly [word: string, act: () => void])[];
  /** Whether it cannot be put away: it goes when what it says is no longer so. */
  readonly stays?: boolean;
}

export class KpNotice extends LitElement {
  static override properties: PropertyDeclarations = { notices: { state: true } };
  /** By what they are about; a new one takes the place of the one before it. */
  declare private notices: ReadonlyMap<string, Notice>;

  constructor() {
    super();
    this.notices = new Map();
  }

  show(about: string, notice: Notice | null): void {
    const notices = new Map(this.notices);
    notices.delete(about);
    if (notice !== null) notices.set(about, notice);
    this.notices = notices;
  }

  protected override createRenderRoot(): this {
    return this;
  }

  protected override render(): unknown {
    return html`<div class="notice" role="status">
      ${[...this.notices].map(
        ([about, { says, words = [], stays }]) =>
          html`<p>
            ${says}
            ${words.map(([word, act]) => html`<button class="word-button" type="button" @click=${act}>${word}</button>`)}
            ${
              stays === true
                ? nothing
                : html`<button class="word-button" type="button" @click=${() => this.show(about, null)}>
                    Not now
                  </button>`
            }
          </p>`,
      )}
    </div>`;
  }
}

customElements.define('kp-notice', KpNotice);
