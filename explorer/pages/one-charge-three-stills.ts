// The page 'One charge, three stills': the same charge in a bare pot, a pot with a doubler and a plated
// column, on common axes, and what each brings over above a strength.

import { html, nothing } from 'lit';
import { fromSI } from '#lib/index.js';
import '../components/answer/kp-answer.js';
import '../components/figure/kp-figure.js';
import type { SentencePart } from '../components/number/kp-setup.js';
import { hands, spoutCaution } from '../entries/ceiling-notes.js';
import {
  doublerWords,
  endedByAlcohol,
  heatingUpWords,
  heatRatio,
  judgedRatio,
  recoveredTable,
  recoveredWords,
  resultsOf,
  stillRows,
  strengthByStill,
} from '../entries/three-stills.js';
import type { Stills } from '../entries/three-stills.js';
import { caution, source } from '../entries/words.js';
import { invented } from '../state/derive.js';
import { remembered } from '../state/memo.js';
import type { ParameterKey, Scenario } from '../state/scenario.js';
import { inventedStills, stillsQuestions, type StillsQuestions } from '../state/three-stills.js';
import { fixed, joined, percent } from '../text/format.js';
import { NotebookPage } from './notebook-page.js';

const sentence: readonly SentencePart<ParameterKey>[] = [
  'The same ',
  { blank: 'chargeVolume' },
  ' at ',
  { blank: 'chargeStrength' },
  ', heated by ',
  { blank: 'heat' },
  ', in a bare pot, in a pot with a doubler to which ',
  { blank: 'doublerReflux' },
  ' runs back, and under ',
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
    Charge and stills are invented for this page; the air is at ${air}. Each run ends when
    ${percent(inventedStills.alcoholLeft)} of the alcohol is left. The column first runs
    ${minutes(invented.totalReflux_s)} at total reflux and holds liquid as on the page before; pot and doubler give from
    the first vapour on, and the doubler holds a tenth of what one of the column’s plates does.
  </p>`;

const kettleCaution = caution(
  html`A weak kettle is a hot one: what is left can scald, and the level has sunk. Never let it run below its heating
  surface. Follow local codes and the maker’s instructions.`,
);

const rayleigh = source(html`The bare pot by Lord Rayleigh’s equation (Phil. Mag. 4, 1902, 521).`);

export class OneChargeThreeStills extends NotebookPage<StillsQuestions> {
  readonly #rows = remembered(stillRows);
  readonly #results = remembered(resultsOf);

  constructor() {
    super('wantedStrength');
  }

  protected override questions(scenario: Scenario): StillsQuestions {
    return stillsQuestions(scenario);
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
                .figure=${strengthByStill}
                .rows=${this.near.rows('stills', () => this.#rows(now, this.units, this.specs))}
              ></kp-figure>`
        }
        <aside class="notes beside-first">${hands} ${spoutCaution}</aside>
      </section>
      ${now === undefined ? nothing : this.#explained(now)} ${this.foot()}`;
  }

  #explained(now: Stills): unknown {
    const { units } = this;
    const results = this.#results(now);
    return html`<section class="entry prose" aria-label="What comes over">
        ${recoveredWords(now, results, units)} ${endedByAlcohol(now) ? this.#question(heatRatio(results)) : nothing}
        <aside class="notes">${runNote(units.pressure.withUnit(now.scenario.pressure))} ${rayleigh}</aside>
      </section>
      <section class="entry prose" aria-labelledby="what-each-makes">
        <h2 id="what-each-makes">What each makes of it</h2>
        ${recoveredTable(now, results, units)}
        <aside class="notes">${heatingUpWords(now, units)} ${kettleCaution}</aside>
      </section>
      <section class="entry prose" aria-labelledby="the-doubler-here">
        <h2 id="the-doubler-here">The doubler, honestly</h2>
        ${doublerWords(now, this.blank('doublerReflux'))}
      </section>`;
  }

  #question(ratio: number): unknown {
    return html`<kp-answer
      .lead=${'To bring over the same alcohol the column boils with'}
      .tail=${'times the pot’s heat.'}
      .label=${'the column’s heat as a multiple of the pot’s'}
      .judge=${(given: number) => judgedRatio(given, ratio)}
      .subject=${ratio}
    ></kp-answer>`;
  }
}

customElements.define('kp-one-charge-three-stills', OneChargeThreeStills);
