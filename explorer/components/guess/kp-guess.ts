// <kp-guess>: the reader draws what they expect into a figure, with mouse, finger, pen or keys, and asks
// for the answer when they are ready. It knows places and strokes; what the figure shows and what the gap
// means is the page's. It sends one `kp-guess` for each stroke and each turn of the answer.

import { html, LitElement, nothing, type PropertyDeclarations } from 'lit';
import '../figure/kp-figure.js';
import '../../styles/guess.css';
import { guessKey, type Steps } from './guess-keys.js';
import { drawTo, type GuessField, type Point } from './guess.js';
import { strokeByPointer } from './stroke.js';

/** How a quantity of the figure is shown; `step` is that of an arrow key. */
export interface GuessQuantity extends Steps {
  readonly withUnit: (si: number) => string;
}

/** What the reader has drawn, and whether the answer is out; plain data, SI. */
export interface GuessState {
  readonly points: readonly Point[];
  readonly answered: boolean;
}

/** The reader drew, took back, rubbed out, or turned the answer. */
export class GuessEvent extends CustomEvent<GuessState> {
  constructor(state: GuessState) {
    super('kp-guess', { detail: state, bubbles: true });
  }
}

let made = 0;

export class KpGuess extends LitElement {
  static override properties: PropertyDeclarations = {
    figure: { attribute: false },
    rows: { attribute: false },
    panel: { attribute: false },
    x: { attribute: false },
    y: { attribute: false },
    start: { attribute: false },
    field: { attribute: false },
    points: { attribute: false },
    answered: { attribute: false },
    task: { attribute: false },
    reply: { attribute: false },
    hand: { state: true },
    said: { state: true },
  };
  /** Takes { rows, x, y, start, points, hand, answered }. */
  declare figure: unknown;
  declare rows: unknown;
  /** Key of the panel that is drawn on. */
  declare panel: string;
  declare x: GuessQuantity;
  declare y: GuessQuantity;
  declare start: Point;
  declare field: GuessField;
  declare points: readonly Point[];
  declare answered: boolean;
  /** What is to be drawn, for those who hear it. */
  declare task: string;
  /** What the gap comes to and means, once the answer is out. */
  declare reply: unknown;
  /** Where the keys stand; null while they have not been used. */
  declare private hand: Point | null;
  declare private said: string;

  readonly #help = `guess-help-${String(++made)}`;
  readonly #earlier: (readonly Point[])[] = [];

  constructor() {
    super();
    this.points = [];
    this.answered = false;
    this.task = '';
    this.reply = nothing;
    this.hand = null;
    this.said = '';
  }

  protected override createRenderRoot(): this {
    return this;
  }

  protected override render(): unknown {
    const { rows, x, y, start, points, hand, answered } = this;
    return html`<kp-figure
        .figure=${this.figure}
        .rows=${{ rows, x, y, start, points, hand, answered }}
        .over=${answered ? nothing : this.#surface()}
      ></kp-figure>
      <p class="words-to-press">
        <button type="button" class="word-button ink" aria-pressed=${answered} @click=${this.#turn}>
          ${answered ? 'Put the answer away' : 'Show the answer'}
        </button>
        <button type="button" class="word-button" ?disabled=${answered || !this.#canTakeBack} @click=${this.#takeBack}>
          Take back
        </button>
        <button type="button" class="word-button" ?disabled=${answered || points.length === 0} @click=${this.#rubOut}>
          Rub out
        </button>
      </p>
      <p class="guess-help" id=${this.#help}>
        Draw with mouse, finger or pen; draw again over what you want otherwise. By keyboard: arrows move the hand, the
        space bar draws to it, Backspace takes back.
      </p>
      <div class="guess-reply" role="status">${answered ? this.reply : nothing}</div>
      <p class="spoken-only" role="status">${this.said}</p>`;
  }

  #surface(): unknown {
    return html`<div
      class="guess-surface"
      role="application"
      tabindex="0"
      aria-roledescription="drawing"
      aria-label=${this.task}
      aria-describedby=${this.#help}
      @keydown=${this.#key}
      @pointerdown=${this.#down}
    ></div>`;
  }

  #down = (event: PointerEvent): void => {
    const place = this.querySelector('kp-figure')!.plotOf(this.panel);
    if (place === null || event.button !== 0) return;
    const before = this.points;
    const drawn = strokeByPointer(event, place, (at, from) => this.#draw(at, from));
    if (drawn === null) return;
    this.hand = null;
    void drawn.then(() => this.#send(before));
  };

  /** Draws to a place in shown units; returns the point the stroke goes on from. */
  #draw(shown: Point, from: Point | null): Point {
    const to = { x: this.x.fromShown(shown.x), y: this.y.fromShown(shown.y) };
    const { points, at } = drawTo(this.points, from, to, this.field);
    this.points = points;
    return at;
  }

  #key = (event: KeyboardEvent): void => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const hand = this.hand ?? this.points.at(-1) ?? this.start;
    const act = guessKey(event.key, hand, this.field, this.x, this.y);
    if (act === null) return;
    event.preventDefault();
    if (act.kind === 'takeBack') return this.#takeBack();
    if (act.kind === 'move') {
      this.hand = act.to;
      this.said = this.#at(act.to);
      return;
    }
    const before = this.points;
    const { points, at } = drawTo(before, this.#lastBefore(hand), hand, this.field);
    this.points = points;
    this.hand = at;
    this.said = `drawn to ${this.#at(at)}`;
    this.#send(before);
  };

  /** Keys draw on from the end of the line; within it they move or add a single point. */
  #lastBefore(hand: Point): Point | null {
    const last = this.points.at(-1);
    return last !== undefined && hand.x >= last.x ? last : null;
  }

  #at(place: Point): string {
    return `${this.x.withUnit(place.x)}, ${this.y.withUnit(place.y)}`;
  }

  get #canTakeBack(): boolean {
    return this.#earlier.length > 0 || this.points.length > 0;
  }

  /** After a stroke: what stood before can be taken back to. */
  #send(before: readonly Point[]): void {
    if (before === this.points) return;
    this.#earlier.push(before);
    this.#tell();
  }

  #takeBack = (): void => {
    if (!this.#canTakeBack) return;
    this.points = this.#earlier.pop() ?? [];
    this.said = this.points.length === 0 ? 'nothing drawn' : `back to ${this.#at(this.points.at(-1)!)}`;
    this.#tell();
  };

  #rubOut = (): void => {
    const before = this.points;
    this.points = [];
    this.hand = null;
    this.#send(before);
  };

  #turn = (): void => {
    this.answered = !this.answered;
    this.#tell();
  };

  #tell(): void {
    this.dispatchEvent(new GuessEvent({ points: this.points, answered: this.answered }));
  }
}

customElements.define('kp-guess', KpGuess);

declare global {
  interface HTMLElementTagNameMap {
    'kp-guess': KpGuess;
  }
  interface HTMLElementEventMap {
    'kp-guess': GuessEvent;
  }
}
