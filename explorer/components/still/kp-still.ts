// <kp-still>: the picture of a still at a moment. Give it the still, the moment, the units and the function that draws;
// it follows the moment in place and has its numbers as a table. It moves only when the moment does.

import { html, LitElement, nothing } from 'lit';
import type { PropertyDeclarations, PropertyValues, TemplateResult } from 'lit';
import type { PicturedStill, PictureSize } from '../../figures/still/layout.js';
import type { StillPicture } from '../../figures/still/picture.js';
import type { StillMoment } from '../../rows/still-moment.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import { numbersTable } from '../figure/numbers-table.js';
import { Room } from '../figure/room.js';
import { StillPainter } from './still-painter.js';

/** A pure function from a still and its moment to a picture. */
export type DrawStill = (
  still: PicturedStill,
  moment: StillMoment,
  units: UnitSystem,
  size: PictureSize,
) => StillPicture;

const noMotion = '(prefers-reduced-motion: reduce)';
/** Width on paper, whatever screen it came from. */
const bookWidth = 608;
/** Narrower than this it has the words of a phone. */
const narrowest = 520;

export class KpStill extends LitElement {
  static override properties: PropertyDeclarations = {
    draw: { attribute: false },
    still: { attribute: false },
    moment: { attribute: false },
    units: { attribute: false },
    size: { state: true },
    numbersShown: { state: true },
  };

  declare draw: DrawStill | null;
  declare still: PicturedStill | null;
  declare moment: StillMoment | null;
  declare units: UnitSystem | null;
  declare size: PictureSize | null;
  declare numbersShown: boolean;

  readonly #painter = new StillPainter();
  #picture: StillPicture | null = null;

  constructor() {
    super();
    new Room(this, noMotion, {
      onScreen: (width, calm) => this.#fit(width, calm),
      onPaper: () => {
        this.#fit(bookWidth, true);
        this.performUpdate();
      },
    });
    this.draw = null;
    this.still = null;
    this.moment = null;
    this.units = null;
    this.size = null;
    this.numbersShown = false;
  }

  protected override createRenderRoot(): this {
    return this;
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.size === 1 && changed.has('numbersShown')) return;
    const { draw, still, moment, units, size } = this;
    if (draw === null || still === null || moment === null || units === null || size === null) return;
    this.#picture = draw(still, moment, units, size);
    this.#painter.paint(this.#picture, size.layout);
  }

  protected override render(): TemplateResult | typeof nothing {
    const picture = this.#picture;
    if (picture === null) return nothing;
    return html`<figure role="img" aria-label=${picture.description}>${this.#painter.svg}</figure>
      <p class="still-warnings">${picture.warnings.join(' ')}</p>
      <p class="still-note">${picture.note}</p>
      <div class="words-to-press">
        <button
          class="word-button"
          type="button"
          aria-expanded=${this.numbersShown}
          @click=${() => (this.numbersShown = !this.numbersShown)}
        >
          ${this.numbersShown ? 'Put the numbers away' : 'Show the numbers'}
        </button>
      </div>
      ${this.numbersShown ? numbersTable(picture.table()) : nothing}`;
  }

  #fit(width: number, steady: boolean): void {
    const layout = width >= narrowest ? 'wide' : 'narrow';
    const { size } = this;
    if (size?.width === width && size.layout === layout && size.steady === steady) return;
    this.size = { width, layout, steady };
  }
}

customElements.define('kp-still', KpStill);

declare global {
  interface HTMLElementTagNameMap {
    'kp-still': KpStill;
  }
}
