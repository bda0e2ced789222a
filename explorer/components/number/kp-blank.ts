// A number in a sentence: ink on a ruled line, its unit inside. Typed, stepped or dragged; it sends one
// 'kp-change' with one SI number for each gesture that gives a new value, and nothing when `value` is
// set from outside.

import { html, LitElement, nothing, type PropertyDeclarations, type PropertyValues } from 'lit';
import { live } from 'lit/directives/live.js';
import { Draft } from './draft.js';
import { followDrag } from './drag.js';
import { send } from './events.js';
import { numberWithUnit, stepped, type NumberSpec } from './number-spec.js';

const stepsOfKey: Readonly<Record<string, number>> = { ArrowUp: 1, ArrowDown: -1, PageUp: 10, PageDown: -10 };

export class Blank extends LitElement {
  static override properties: PropertyDeclarations = {
    spec: { attribute: false },
    value: { attribute: false },
    current: { type: Boolean },
    correctionId: { attribute: false },
  };
  declare spec: NumberSpec;
  /** The value in use, SI. */
  declare value: number;
  /** Whether the ruler holds this number. */
  declare current: boolean;
  /** The id of the line that says what is wrong with it. */
  declare correctionId: string;

  readonly #draft = new Draft({
    spec: () => this.spec,
    use: (si) => this.#change(si),
    redraw: () => this.requestUpdate(),
    report: (fault) => send(this, 'kp-fault', { key: this.spec.key, fault }),
  });
  #sent: number | undefined;
  #before: number | undefined;
  /** The reader is in the text: the keys Home and End and the mouse belong to it. */
  #inText = false;
  #byTouch = false;

  constructor() {
    super();
    this.current = false;
    this.correctionId = 'correction';
    this.addEventListener('click', this.#clicked);
  }

  protected override createRenderRoot(): this {
    return this;
  }

  /** Rubs out the draft; the value in use stands again. */
  putBack(): void {
    this.#draft.drop();
  }

  /** Opens the number for typing, keyboard included. */
  type(): void {
    const input = this.#input;
    input.blur();
    input.readOnly = false;
    input.inputMode = 'decimal';
    input.focus();
    this.#inText = true;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    const setElsewhere = changed.has('value') && this.value !== this.#sent;
    const otherUnit = changed.has('spec') && changed.get('spec') !== undefined;
    if (setElsewhere || otherUnit) this.#draft.drop();
    if (changed.has('value')) this.#sent = undefined;
  }

  protected override render(): unknown {
    const { spec } = this;
    const { text: draft, fault } = this.#draft;
    const shown = spec.toShown(this.#inUse);
    const text = draft ?? spec.digits(shown);
    const look = `blank${this.current ? ' current' : ''}${fault ? ' invalid' : ''}`;
    return html`<span class=${look} @pointerdown=${this.#down} @mousedown=${this.#hold}
      ><span class="draft"
        ><span class="mirror" aria-hidden="true">${text === '' ? '0' : text}</span
        ><input
          type="text"
          role="spinbutton"
          inputmode="decimal"
          autocomplete="off"
          spellcheck="false"
          aria-label=${spec.label}
          aria-valuenow=${shown}
          aria-valuemin=${spec.low}
          aria-valuemax=${spec.high}
          aria-valuetext=${numberWithUnit(spec, this.#inUse)}
          aria-invalid=${fault ? 'true' : 'false'}
          aria-describedby=${fault ? this.correctionId : nothing}
          .value=${live(text)}
          @input=${this.#typed}
          @keydown=${this.#key}
          @focus=${this.#focused}
          @blur=${this.#left} /></span
      ><span class="unit" aria-hidden="true">${/\p{L}/u.test(text) ? '' : spec.suffix(shown)}</span></span
    >`;
  }

  get #input(): HTMLInputElement {
    return this.querySelector('input')!;
  }

  /** The value in use: what was sent last until the page answers, then what it set. */
  get #inUse(): number {
    return this.#sent ?? this.value;
  }

  #change(si: number): void {
    if (si === this.#inUse) return;
    this.#sent = si;
    send(this, 'kp-change', { key: this.spec.key, value: si });
  }

  /** A value that comes from a key or the mouse, not from the text. */
  #set(si: number): void {
    this.#draft.drop();
    this.#change(si);
  }

  #typed = (): void => {
    this.#inText = true;
    this.#draft.type(this.#input.value);
  };

  #key = (event: KeyboardEvent): void => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const { spec } = this;
    const steps = stepsOfKey[event.key];
    if (steps !== undefined) this.#set(stepped(spec, this.#inUse, steps));
    else if (event.key === 'Home' && !this.#inText) this.#set(spec.fromShown(spec.low));
    else if (event.key === 'End' && !this.#inText) this.#set(spec.fromShown(spec.high));
    else if (event.key === 'Escape') this.#set(this.#before ?? this.value);
    else if (event.key === 'Enter') this.#settle();
    else return;
    event.preventDefault();
  };

  #focused = (): void => {
    this.#before = this.#inUse;
    const frame = this.querySelector<HTMLElement>('.draft')!;
    frame.style.minWidth = `${String(frame.getBoundingClientRect().width)}px`;
    if (!this.#input.readOnly) this.#input.select();
    send(this, 'kp-number-focus', { key: this.spec.key, touch: this.#byTouch });
  };

  #left = (): void => {
    this.querySelector<HTMLElement>('.draft')!.style.minWidth = '';
    this.#byTouch = false;
    this.#settle();
  };

  #settle(): void {
    this.#inText = false;
    this.#draft.settle(true);
  }

  #down = (event: PointerEvent): void => {
    const input = this.#input;
    const focused = document.activeElement === input;
    if (event.pointerType === 'touch') {
      this.#byTouch = !focused;
      if (focused) return;
      input.readOnly = true; // the first touch raises no keyboard
      input.inputMode = 'none';
      return;
    }
    input.readOnly = false;
    input.inputMode = 'decimal';
    if (event.button !== 0 || this.#draft.text !== null) return;
    const frame = event.currentTarget as HTMLElement;
    const start = this.#inUse;
    followDrag(frame, event, {
      started: () => {
        if (!focused) input.focus({ preventScroll: true });
        frame.classList.add('dragged');
      },
      moved: (steps) => this.#set(stepped(this.spec, start, steps)),
      ended: () => {
        frame.classList.remove('dragged');
        input.select();
      },
      pressed: () => {
        if (!focused) input.focus({ preventScroll: true });
        this.#inText = true;
      },
    });
  };

  /** A press that may become a drag must not place the caret; in the text the mouse is the reader's. */
  #hold = (event: MouseEvent): void => {
    if (document.activeElement !== this.#input) event.preventDefault();
  };

  #clicked = (event: MouseEvent): void => {
    if (!(event instanceof PointerEvent) || event.pointerType !== 'touch') return;
    if (!this.#byTouch) {
      if (this.#input.readOnly) this.type();
    } else if (document.activeElement !== this.#input) this.#input.focus({ preventScroll: true });
  };
}

customElements.define('kp-blank', Blank);

declare global {
  interface HTMLElementTagNameMap {
    'kp-blank': Blank;
  }
}
