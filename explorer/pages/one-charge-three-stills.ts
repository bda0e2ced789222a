// The page 'One charge, three stills': the same charge in a bare pot, a pot with a doubler and a plated
// column, on common axes, and what each brings over above a strength.

import { html, nothing } from 'lit';
import { fromSI } from '#lib/index.js';
import '../components/answer/kp-answer.js';
import '../components/figure/kp-figure.js';
import type { SentencePart } from '../components/number/kp-setup.js';
import { hands, spoutCaution } from '../entries/ceiling-notes.js';
import {
  columnLabel,
  doublerWords,
  endedByAlcohol,
  heatRatio,
  judgedRatio,
  recoveredTable,
  recoveredWords,
  resultsOf,
  stillMultiples,
  stillRows,
} from '../entries/three-stills.js';
import type { Stills } from '../entries/three-stills.js';
import { caution } from '../entries/words.js';
import { invented } from '../state/derive.js';
import { remembered } from '../state/memo.js';
import type { ParameterKey, Scenario } from '../state/scenario.js';
import { inventedStills, mostOwnStills, stillsQuestions } from '../state/three-stills.js';
import type { OwnStill, StillsQuestions } from '../state/three-stills.js';
import { fixed, joined, percent } from '../text/format.js';
import { NotebookPage } from './notebook-page.js';

const sentence: readonly SentencePart<ParameterKey>[] = [
  'The same ',
  { blank: 'chargeVolume' },
  ' at ',
  { blank: 'chargeStrength' },
  ', heated by ',
  { blank: 'heat' },
  ', in a bare pot, in a pot with a doubler, and under ',
  { blank: 'plates' },
  ', each ',
  { blank: 'efficiency' },
  ' efficient, reflux ',
  { blank: 'reflux' },
  '. Wanted is what comes over above ',
  { blank: 'wantedStrength' },
  '.',
];

const minutes = (seconds: number): string => joined(fixed(fromSI(seconds, 'min'), 0), 'min');

const runNote = (air: string): unknown =>
  html`<p>
    Charge and stills are invented for this page, of bare metal that loses heat; the air is at ${air}. Every run begins
    cold and ends when ${percent(inventedStills.alcoholLeft)} of all alcohol is left. The column first runs
    ${minutes(invented.totalReflux_s)} at total reflux.
  </p>`;

const kettleCaution = caution(
  html`A weak kettle is a hot one: what is left can scald, and the level has sunk. Never let it run below its heating
  surface. Follow local codes and the maker’s instructions.`,
);

export class OneChargeThreeStills extends NotebookPage<StillsQuestions> {
  readonly #rows = remembered(stillRows);
  readonly #results = remembered(resultsOf);
  #own: readonly OwnStill[] = [];

  constructor() {
    super('wantedStrength');
  }

  protected override questions(scenario: Scenario): StillsQuestions {
    return stillsQuestions(scenario, this.#own);
  }

  protected override render(): unknown {
    const now = this.answered;
    return html`<header class="page-head">
        <h1>One charge, three stills</h1>
        <p class="promise">What a doubler and a column add, and what they ask for it.</p>
      </header>
      <section class="entry first-entry" aria-label="Strength by still">
        ${this.setup(sentence)}
        ${
          now === undefined
            ? html`<div class="figure-to-come"></div>`
            : html`<kp-figure
                  class="setup-figure"
                  data-figure="stills"
                  .figure=${stillMultiples}
                  .rows=${this.near.rows('stills', () => this.#rows(now, this.#own, this.units, this.specs))}
                ></kp-figure>
                ${this.#ownStills()}`
        }
        <aside class="notes beside-first">${hands} ${spoutCaution}</aside>
      </section>
      ${now === undefined ? nothing : this.#explained(now)} ${this.foot()}`;
  }

  /** Words to press: the column as it stands kept beside the others, and those kept taken away. */
  #ownStills(): unknown {
    const full = this.#own.length >= mostOwnStills;
    return html`<div class="words-to-press own-stills">
      <button class="word-button" type="button" ?disabled=${full} @click=${this.#keepColumn}>
        Set this column beside the others
      </button>
      ${this.#own.map(
        (still, index) =>
          html`<button class="word-button" type="button" @click=${() => this.#takeAway(index)}>
            Take away ${columnLabel(still, this.specs)}
          </button>`,
      )}
    </div>`;
  }

  #keepColumn = (): void => {
    const { plates, efficiency, reflux } = this.scenario;
    this.#stand([...this.#own, { plates, efficiency, reflux }]);
  };

  #takeAway(index: number): void {
    this.#stand(this.#own.filter((_still, at) => at !== index));
  }

  #stand(own: readonly OwnStill[]): void {
    this.#own = own;
    this.ask();
  }

  #explained(now: Stills): unknown {
    const { units } = this;
    const results = this.#results(now);
    return html`<section class="entry prose" aria-label="What comes over">
        ${recoveredWords(now, results, units)} ${endedByAlcohol(now) ? this.#question(heatRatio(results)) : nothing}
        <aside class="notes">${runNote(units.pressure.withUnit(now.scenario.pressure))}</aside>
      </section>
      <section class="entry prose" aria-labelledby="what-each-makes">
        <h2 id="what-each-makes">What each makes of it</h2>
        ${recoveredTable(now, results, this.#own, units, this.specs)}
        <aside class="notes">${kettleCaution}</aside>
      </section>
      <section class="entry prose" aria-labelledby="the-doubler-here">
        <h2 id="the-doubler-here">The doubler, honestly</h2>
        ${doublerWords(now, results, units, this.blank('doublerVolume'), this.blank('doublerStrength'))}
      </section>`;
  }

  #question(ratio: number): unknown {
    return html`<kp-answer
      .lead=${'To bring over the same alcohol the column takes'}
      .tail=${'times the pot’s heat.'}
      .label=${'the column’s heat as a multiple of the pot’s'}
      .judge=${(given: number) => judgedRatio(given, ratio)}
      .subject=${ratio}
    ></kp-answer>`;
  }
}

customElements.define('kp-one-charge-three-stills', OneChargeThreeStills);
