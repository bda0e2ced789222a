// <kp-figure>: puts a figure on the page. Give it a figure (rows and size in, drawing out) and its rows;
// it redraws when either changes identity, and emits `cursor-moved` and `pencil` when the reader acts.

import { html, LitElement, nothing } from 'lit';
import type { PropertyDeclarations, PropertyValues, TemplateResult } from 'lit';
import type { Axis, Drawing, Figure, FigureSize } from '../../figures/figure.js';
import { wanted } from '../../offline/wanted.js';
import { cursorHandle, type CursorHands } from './cursor-handle.js';
import { cursorKey, cursorAtPointer } from './cursor-moves.js';
import { CursorMovedEvent, PencilEvent } from './events.js';
import { FigurePainter } from './figure-painter.js';
import { figureSize } from './geometry.js';
import type { Geometry } from './geometry.js';
import { forgetWidths } from './measure-text.js';
import { numbersTable } from './numbers-table.js';
import { readOutTable } from './read-out.js';
import { Room } from './room.js';
import type { Taken } from './take/kp-take-along.js';

let made = 0;
const wideScreen = '(min-width: 1000px)';
/** Width on paper, whatever screen it came from: the text column, or one of a pair. */
const bookWidth = { single: 608, pair: 432 };

/** Where a plot rectangle stands in its figure, px, with its axes. */
export interface PlotPlace {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly x: Axis;
  readonly y: Axis;
}

export class KpFigure extends LitElement {
  static override properties: PropertyDeclarations = {
    figure: { attribute: false },
    rows: { attribute: false },
    cursorX: { attribute: false },
    pencils: { type: Number },
    pair: { type: Boolean, reflect: true },
    over: { attribute: false },
    size: { state: true },
    numbersShown: { state: true },
    taking: { state: true },
  };

  /** The figure's function; any rows, as long as `rows` are the ones it takes. */
  declare figure: Figure<never> | null;
  declare rows: unknown;
  /** SI; null leaves it where the figure puts it. Setting it from outside emits nothing. */
  declare cursorX: number | null;
  /** How many pencil lines are on it; -1 for a figure that keeps none. */
  declare pencils: number;
  /** One of two figures side by side. */
  declare pair: boolean;
  /** What is laid over the plot, for a hand that draws on it. */
  declare over: unknown;
  declare size: FigureSize | null;
  declare numbersShown: boolean;
  /** Whether the words that save and copy it are shown; they are loaded then. */
  declare taking: boolean;

  readonly #painter = new FigurePainter(`kp-figure-${++made}`);
  readonly #room = new Room(this, wideScreen, {
    onScreen: (width, wide) => this.#fit(width, wide),
    onPaper: () => this.#toBook(),
  });
  readonly #hands: CursorHands = { onKey: (event) => this.#onKey(event), onPointer: (event) => this.#onPointer(event) };
  #drawing: Drawing | null = null;
  #geometry: Geometry | null = null;

  constructor() {
    super();
    this.figure = null;
    this.rows = null;
    this.cursorX = null;
    this.pencils = -1;
    this.pair = false;
    this.over = nothing;
    this.size = null;
    this.numbersShown = false;
    this.taking = false;
  }

  /** Where the plot of a panel stands; null before it is drawn. */
  plotOf(panel: string): PlotPlace | null {
    const index = this.#drawing?.panels.findIndex(({ key }) => key === panel) ?? -1;
    if (index < 0) return null;
    const { left, width, panels } = this.#geometry!;
    const { top, bottom } = panels[index]!;
    return { left, top, width, height: bottom - top, x: this.#drawing!.x, y: this.#drawing!.panels[index]!.y };
  }

  protected override createRenderRoot(): this {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void document.fonts.ready.then(() => {
      forgetWidths();
      this.#repaint();
    });
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (!(changed.has('figure') || changed.has('rows') || changed.has('size'))) return;
    const { figure, rows, size } = this;
    if (figure === null || rows === null || rows === undefined || size === null) return;
    this.#drawing = figure(rows as never, size);
    this.#geometry = this.#painter.paint(this.#drawing, size, this.#cursor());
  }

  protected override render(): TemplateResult | typeof nothing {
    const drawing = this.#drawing;
    const geometry = this.#geometry;
    if (drawing === null || geometry === null) return nothing;
    const x = this.#cursor();
    return html`<div class="figure-plot" .style=${`height: ${String(geometry.height)}px`}>
        <figure role="img" aria-label=${drawing.description}>${this.#painter.svg}</figure>
        ${x === null ? nothing : cursorHandle(drawing, geometry, x, this.#hands)}${this.over}
      </div>
      ${x === null || drawing.readOut === null ? nothing : readOutTable(drawing.readOut, x)}
      <div class="words-to-press">
        ${
          this.pencils < 0
            ? nothing
            : html`<button class="word-button" type="button" @click=${this.#keep}>Keep as a pencil line</button>
                <button class="word-button" type="button" ?disabled=${this.pencils === 0} @click=${this.#rubOut}>
                  Rub out
                </button>`
        }
        ${this.#opening('Show the numbers', 'Put the numbers away', this.numbersShown, this.#showNumbers)}
        ${this.#opening('Take it along', 'Leave it here', this.taking, this.#takeAlong)}
      </div>
      ${this.taking ? html`<kp-take-along .from=${this.#taken(drawing)}></kp-take-along>` : nothing}
      ${this.numbersShown ? numbersTable(drawing.table()) : nothing}`;
  }

  #opening(words: string, wordsOpen: string, isOpen: boolean, press: () => void): TemplateResult {
    return html`<button class="word-button" type="button" aria-expanded=${isOpen} @click=${press}>
      ${isOpen ? wordsOpen : words}
    </button>`;
  }

  protected override updated(): void {
    const x = this.#cursor();
    if (x !== null && this.#drawing !== null && this.#geometry !== null) {
      this.#painter.moveCursor(this.#drawing, this.#geometry, x);
    }
  }

  /** Where the cursor stands, SI: within the run, whatever was asked. */
  #cursor(): number | null {
    const cursor = this.#drawing?.cursor;
    if (!cursor) return null;
    return Math.min(Math.max(this.cursorX ?? cursor.start, cursor.range[0]), cursor.range[1]);
  }

  #onKey(event: KeyboardEvent): void {
    const at = this.#cursor();
    const spec = this.#drawing?.cursor;
    if (at === null || !spec) return;
    const x = cursorKey(event.key, at, spec);
    if (x === null) return;
    event.preventDefault();
    this.#moveTo(x);
  }

  #onPointer(event: PointerEvent): void {
    const spec = this.#drawing?.cursor;
    if (!spec) return;
    const handle = event.currentTarget as HTMLElement;
    if (event.type === 'pointerdown') handle.setPointerCapture(event.pointerId);
    const { left, width } = handle.getBoundingClientRect();
    this.#moveTo(cursorAtPointer((event.clientX - left) / width, this.#drawing!.x, spec));
  }

  #moveTo(x: number): void {
    if (x === this.#cursor()) return;
    this.cursorX = x;
    this.dispatchEvent(new CursorMovedEvent(x));
  }

  readonly #keep = (): void => void this.dispatchEvent(new PencilEvent('keep'));
  readonly #rubOut = (): void => void this.dispatchEvent(new PencilEvent('rubOut'));

  readonly #showNumbers = (): void => void (this.numbersShown = !this.numbersShown);
  readonly #takeAlong = (): void => {
    void wanted(
      'The figure cannot be taken along: what does so could not be loaded.',
      () => import('./take/kp-take-along.js'),
    ).then(() => (this.taking = !this.taking));
  };

  #taken({ description, table }: Drawing): Taken {
    return {
      description,
      table,
      atBookWidth: (read) => {
        const result = this.#room.asOnPaper(() => read(this.#painter.svg));
        this.performUpdate();
        return result;
      },
    };
  }

  #fit(width: number, wideScreen: boolean): void {
    // Where the page is read from right to left its margin is at the left, and names stay inside.
    const wide = wideScreen && getComputedStyle(this).direction === 'ltr';
    const next = figureSize(width, wide ? 'wide' : 'narrow');
    if (next.width !== this.size?.width || next.layout !== this.size.layout) this.size = next;
  }

  #toBook(): void {
    this.size = { width: this.pair ? bookWidth.pair : bookWidth.single, layout: 'wide' };
    this.performUpdate();
  }

  #repaint(): void {
    this.requestUpdate('size');
  }
}

customElements.define('kp-figure', KpFigure);

declare global {
  interface HTMLElementTagNameMap {
    'kp-figure': KpFigure;
  }
}
