// The page 'The doubler': what a doubler does depends on what it is charged with, and when one looks.

import { html } from 'lit';
import '../components/figure/kp-figure.js';
import type { SentencePart } from '../components/number/kp-setup.js';
import { hands, spoutCaution } from '../entries/ceiling-notes.js';
import {
  chargesTable,
  doublerNumbers,
  doublerRows,
  firstWords,
  insideRows,
  laterWords,
  retortWords,
  type Doubling,
} from '../entries/the-doubler.js';
import { caution, source } from '../entries/words.js';
import { strengthByStill } from '../figures/strength-by-still.js';
import { timeline } from '../figures/timeline.js';
import { doublerQuestions, inventedDoubler, type DoublerQuestions } from '../state/doubler.js';
import { remembered } from '../state/memo.js';
import type { ParameterKey, Scenario } from '../state/scenario.js';
import { percent } from '../text/format.js';
import { NotebookPage } from './notebook-page.js';

const sentence: readonly SentencePart<ParameterKey>[] = [
  'A pot with ',
  { blank: 'chargeVolume' },
  ' at ',
  { blank: 'chargeStrength' },
  ', heated by ',
  { blank: 'heat' },
  ', blows its vapour through a doubler charged with ',
  { blank: 'doublerVolume' },
  ' at ',
  { blank: 'doublerStrength' },
  '.',
];

const doublerCaution = caution(
  html`While the kettle cools it draws: with no air let in it sucks the doubler’s liquid back through the pipe, or caves
  in. Let air in before the heat goes off. Never close a still, and keep its safety valves free. Follow local codes and
  the maker’s instructions.`,
);

const inventedNote = html`<p>
  Charge and still are invented: upright vessels of bare metal, the kettle a third larger than its charge, the doubler
  twice its own, with a drain at its brim that leads back to the kettle. The run ends when the spout falls to
  ${percent(inventedDoubler.endStrength)} by volume.
</p>`;

const modelNote = html`<p>
  Kettle and doubler are followed with their energy: vapour condenses in the cold doubler until it boils, its level and
  strength move, walls lose heat. The theory stands in the project’s documents.
</p>`;

const rumNote = html`<p>
  Common practice, no published source: the two charges, a tenth to a seventh of the pot’s, at some 30 and 70 to 75 %
  vol. Of two distillations one after the other Bryan Edwards (1793) gives the balance: two washes of 1200 gallons gave
  600 of low wines, and 530 of those 220 gallons of proof rum.
</p>`;

const retortSource = source(html`Edwards’ figures as quoted by F. H. Smith, Volatile Spirits (University of Florida).`);

export class TheDoubler extends NotebookPage<DoublerQuestions> {
  readonly #rows = remembered(doublerRows);
  readonly #inside = remembered(insideRows);
  readonly #numbers = remembered(doublerNumbers);

  constructor() {
    super('doublerStrength');
  }

  protected override questions(scenario: Scenario): DoublerQuestions {
    return doublerQuestions(scenario);
  }

  protected override render(): unknown {
    const now = this.answered;
    return html`<header class="page-head">
        <h1>The doubler</h1>
        <p class="promise">It gives back what you put in, and then it is one more stage.</p>
      </header>
      <section class="entry first-entry" aria-label="Strength with and without a doubler">
        ${this.setup(sentence)}
        ${
          now === undefined
            ? html`<div class="figure-to-come"></div>`
            : html`<kp-figure
                class="setup-figure"
                data-figure="doubler"
                .figure=${strengthByStill}
                .rows=${this.near.rows('doubler', () => this.#rows(now, this.units))}
              ></kp-figure>`
        }
        <aside class="notes beside-first">${hands} ${spoutCaution}</aside>
      </section>
      ${now === undefined ? '' : this.#explained(now)} ${this.foot()}`;
  }

  #explained(now: Doubling): unknown {
    const { units } = this;
    const numbers = this.#numbers(now);
    return html`<section class="entry prose" aria-label="First and later">
        ${firstWords(now, numbers, units, this.specs)} ${laterWords(now, numbers, units)}
        <p>
          That is why doublers are misunderstood. One who charges it with feints swears that it doubles the strength;
          one who charges it with water sees it do little. Both are right about their own charge, and both look at the
          first jar.
        </p>
        <aside class="notes">${inventedNote} ${modelNote}</aside>
      </section>
      <section class="entry prose" aria-labelledby="inside">
        <h2 id="inside">Inside the doubler</h2>
        <kp-figure
          data-figure="inside"
          .figure=${timeline}
          .rows=${this.near.rows('inside', () => this.#inside(now, units))}
        ></kp-figure>
      </section>
      <section class="entry prose" aria-labelledby="charged-with">
        <h2 id="charged-with">It depends on its charge</h2>
        ${chargesTable(now, numbers, units)}
        <p>
          <em>Try it.</em> Set the doubler’s charge to the strength of the wash and look at the first litre; then give
          it ten times as much of the same.
        </p>
      </section>
      <section class="entry prose" aria-labelledby="two-in-series">
        <h2 id="two-in-series">Two in series</h2>
        ${retortWords(now, units)}
        <aside class="notes">${rumNote} ${retortSource}</aside>
      </section>`;
  }
}

customElements.define('kp-the-doubler', TheDoubler);
