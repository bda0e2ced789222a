// <kp-own-words>: a question without a number, answered in the reader's own words. What is typed is told
// upwards at every rest; once something stands there, ours can be looked at beside it.

import { html, LitElement, nothing, type PropertyDeclarations } from 'lit';
import { atMost } from '../../components/field/at-most.js';
import { letters } from '../../state/limits.js';

/** The reader typed. */
export class OwnWordsEvent extends CustomEvent<{ readonly text: string }> {
  constructor(text: string) {
    super('kp-own-words', { detail: { text }, bubbles: true });
  }
}

/** Rest after the last key before the text is told, ms. */
const rest_ms = 400;

/** Lines to write on, on paper. */
const paperLines = 6;

let made = 0;

export class OwnWords extends LitElement {
  static override properties: PropertyDeclarations = {
    prompt: { attribute: false },
    ours: { attribute: false },
    text: { attribute: false },
    leads: { attribute: false },
    compares: { state: true },
  };
  declare prompt: string;
  /** How we would say it. */
  declare ours: string;
  declare text: string;
  /** Whether a leader looks on. */
  declare leads: boolean;
  declare private compares: boolean;

  readonly #id = `own-words-${String(++made)}`;
  #rest: ReturnType<typeof setTimeout> | undefined;

  constructor() {
    super();
    this.prompt = '';
    this.ours = '';
    this.text = '';
    this.leads = false;
    this.compares = false;
  }

  protected override createRenderRoot(): this {
    return this;
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#tell();
  }

  protected override render(): unknown {
    const written = this.text.trim() !== '';
    const shown = this.ours !== '' && (this.leads || (written && this.compares));
    return html`<p><label for=${this.#id}>${this.prompt}</label></p>
      <div class="own-words" data-text=${this.text}>
        <textarea
          id=${this.#id}
          rows="4"
          ${atMost(letters.ownWords)}
          .value=${this.text}
          @input=${this.#typed}
          @change=${() => this.#tell()}
        ></textarea>
        ${Array.from({ length: paperLines }, () => html`<span class="write-on"></span>`)}
      </div>
      ${
        written && !this.leads && this.ours !== ''
          ? html`<p class="words-to-press">
              <button
                type="button"
                class="word-button"
                aria-expanded=${this.compares}
                @click=${() => (this.compares = !this.compares)}
              >
                ${this.compares ? 'Put ours away' : 'Compare with ours'}
              </button>
            </p>`
          : nothing
      }
      ${shown ? html`<p class="leader-answer"><b>Ours.</b> ${this.ours}</p>` : nothing}`;
  }

  #typed = (event: Event): void => {
    this.text = (event.target as HTMLTextAreaElement).value;
    this.#untold = true;
    clearTimeout(this.#rest);
    this.#rest = setTimeout(() => this.#tell(), rest_ms);
  };

  /** Something has been typed that was not told yet. */
  #untold = false;

  #tell(): void {
    clearTimeout(this.#rest);
    if (!this.#untold) return;
    this.#untold = false;
    this.dispatchEvent(new OwnWordsEvent(this.text));
  }
}

customElements.define('kp-own-words', OwnWords);

declare global {
  interface HTMLElementTagNameMap {
    'kp-own-words': OwnWords;
  }
  interface HTMLElementEventMap {
    'kp-own-words': OwnWordsEvent;
  }
}
