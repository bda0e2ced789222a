// 'The ceiling moves': the azeotrope against pressure. It has one number of its own, with its own ruler beside it; the
// page's ruler is left alone.

import { html, LitElement, nothing, type PropertyDeclarations, type PropertyValues } from 'lit';
import '../../components/figure/kp-figure.js';
import { send, type NumberFocus } from '../../components/number/events.js';
import '../../components/number/kp-blank.js';
import '../../components/number/kp-ruler.js';
import type { NumberFault } from '../../components/number/number-spec.js';
import type { Figure } from '../../figures/figure.js';
import { wanted } from '../../offline/wanted.js';
import type { DriftRows } from '../../rows/drift.js';
import { driftRows } from '../../state/drift-rows.js';
import { remembered } from '../../state/memo.js';
import { numberSpecs } from '../../state/number-specs.js';
import { correctionOf } from '../../text/messages.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import type { AzeotropeAt, DriftAnswer } from '../../worker/kinds/drift.js';
import { cautions } from '../cautions.js';
import * as words from './words.js';

const key = 'asked.pressure_Pa';

export class CeilingMoves extends LitElement {
  static override properties: PropertyDeclarations = {
    pressure: { attribute: false },
    units: { attribute: false },
    line: { attribute: false },
    drift: { state: true },
    here: { attribute: false },
    docked: { state: true },
    fault: { state: true },
  };
  /** The reader's, Pa. */
  declare pressure: number;
  declare units: UnitSystem;
  /** The line in lots; none until all have come. */
  declare line: readonly DriftAnswer[];
  /** Draws the line; loaded once there is one. */
  declare private drift: Figure<DriftRows> | undefined;
  /** The azeotrope at the reader's pressure, the latest answer. */
  declare here: AzeotropeAt | undefined;
  declare private docked: boolean;
  declare private fault: NumberFault | null;

  readonly #rows = remembered(driftRows);

  constructor() {
    super();
    this.line = [];
    this.docked = false;
    this.fault = null;
    this.addEventListener('kp-number-focus', this.#focused);
    this.addEventListener('kp-fault', ({ detail }) => (this.fault = detail.fault));
    this.addEventListener('kp-done', this.#done);
  }

  protected override createRenderRoot(): this {
    return this;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('line') && this.line.length > 0 && this.drift === undefined) void this.#loadFigure();
  }

  protected override render(): unknown {
    const { units, pressure, line, here } = this;
    const spec = numberSpecs(units)(key);
    const complete = line.length > 0;
    const wrong = this.fault === null ? null : correctionOf(spec, this.fault, pressure);
    return html`<section class="entry prose" aria-labelledby="ceiling-moves">
        <div class="prose">
          <h2 id="ceiling-moves">The ceiling moves</h2>
          <p class="setup-sentence own-sentence">
            Let the whole column stand under
            <span class="kept-together"
              ><kp-blank
                class="own-ruler"
                .spec=${spec}
                .value=${pressure}
                .correctionId=${'correction-moves'}
                ?current=${true}
              ></kp-blank
              >.</span
            >
          </p>
          <p class="correction" id="correction-moves" role="status">
            ${
              wrong === null
                ? nothing
                : html`<b>${wrong.draft}</b> ${wrong.says}
                    <button type="button" class="put-back" @click=${() => send(this, 'kp-put-back', { key })}>
                      ${wrong.putBack}
                    </button>`
            }
          </p>
          <kp-ruler class="own-ruler" .spec=${spec} .value=${pressure} ?docked=${this.docked}></kp-ruler>
          ${
            complete && this.drift !== undefined
              ? html`<kp-figure
                  class="setup-figure"
                  .figure=${this.drift}
                  .rows=${this.#rows(line, pressure, units)}
                ></kp-figure>`
              : html`<div class="drift-to-come"></div>`
          }
        </div>
        <aside class="notes">${cautions.vacuum} ${complete ? words.sourcesNote(line, units) : nothing}</aside>
      </section>
      <section class="entry prose after-words" aria-label="The moving ceiling in words">
        ${here === undefined ? nothing : words.hereWords(here, units)}
        ${complete ? words.endWords(line, units) : nothing}
        <aside class="notes">${here && words.errorNote(here, units)}</aside>
      </section>`;
  }

  async #loadFigure(): Promise<void> {
    const says = 'The figure of the azeotrope against pressure could not be loaded.';
    this.drift = (await wanted(says, () => import('../../figures/plots/azeotrope-drift.js'))).azeotropeDrift;
  }

  /** By touch the number's own ruler goes to the bottom edge and the figure above it. */
  #focused = (event: CustomEvent<NumberFocus>): void => {
    event.stopPropagation();
    if (!event.detail.touch || this.docked) return;
    this.docked = true;
    void this.updateComplete.then(() => this.querySelector('kp-figure')?.scrollIntoView({ block: 'start' }));
  };

  #done = (event: Event): void => {
    event.stopPropagation();
    this.docked = false;
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
  };
}

customElements.define('kp-ceiling-moves', CeilingMoves);

declare global {
  interface HTMLElementTagNameMap {
    'kp-ceiling-moves': CeilingMoves;
  }
}
