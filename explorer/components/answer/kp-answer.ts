// A question's answer: a blank in a sentence, a word that checks it, and a reply that names the value
// reached. The sentence and the reply are the page's; this element only takes the number.

import { html, LitElement, type PropertyDeclarations, type PropertyValues } from 'lit';

/** What the page says to an answer. */
export type Judge = (given: number) => string;

export class AnswerBlank extends LitElement {
  static override properties: PropertyDeclarations = {
    lead: { attribute: false },
    tail: { attribute: false },
    label: { attribute: false },
    judge: { attribute: false },
    subject: { attribute: false },
    reply: { state: true },
  };
  /** Words before and after the blank. */
  declare lead: unknown;
  declare tail: unknown;
  /** The question for those who hear it. */
  declare label: string;
  declare judge: Judge;
  /** What the question is about: when it changes, the reply goes. */
  declare subject: unknown;
  declare private reply: string;

  constructor() {
    super();
    this.reply = '';
  }

  protected override createRenderRoot(): this {
    return this;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('subject') && changed.get('subject') !== undefined) this.reply = '';
  }

  protected override render(): unknown {
    return html`<form class="try-it" @submit=${this.#check} novalidate>
      <em>Try it.</em> ${this.lead}
      <input
        class="answer-blank"
        type="text"
        inputmode="decimal"
        autocomplete="off"
        size="4"
        aria-label=${this.label}
      />
      ${this.tail} <button type="submit" class="word-button ink">Check</button>
      <span class="reply" role="status">${this.reply}</span>
    </form>`;
  }

  #check = (event: Event): void => {
    event.preventDefault();
    const text = this.querySelector('input')!.value.trim().replace(',', '.');
    const given = text === '' ? Number.NaN : Number(text);
    this.reply = Number.isFinite(given) ? this.judge(given) : 'Write a number first.';
  };
}

customElements.define('kp-answer', AnswerBlank);

declare global {
  interface HTMLElementTagNameMap {
    'kp-answer': AnswerBlank;
  }
}
