// The page 'The ceiling': why a column stops short of pure, with the reader's own charge and still.

import { html, nothing, type PropertyDeclarations, type PropertyValues } from 'lit';
import { massFractionFromMoleFraction } from '#lib/index.js';
import '../components/figure/kp-figure.js';
import type { SentencePart } from '../components/number/kp-setup.js';
import type { Later } from '../entries/ceiling-later.js';
import type { Overlay, Overlays } from '../entries/ceiling-overlays.js';
import { runRows, runWords } from '../entries/the-run.js';
import { azeotropeWords, platesAtWork, stairWords, strangersWords, thermometerWords } from '../entries/the-steps.js';
import * as notes from '../entries/ceiling-notes.js';
import { boilingDiagram } from '../figures/boiling-diagram.js';
import { lastCorner } from '../figures/last-corner.js';
import { runHistory } from '../figures/run-history.js';
import { xyDiagram } from '../figures/xy-diagram.js';
import { ceilingQuestions, holdUp, type CeilingQuestions } from '../state/derive.js';
import * as rows from '../state/equilibrium-rows.js';
import { remembered } from '../state/memo.js';
import { cursorPosition, cursorX, turned, type RunCursor } from '../state/run-cursor.js';
import { readAt } from '../state/run-results.js';
import type { ParameterKey, Scenario } from '../state/scenario.js';
import { NotebookPage, type Answered } from './notebook-page.js';

type Ceiling = Answered<CeilingQuestions>;

const sentence: readonly SentencePart<ParameterKey>[] = [
  'A charge of ',
  { blank: 'chargeVolume' },
  ' at ',
  { blank: 'chargeStrength' },
  ' in a kettle with ',
  { blank: 'plates' },
  ', each ',
  { blank: 'efficiency' },
  ' efficient, reflux ',
  { blank: 'reflux' },
  ', heated by ',
  { blank: 'heat' },
  ', in air of ',
  { blank: 'pressure' },
  '.',
];

const overlayWords = {
  measured: ['Lay the measured points over it', 'Rub out the measured points'],
  models: ['Compare the models', 'Rub out the other models'],
} as const;

/** Room for the first figure, so that nothing moves when it comes. */
const toCome = html`<div class="figure-to-come"></div>`;
/** After the first answer the figures have come by then, ms. */
const afterFigures_ms = 1000;

export class TheCeiling extends NotebookPage<CeilingQuestions> {
  static override properties: PropertyDeclarations = {
    cursor: { state: true },
    showsRaoult: { state: true },
    laid: { state: true },
    overlays: { state: true },
    later: { state: true },
  };
  declare private cursor: RunCursor;
  declare private showsRaoult: boolean;
  declare private laid: readonly Overlay[];
  declare private overlays: Overlays | undefined;
  declare private later: Later | undefined;

  readonly #runRows = remembered(runRows);
  readonly #curve = remembered(rows.curveRows);
  readonly #raoult = remembered(rows.curveRows);
  readonly #ideal = remembered(rows.idealStairRows);
  readonly #plates = remembered(rows.plateStairRows);
  readonly #boiling = remembered(rows.boilingDiagramRows);

  constructor() {
    super('plates');
    this.cursor = { along: 'volume', x: null };
    this.showsRaoult = false;
    this.laid = [];
  }

  /** What asks more comes after the figures, its code too. */
  protected override updated(changed: PropertyValues): void {
    if (!changed.has('answered') || changed.get('answered') !== undefined) return;
    const late = (): unknown => import('../entries/ceiling-later.js').then((later) => (this.later = later));
    setTimeout(late, afterFigures_ms);
  }

  async #lay(what: Overlay): Promise<void> {
    this.overlays ??= await import('../entries/ceiling-overlays.js');
    this.laid = this.laid.includes(what) ? this.laid.filter((one) => one !== what) : [...this.laid, what];
  }

  #layButton(what: Overlay): unknown {
    const [words, rubOut] = overlayWords[what];
    return html`<button type="button" class="word-button" @click=${() => void this.#lay(what)}>
      ${this.laid.includes(what) ? rubOut : words}
    </button>`;
  }

  protected override questions(scenario: Scenario): CeilingQuestions {
    return ceilingQuestions(scenario);
  }

  protected override render(): unknown {
    const now = this.answered;
    return html`<header class="page-head">
        <h1>The ceiling</h1>
        <p class="promise">Why plates top out near 96 % vol, and how close yours can come.</p>
      </header>
      <section class="entry first-entry" aria-label="The run">
        ${this.setup(sentence)} ${now === undefined ? toCome : this.#history(now)}
        <aside class="notes beside-first">${notes.hands} ${notes.spoutCaution}</aside>
      </section>
      ${now === undefined ? nothing : this.#explained(now)} ${this.foot()}`;
  }

  #history(now: Ceiling): unknown {
    const data = this.near.rows('run', () =>
      this.#runRows(now, this.pencils, this.cursor.along, this.units, this.specs),
    );
    return html`<kp-figure
        class="setup-figure"
        data-figure="run"
        .figure=${runHistory}
        .rows=${data}
        .cursorX=${cursorX(this.cursor, now.answers.run.solution)}
        .pencils=${this.pencils.length}
        @cursor-moved=${(event: CustomEvent<{ x: number }>) => (this.cursor = { ...this.cursor, x: event.detail.x })}
      ></kp-figure>
      <p class="words-to-press">
        <button
          type="button"
          class="word-button"
          @click=${() => (this.cursor = turned(this.cursor, now.answers.run.solution))}
        >
          ${this.cursor.along === 'volume' ? 'Draw it against time' : 'Draw it against what is collected'}
        </button>
      </p>`;
  }

  #explained(now: Ceiling): unknown {
    const { units, specs } = this;
    const { equilibrium } = now.answers;
    const { azeotrope } = equilibrium;
    const pressure = rows.pressureInWords(now.scenario.pressure, units.pressure);
    const mass = azeotrope && 100 * massFractionFromMoleFraction(azeotrope.moleFraction);
    return html`<section class="entry prose" aria-label="The run in words">
        ${runWords(now, this.pencils.at(-1), units, specs)}
        <aside class="notes">${notes.inventedStill(holdUp(now.scenario).plate_mol)}</aside>
      </section>
      <section class="entry prose" aria-labelledby="why">
        <h2 id="why">Why the steps stop</h2>
        ${stairWords(now, this.blank('chargeStrength'), units)}
        <aside class="notes">${notes.modelSource(equilibrium.model)}</aside>
      </section>
      ${this.#idealStair(now)}
      <section class="entry prose after-words" aria-label="The azeotrope">
        ${azeotropeWords(now, mass, pressure, units)}
        <aside class="notes">${notes.stairNote} ${notes.azeotropeSource(azeotrope, pressure)}</aside>
      </section>
      <kp-ceiling-moves
        .solver=${this.solver}
        .pressure=${this.scenario.ceilingPressure}
        .units=${units}
      ></kp-ceiling-moves>
      <section class="entry prose" aria-labelledby="strangers">
        <h2 id="strangers">A gift and a wall</h2>
        ${strangersWords(now, units)}
      </section>
      ${this.#atWork(now)} ${this.later?.lastEntries(now, this.solver, units)}`;
  }

  /** Ideal steps from the charge, and the last corner, with Raoult's law if wanted. */
  #idealStair(now: Ceiling): unknown {
    const { equilibrium, raoult } = now.answers;
    const strangers = this.showsRaoult ? this.#raoult(raoult.slice) : null;
    const { chargeStrength, pressure } = now.scenario;
    const curve = this.#curve(equilibrium.slice);
    const data = this.#ideal(curve, equilibrium, strangers, chargeStrength, pressure, this.units);
    const over = this.overlays?.overStaircase(data, this.laid, now.answers, pressure, this.units);
    return html`<section class="entry after-words" aria-label="The staircase">
      <div class="figure-pair wide">
        <kp-figure
          data-figure="ideal"
          .figure=${over?.xy.figure ?? xyDiagram}
          .rows=${over?.xy.rows ?? data}
          pair
        ></kp-figure>
        <kp-figure .figure=${over?.corner.figure ?? lastCorner} .rows=${over?.corner.rows ?? data} pair></kp-figure>
      </div>
      <p class="words-to-press">
        ${this.#layButton('measured')} ${this.#layButton('models')}
        <button type="button" class="word-button" @click=${() => (this.showsRaoult = !this.showsRaoult)}>
          ${this.showsRaoult ? 'Rub out Raoult’s law' : 'Draw Raoult’s law too'}
        </button>
      </p>
      ${this.overlays?.notes(this.laid, pressure, this.units)}
      ${this.overlays?.modelWords(this.laid, now.answers, this.units)}
    </section>`;
  }

  /** The reader's own plates, kettle and head at the cursor's moment. */
  #atWork(now: Ceiling): unknown {
    const { units, specs } = this;
    const { equilibrium, run } = now.answers;
    const { scenario } = now;
    const at = cursorPosition(this.cursor, run.solution);
    const stair = this.near.rows('at-work', () =>
      this.#plates(this.#curve(equilibrium.slice), equilibrium, run.solution, scenario, at, units),
    );
    const boiling = this.near.rows('boiling', () => {
      const kettle = readAt(run.solution.kettleMoleFraction, at);
      const head = readAt(run.solution.spoutMoleFraction, at);
      return this.#boiling(this.#curve(equilibrium.slice), equilibrium, scenario.pressure, kettle, head, units);
    });
    const overStair = this.overlays?.overPlates(stair, this.laid);
    const overBoiling = this.overlays?.overBoiling(boiling, this.laid);
    return html`<section class="entry prose" aria-labelledby="at-work">
        <h2 id="at-work">Your plates at work</h2>
        ${platesAtWork(now, at, units, specs)} ${thermometerWords(now, at, units)}
        <aside class="notes">${notes.platesNote} ${notes.kettleCaution}</aside>
      </section>
      <section class="entry after-words" aria-label="Your plates and the boil">
        <div class="figure-pair wide">
          <kp-figure
            data-figure="at-work"
            .figure=${overStair?.figure ?? xyDiagram}
            .rows=${overStair?.rows ?? stair}
            pair
          ></kp-figure>
          <kp-figure
            data-figure="boiling"
            .figure=${overBoiling?.figure ?? boilingDiagram}
            .rows=${overBoiling?.rows ?? boiling}
            pair
          ></kp-figure>
        </div>
        <p class="words-to-press">${this.#layButton('measured')}</p>
        ${this.overlays?.notes(this.laid, scenario.pressure, units)}
      </section>`;
  }
}

customElements.define('kp-the-ceiling', TheCeiling);
