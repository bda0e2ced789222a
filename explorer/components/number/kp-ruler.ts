// The one ruler of a page, under the setup sentence: it holds the number in focus, shows where it stands
// between its limits and where it stood before, and moves it by drag or by a step button at each end.
// For hands only: the blank itself is what a keyboard and a screen reader use.

import { html, LitElement, nothing, svg, type PropertyDeclarations, type PropertyValues } from 'lit';
import { send } from './events.js';
import { onMoves } from './moves.js';
import { atShown, numberWithUnit, stepped, type NumberSpec } from './number-spec.js';
import { grouped } from '../../text/format.js';
import { rulerTicks } from './ruler-scale.js';

const inset_px = 50;
const tickLengths = { short: 6, middle: 9, named: 15 } as const;
const base_y = 34;

export class Ruler extends LitElement {
  static override properties: PropertyDeclarations = {
    spec: { attribute: false },
    value: { attribute: false },
    earlier: { attribute: false },
    docked: { type: Boolean, reflect: true },
    width: { state: true },
  };
  declare spec: NumberSpec;
  /** SI. */
  declare value: number;
  /** Where the number stood before, SI; null where nothing is kept. */
  declare earlier: number | null;
  /** At the bottom edge of a touch screen. */
  declare docked: boolean;
  declare private width: number;

  #watch: ResizeObserver | undefined;
  /** Sent and not yet answered. */
  #sent: number | undefined;

  constructor() {
    super();
    this.earlier = null;
    this.docked = false;
    this.width = 0;
  }

  protected override createRenderRoot(): this {
    return this;
  }

  protected override firstUpdated(): void {
    const body = this.querySelector('.ruler-body')!;
    const measure = (): void => {
      this.width = body.clientWidth;
    };
    measure();
    this.#watch = new ResizeObserver(measure);
    this.#watch.observe(body);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    const body = this.querySelector('.ruler-body');
    if (body) this.#watch?.observe(body);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#watch?.disconnect();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('value') || changed.has('spec')) this.#sent = undefined;
  }

  protected override render(): unknown {
    const { spec } = this;
    return html`<div class="ruler" aria-hidden="true" @mousedown=${keepFocus}>
      <p class="ruler-head">
        <button type="button" tabindex="-1" class="ruler-value" @click=${this.#type}>
          ${numberWithUnit(spec, this.value)}
        </button>
        <span>${spec.digits(spec.low)} to ${spec.digits(spec.high)}</span>
        ${
          this.docked
            ? html`<button type="button" tabindex="-1" class="ruler-done" @click=${this.#done}>Done</button>`
            : html`<span class="ruler-hint"></span>`
        }
      </p>
      <div class="ruler-body">
        ${this.#stepButton(-1)}
        <svg height="56" width=${this.width} @pointerdown=${this.#down}>
          ${this.width > 0 ? this.#scale() : nothing}
        </svg>
        ${this.#stepButton(1)}
      </div>
    </div>`;
  }

  #stepButton(way: 1 | -1): unknown {
    const sign = way > 0 ? svg`<path d="M9 15h12M15 9v12" />` : svg`<path d="M9 15h12" />`;
    return html`<button
      type="button"
      tabindex="-1"
      class=${way > 0 ? 'step up' : 'step down'}
      @click=${() => this.#send(stepped(this.spec, this.#sent ?? this.value, way))}
    >
      <svg width="32" height="32" viewBox="-1 -1 32 32">
        <circle cx="15" cy="15" r="15" />
        ${sign}
      </svg>
    </button>`;
  }

  #scale(): unknown {
    const { spec, width } = this;
    const at = (shown: number): number => this.#place(shown);
    const ticks = rulerTicks(spec.low, spec.high, spec.step, width - 2 * inset_px);
    const here = at(spec.toShown(this.value));
    const before = this.earlier === null ? null : spec.toShown(this.earlier);
    return svg`
      <path class="ruler-line" d=${`M${inset_px} ${base_y}H${width - inset_px}`} />
      ${ticks.map(({ value, length }) => svg`<path class="ruler-line" d=${`M${crisp(at(value))} ${base_y}v${-tickLengths[length]}`} />`)}
      ${ticks
        .filter(({ length }) => length === 'named')
        .map(({ value }) => svg`<text x=${at(value)} y="53" text-anchor="middle">${grouped(String(value))}</text>`)}
      ${
        before === null || Math.abs(at(before) - here) < 1
          ? nothing
          : svg`<path class="ruler-before" d=${`M${crisp(at(before))} ${base_y}v-21`} />
            <text class="ruler-before-name" x=${at(before)} y="9" text-anchor="middle">${spec.digits(before)}</text>`
      }
      <path class="ruler-drop" transform=${`translate(${here} ${base_y - 3})`} d=${drop} />`;
  }

  #place(shown: number): number {
    const { low, high } = this.spec;
    const share = Math.min(1, Math.max(0, (shown - low) / (high - low)));
    return inset_px + share * (this.width - 2 * inset_px);
  }

  #send(value: number): void {
    if (value === (this.#sent ?? this.value)) return;
    this.#sent = value;
    send(this, 'kp-change', { key: this.spec.key, value });
  }

  /** The drop goes to the hand at once, on the grid of steps, and follows it. */
  #down = (event: PointerEvent): void => {
    if (event.button !== 0) return;
    const track = event.currentTarget as SVGElement;
    track.setPointerCapture(event.pointerId);
    const { left } = track.getBoundingClientRect();
    const follow = (move: PointerEvent): void => {
      const { low, high, step } = this.spec;
      const x = move.clientX - left - inset_px;
      const shown = low + (x / (this.width - 2 * inset_px)) * (high - low);
      this.#send(atShown(this.spec, Math.round(shown / step) * step));
    };
    const stop = new AbortController();
    onMoves(track, stop.signal, follow);
    for (const end of ['pointerup', 'pointercancel'] as const) {
      track.addEventListener(end, () => stop.abort(), { signal: stop.signal });
    }
    follow(event);
  };

  #done = (): void => send(this, 'kp-done', null);
  #type = (): void => send(this, 'kp-type', { key: this.spec.key });
}

/** A drop of ink whose tip touches the base line. */
const drop = 'M0 0C-2.2-6.3-7.5-8.6-7.5-14A7.5 7.5 0 1 1 7.5-14C7.5-8.6 2.2-6.3 0 0Z';

/** A press on the ruler leaves the focus with the number. */
function keepFocus(event: Event): void {
  event.preventDefault();
}

function crisp(x: number): number {
  return Math.round(x - 0.5) + 0.5;
}

customElements.define('kp-ruler', Ruler);

declare global {
  interface HTMLElementTagNameMap {
    'kp-ruler': Ruler;
  }
}
