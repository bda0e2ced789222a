// A question's answer: a blank in a sentence, a word that checks it, and a reply that names the value
// reached. The sentence and the reply are the page's; this element only takes the number. After three
// numbers that miss, the answer can be asked for.

import { html, LitElement, nothing, type PropertyDeclarations, type PropertyValues } from 'lit';
import { readText } from '../../text/parse.js';
import { atMost } from '../field/at-most.js';
import type { Reading, Refusal } from '../number/number-spec.js';

/** What the page says to an answer; `attempt` counts from 1. */
export type Judge = (given: number, attempt: number) => string | { readonly met: boolean; readonly reply: string };

/** A text was checked; `met` where it is near enough. */
export class AnsweredEvent extends CustomEvent<{ readonly text: string; readonly met: boolean }> {
  constructor(text: string, met: boolean) {
    super('kp-answered', { detail: { text, met }, bubbles: true });
  }
}

/** A number and its unit are never longer. */
const mostLetters = { most: 200, what: 'an answer' };
/** Numbers that miss before the answer is offered. */
const patience = 3;

const plainNumber = (text: string): Reading =>
  readText(text, { fromShown: (shown) => shown, units: new Map(), engine: false });

const refusals: Readonly<Record<Refusal, string>> = {
  empty: 'Write a number first.',
  noNumber: 'That is no number.',
  ambiguousComma: 'The comma may mean thousands or a decimal: write it without, or with a point.',
  unknownUnit: 'That unit does not fit here; the number alone will do.',
  wrongUnit: 'That unit does not fit here; the number alone will do.',
  notYet: 'Write a number first.',
};

export class AnswerBlank extends LitElement {
  static override properties: PropertyDeclarations = {
    lead: { attribute: false },
    tail: { attribute: false },
    label: { attribute: false },
    judge: { attribute: false },
    read: { attribute: false },
    answerWords: { attribute: false },
    given: { attribute: false },
    subject: { attribute: false },
    reply: { state: true },
    missed: { state: true },
  };
  /** Words before and after the blank. */
  declare lead: unknown;
  declare tail: unknown;
  /** The question for those who hear it. */
  declare label: string;
  declare judge: Judge;
  /** How a text becomes a number, with its unit; a plain number where nothing is set. */
  declare read: (text: string) => Reading;
  /** The answer in a sentence, for when it is asked for; '' where it never is. */
  declare answerWords: string;
  /** What was written before, to stand there again. */
  declare given: string;
  /** What the question is about: when it changes, the reply goes. */
  declare subject: unknown;
  declare private reply: string;
  declare private missed: number;

  constructor() {
    super();
    this.lead = nothing;
    this.tail = nothing;
    this.read = plainNumber;
    this.answerWords = '';
    this.given = '';
    this.reply = '';
    this.missed = 0;
  }

  protected override createRenderRoot(): this {
    return this;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('subject') || changed.get('subject') === undefined) return;
    this.reply = '';
    this.missed = 0;
  }

  protected override render(): unknown {
    const { tail } = this;
    const offers = this.answerWords !== '' && this.missed >= patience;
    return html`<form class="try-it" @submit=${this.#check} novalidate>
      <em>Try it.</em> ${this.lead}
      <span class="kept-together"
        ><input
          class="answer-blank"
          type="text"
          inputmode="decimal"
          autocomplete="off"
          size="4"
          ${atMost(mostLetters)}
          .value=${this.given}
          aria-label=${this.label}
        />${typeof tail === 'string' ? ` ${unit(tail)}` : nothing}</span
      >
      ${typeof tail === 'string' ? tail.slice(unit(tail).length) : tail}
      <button type="submit" class="word-button ink">Check</button>
      <span class="reply" role="status">${this.reply}</span>
      ${
        offers
          ? html`<button type="button" class="word-button" @click=${this.#giveAway}>Show the answer</button>`
          : nothing
      }
    </form>`;
  }

  #check = (event: Event): void => {
    event.preventDefault();
    const text = this.querySelector('input')!.value;
    const reading = this.read(text);
    if (reading.kind !== 'value') {
      this.reply = refusals[reading.kind === 'ask' ? 'unknownUnit' : reading.reason];
      return;
    }
    const verdict = this.judge(reading.si, this.missed + 1);
    const { met, reply } = typeof verdict === 'string' ? { met: true, reply: verdict } : verdict;
    this.reply = reply;
    if (!met) this.missed += 1;
    this.dispatchEvent(new AnsweredEvent(text, met));
  };

  #giveAway = (): void => {
    this.reply = this.answerWords;
    this.missed = 0;
  };
}

/** What must not part from the blank: the first word after it, or a unit of two. */
function unit(tail: string): string {
  return /^(?:% vol|: 1|\S+)\S*/u.exec(tail)?.[0] ?? '';
}

customElements.define('kp-answer', AnswerBlank);

declare global {
  interface HTMLElementTagNameMap {
    'kp-answer': AnswerBlank;
  }
  interface HTMLElementEventMap {
    'kp-answered': AnsweredEvent;
  }
}
