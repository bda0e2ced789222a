// The setup sentence with its correction line and the ruler under it. A sentence is data: an array of
// text and of blanks named by key, so that a page writes its sentence and nothing else.

import { html, LitElement, nothing, type PropertyDeclarations } from 'lit';
import './kp-blank.js';
import './kp-ruler.js';
import { send } from './events.js';
import type { NumberSpec } from './number-spec.js';

/** A piece of a sentence: words, or the number with this key. */
export type SentencePart<Key extends string = string> = string | { readonly blank: Key };

/** Stands for a number that the still or the sheet in use has not. */
export const notThere = html`<span class="not-there">(not there)</span>`;

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
    valueAt: { attribute: false },
    earlierAt: { attribute: false },
    inFocus: { attribute: false },
    docked: { attribute: false },
    correction: { attribute: false },
  };
  declare sentence: readonly SentencePart[];
  declare specs: (key: string) => NumberSpec;
  /** SI value of a key; undefined where there is nothing to set. */
  declare valueAt: (key: string) => number | undefined;
  /** The same of the run kept in pencil; null where none is kept. */
  declare earlierAt: ((key: string) => number | undefined) | null;
  /** Key of the number the ruler holds. */
  declare inFocus: string;
  declare docked: boolean;
  declare correction: Correction | null;

  protected override createRenderRoot(): this {
    return this;
  }

  protected override render(): unknown {
    return html`<p class="setup-sentence">${this.#words()}</p>
      <p class="correction" id="correction" role="status">${this.#correctionLine()}</p>
      ${this.#ruler()}`;
  }

  #ruler(): unknown {
    const value = this.valueAt(this.inFocus);
    if (value === undefined) return nothing;
    return html`<kp-ruler
      .spec=${this.specs(this.inFocus)}
      .value=${value}
      .earlier=${this.earlierAt?.(this.inFocus) ?? null}
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
      return html`<span class="kept-together">${this.#blank(part.blank)}${closing}</span>`;
    });
  }

  #blank(key: string): unknown {
    const value = this.valueAt(key);
    if (value === undefined) return notThere;
    return html`<kp-blank .spec=${this.specs(key)} .value=${value} ?current=${key === this.inFocus}></kp-blank>`;
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
