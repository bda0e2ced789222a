// A field for a text that has at most so many letters: what goes beyond is not put in, and the words for it stand under
// the field. What stood there before stays, and so does what was pasted, where it came from.
//
//   <input ${atMost(letters.title)} .value=${live(title)} @input=${...} />
//
// It must come before the field's own @input, which then only ever sees a text that fits.

import { noChange } from 'lit';
import { directive, Directive, type ElementPart } from 'lit/directive.js';
import { grouped } from '../../text/format.js';

export interface MostLetters {
  readonly most: number;
  /** 'a title' */
  readonly what: string;
}

type Field = HTMLInputElement | HTMLTextAreaElement;

class AtMost extends Directive {
  #limit: MostLetters | undefined;
  #field: Field | undefined;
  #words: HTMLElement | undefined;
  /** The text as it last fitted. */
  #before = '';

  override render(limit: MostLetters): unknown {
    this.#limit = limit;
    return noChange;
  }

  override update(part: ElementPart, [limit]: [MostLetters]): unknown {
    if (this.#field === undefined) this.#watch(part.element as Field);
    return this.render(limit);
  }

  #watch(field: Field): void {
    this.#field = field;
    this.#words = Object.assign(document.createElement('span'), { className: 'correction field-limit' });
    this.#words.setAttribute('role', 'status');
    field.after(this.#words);
    const note = (): void => void (this.#before = field.value);
    field.addEventListener('focus', note);
    field.addEventListener('beforeinput', note);
    field.addEventListener('input', (event) => this.#typed(event));
    // The words stay when the field is left: what stands below must not move under a hand that is on its way there.
  }

  #typed(event: Event): void {
    const [field, before] = [this.#field!, this.#before];
    const { most, what } = this.#limit!;
    const { length } = field.value;
    const fits = length <= most || length < before.length;
    this.#words!.textContent = fits ? '' : wordsFor(what, most, length);
    if (fits) {
      this.#before = field.value;
      return;
    }
    event.stopImmediatePropagation();
    const caret = sameBeginning(before, field.value);
    field.value = before;
    field.setSelectionRange(caret, caret);
  }
}

/** ${atMost({ most, what })} on an input or a textarea. */
export const atMost = directive(AtMost);

function wordsFor(what: string, most: number, found: number): string {
  const [allowed, tried] = [most, found].map((count) => grouped(String(count)));
  const begin = what.charAt(0).toUpperCase() + what.slice(1);
  return `${begin} has at most ${allowed!} letters; this would make it ${tried!}. It was not put in.`;
}

/** Letters that two texts begin with alike. */
function sameBeginning(one: string, other: string): number {
  const most = Math.min(one.length, other.length);
  let count = 0;
  while (count < most && one[count] === other[count]) count += 1;
  return count;
}
