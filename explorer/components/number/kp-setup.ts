// The setup sentence with its correction line and the ruler under it. A sentence is data: an array of
// text and of blanks named by key, so that a page writes its sentence and nothing else.

import { html, LitElement, nothing, type PropertyDeclarations } from 'lit';
import './kp-blank.js';
import './kp-ruler.js';
import { send } from './events.js';
import type { NumberSpec } from './number-spec.js';

/** A piece of a sentence: words, or the number with this key. */
export type SentencePart<Key extends string = string> = string | { readonly blank: Key };

/** The correction of one number, in words. */
export interface Correction {
  readonly key: string;
  /** The text that cannot be used, said first and bold. */
  readonly draft: string;
  readonly says: string;
  /** The word that puts the value in use back: 'Put 65 back'. */
  readonly putBack: string;
}

export class Setup extends LitElement {
  static override properties: PropertyDeclarations = {
    sentence: { attribute: false },
    specs: { attribute: false },
    values: { attribute: false },
    earlier: { attribute: false },
    inFocus: { attribute: false },
    docked: { attribute: false },
    correction: { attribute: false },
  };
  declare sentence: readonly SentencePart[];
  declare specs: Readonly<Record<string, NumberSpec>>;
  /** SI values by key. */
  declare values: Readonly<Record<string, number>>;
  /** SI values of the run kept in pencil; null where none is kept. */
  declare earlier: Readonly<Record<string, number>> | null;
  /** Key of the number the ruler holds. */
  declare inFocus: string;
  declare docked: boolean;
  declare correction: Correction | null;

  protected override createRenderRoot(): this {
    return this;
  }

  protected override render(): unknown {
    const spec = this.specs[this.inFocus]!;
    return html`<p class="setup-sentence">${this.#words()}</p>
      <p class="correction" id="correction" role="status">${this.#correctionLine()}</p>
      <kp-ruler
        .spec=${spec}
        .value=${this.values[this.inFocus]}
        .earlier=${this.earlier?.[this.inFocus] ?? null}
        ?docked=${this.docked}
      ></kp-ruler>`;
  }

  /** Words and blanks; a blank and the punctuation after it never part. */
  #words(): unknown[] {
    const parts = this.sentence;
    return parts.map((part, index) => {
      if (typeof part === 'string') return typeof parts[index - 1] === 'object' ? part.replace(/^\S+/, '') : part;
      const next = parts[index + 1];
      const closing = typeof next === 'string' ? (/^\S+/.exec(next)?.[0] ?? '') : '';
      return html`<span class="kept-together"
        ><kp-blank
          .spec=${this.specs[part.blank]}
          .value=${this.values[part.blank]}
          ?current=${part.blank === this.inFocus}
        ></kp-blank
        >${closing}</span
      >`;
    });
  }

  #correctionLine(): unknown {
    const { correction } = this;
    if (correction === null) return nothing;
    const putBack = (): void => send(this, 'kp-put-back', { key: correction.key });
    return html`<b>${correction.draft}</b> ${correction.says}
      <button type="button" class="put-back" @click=${putBack}>${correction.putBack}</button>`;
  }
}

customElements.define('kp-setup', Setup);

declare global {
  interface HTMLElementTagNameMap {
    'kp-setup': Setup;
  }
}
