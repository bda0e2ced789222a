// The text in a blank between the hand and the number: kept as typed, read at once, and called unusable
// only after a rest, so that nobody is corrected in the middle of a word.

import { rangeFault, type NumberFault, type NumberSpec } from './number-spec.js';

/** Rest after the last key before a text that cannot be used is called so, ms. */
const patience_ms = 600;
/** Rest before the formula engine is asked for a unit, ms. */
const askAfter_ms = 250;

/** What a draft tells its blank. */
export interface DraftOwner {
  spec(): NumberSpec;
  /** A text was read as this SI value, within the limits. */
  use(si: number): void;
  /** The text or its fault changed. */
  redraw(): void;
  report(fault: NumberFault | null): void;
}

export class Draft {
  /** The text as typed; null while the value in use stands in the blank. */
  text: string | null = null;
  fault: NumberFault | null = null;
  readonly #owner: DraftOwner;
  #rest: ReturnType<typeof setTimeout> | undefined;

  constructor(owner: DraftOwner) {
    this.#owner = owner;
  }

  /** Takes the text after a key; a value in it is used at once. */
  type(text: string): void {
    this.#show(text);
    this.#weigh((outcome) => {
      const rest_ms = outcome.kind === 'ask' ? askAfter_ms : patience_ms;
      this.#rest = setTimeout(() => this.settle(false), rest_ms);
    });
  }

  /** The rest is over or the hand has left: a text in use becomes the plain value if `tidy`, any other gets its fault. */
  settle(tidy: boolean): void {
    if (this.text === null) return;
    this.#weigh((outcome) => {
      if (outcome.kind === 'ask') void this.#ask(outcome.number, outcome.unit, tidy);
      else this.#blame(outcome.reason);
    });
    if (tidy && this.fault === null && this.#owner.spec().read(this.text).kind === 'value') this.#show(null);
  }

  /** Rubs the text out. */
  drop(): void {
    clearTimeout(this.#rest);
    this.#show(null);
    this.#blame(null);
  }

  /** Uses a readable text; hands any other to `otherwise`. */
  #weigh(
    otherwise: (
      outcome:
        | { readonly kind: 'ask'; readonly number: number; readonly unit: string }
        | { readonly kind: 'refused'; readonly reason: NumberFault['reason'] },
    ) => void,
  ): void {
    clearTimeout(this.#rest);
    const spec = this.#owner.spec();
    const reading = spec.read(this.text ?? '');
    if (reading.kind !== 'value') return otherwise(reading);
    const outside = rangeFault(spec, reading.si);
    if (outside !== undefined) return otherwise({ kind: 'refused', reason: outside });
    this.#blame(null);
    this.#owner.use(reading.si);
  }

  async #ask(number: number, unit: string, tidy: boolean): Promise<void> {
    const spec = this.#owner.spec();
    const text = this.text;
    const si = await spec.readWithEngine(number, unit);
    if (this.text !== text) return;
    const reason = si === undefined ? 'unknownUnit' : rangeFault(spec, si);
    this.#blame(reason ?? null);
    if (reason !== undefined || si === undefined) return;
    this.#owner.use(si);
    if (tidy) this.#show(null);
  }

  #show(text: string | null): void {
    this.text = text;
    this.#owner.redraw();
  }

  #blame(reason: NumberFault['reason'] | null): void {
    const draft = this.text ?? '';
    const said = reason === (this.fault?.reason ?? null) && (reason === null || draft === this.fault?.draft);
    if (said) return;
    this.fault = reason === null ? null : { draft, reason };
    this.#owner.redraw();
    this.#owner.report(this.fault);
  }
}
