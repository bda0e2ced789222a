// A page of the course: guess, try, why, check, own words, in this order, from a lesson's data. What has been
// drawn and written is kept in this browser; a leader's view adds answers and notes, and prints worksheets.

import { html, nothing, type PropertyDeclarations } from 'lit';
import '../../components/figure/kp-figure.js';
import { paragraphs, prose } from '../../components/term/prose.js';
import '../../entries/guess/kp-guess-entry.js';
import '../../entries/own-words/kp-own-words.js';
import '../../entries/question/kp-question-entry.js';
import type { Asks, Given } from '../../entries/asking.js';
import { caution, source } from '../../entries/words.js';
import { keepWork, keptWork, type LessonWork } from '../../state/course-work.js';
import type { Scenario } from '../../state/scenario.js';
import '../../styles/course.css';
import { NotebookPage, type Answered } from '../notebook-page.js';
import { leaderLooksOn, setLeaderLooksOn } from './leader.js';
import { leadersAnswers, leadersFound, leadersHead, type Paper } from './leaders-view.js';
import type { Lesson, LessonNumbers, ShownFigure } from './lesson.js';

export class LessonPage extends NotebookPage<Asks> {
  static override properties: PropertyDeclarations = {
    lesson: { attribute: false },
    work: { state: true },
    leads: { state: true },
    paper: { state: true },
  };
  declare lesson: Lesson;
  declare private work: LessonWork;
  declare private leads: boolean;
  /** What is being printed; null while nothing is. */
  declare private paper: Paper | null;

  #asked = '';
  #questions: Asks = {};

  constructor(lesson: Lesson) {
    super(lesson.inFocus);
    this.lesson = lesson;
    this.work = keptWork(lesson.name);
    this.leads = false;
    this.paper = null;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.leads = leaderLooksOn();
    this.addEventListener('kp-guess', this.#guessed);
    this.addEventListener('kp-answered', this.#wrote);
    this.addEventListener('kp-own-words', this.#said);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.removeEventListener('kp-guess', this.#guessed);
    this.removeEventListener('kp-answered', this.#wrote);
    this.removeEventListener('kp-own-words', this.#said);
  }

  protected override questions(scenario: Scenario): Asks {
    const asked = this.lesson.asks(scenario);
    const text = JSON.stringify(asked);
    if (text === this.#asked) return this.#questions;
    this.#asked = text;
    this.#questions = asked;
    return asked;
  }

  protected override render(): unknown {
    const { lesson } = this;
    const now = this.answered && this.#given(this.answered);
    const numbers =
      now &&
      lesson.numbers(
        now,
        this.pencils.map((one) => this.#given(one)),
      );
    this.dataset.paper = this.paper ?? '';
    return html`<header class="page-head">
        <h1>${lesson.title}</h1>
        <p class="promise">${lesson.promise}</p>
      </header>
      <section class="entry prose" aria-labelledby="guess-first">
        <p class="goal"><b>After this page you can</b> ${prose(lesson.goal)}</p>
        <h2 id="guess-first">Guess first</h2>
        ${paragraphs(lesson.opening)}
        <aside class="notes beside-all">${this.#switch()}</aside>
      </section>
      ${this.#guess()} ${this.#tries(numbers)} ${numbers === undefined ? nothing : this.#why(numbers)} ${this.#check()}
      ${this.#ownWords()} ${this.foot()}`;
  }

  #given({ scenario, answers }: Answered<Asks>): Given<Asks> {
    return { scenario, answers, units: this.units };
  }

  #guess(): unknown {
    const { paper } = this;
    const { points } = this.work.guess;
    const state = paper === null ? this.work.guess : { points, answered: paper === 'answers' };
    return html`<section class="entry after-words guess" aria-label="Your guess">
      <kp-guess-entry
        .name=${this.lesson.guess}
        .state=${paper === 'worksheet' ? { points: [], answered: false } : state}
        .solver=${this.solver}
        .scenario=${this.scenario}
        .units=${this.units}
      ></kp-guess-entry>
    </section>`;
  }

  #tries(numbers: LessonNumbers | undefined): unknown {
    const { lesson } = this;
    return html`<section class="entry tries" aria-labelledby="then-try">
        <h2 id="then-try">Then try</h2>
        ${this.setup(lesson.sentence)}
        ${numbers === undefined ? html`<div class="figure-to-come"></div>` : this.#figures(numbers.tries.figures)}
        <aside class="notes beside-all">${caution(lesson.caution)}</aside>
      </section>
      <section class="entry prose after-words steps-entry" aria-label="What to do">
        ${numbers === undefined ? nothing : html`<div class="result-words">${paragraphs(numbers.tries.words)}</div>`}
        <ol class="steps">
          ${lesson.steps.map((step) => html`<li>${prose(step)}</li>`)}
        </ol>
        ${this.leads ? leadersFound(lesson) : nothing}
        <aside class="notes"><p>${prose(lesson.assumed)}</p></aside>
      </section>`;
  }

  /** One figure under the ruler, or a pair side by side. */
  #figures(shown: readonly ShownFigure[]): unknown {
    const pair = shown.length > 1;
    const drawn = shown.map(
      ({ figure, rows, keeps }) =>
        html`<kp-figure
          class=${pair ? '' : 'setup-figure'}
          .figure=${figure}
          .rows=${rows}
          .pencils=${keeps ? this.pencils.length : -1}
          ?pair=${pair}
        ></kp-figure>`,
    );
    return pair ? html`<div class="figure-pair wide setup-figure">${drawn}</div>` : drawn;
  }

  #why({ why, whyFigure, sayings, source: words }: LessonNumbers): unknown {
    return html`<section class="entry prose not-on-worksheet" aria-labelledby="why">
        <h2 id="why">Why</h2>
        ${paragraphs(why)}
        <aside class="notes">${source(words)}</aside>
      </section>
      ${
        whyFigure === null
          ? nothing
          : html`<section class="entry after-words not-on-worksheet" aria-label="The explanation drawn">
              <kp-figure class="why-figure" .figure=${whyFigure.figure} .rows=${whyFigure.rows} pair></kp-figure>
            </section>`
      }
      <section class="entry prose after-words not-on-worksheet" aria-label="It is said">
        ${sayings.map(
          ({ says, answer }) =>
            html`<p class="saying"><b>‘${says}’</b></p>
              <p>${prose(answer)}</p>`,
        )}
      </section>`;
  }

  #check(): unknown {
    return html`<section class="entry prose" aria-labelledby="check">
      <h2 id="check">Check yourself</h2>
      ${this.lesson.questions.map(
        (name) =>
          html`<kp-question-entry
            .name=${name}
            .written=${this.paper === null ? (this.work.written[name] ?? '') : ''}
            .leads=${this.leads}
            .solver=${this.solver}
            .scenario=${this.scenario}
            .units=${this.units}
            data-question=${name}
          ></kp-question-entry>`,
      )}
    </section>`;
  }

  #ownWords(): unknown {
    const { prompt, ours } = this.lesson.ownWords;
    return html`<section class="entry prose" aria-labelledby="own-words">
      <h2 id="own-words">Say it in your own words</h2>
      <kp-own-words
        .prompt=${prompt}
        .ours=${ours}
        .text=${this.paper === null ? this.work.ownWords : ''}
        .leads=${this.leads}
      ></kp-own-words>
      ${this.leads ? leadersAnswers(this.lesson) : nothing}
      <aside class="notes on-screen">
        <p>What you draw and write here is kept in this browser and sent nowhere.</p>
      </aside>
    </section>`;
  }

  #switch(): unknown {
    return leadersHead(this.lesson, this.leads, {
      turn: () => {
        this.leads = !this.leads;
        setLeaderLooksOn(this.leads);
      },
      print: (paper) => void this.#print(paper),
    });
  }

  /** Prints a worksheet to write on, or the same with answers and notes. */
  async #print(paper: Paper): Promise<void> {
    this.paper = paper;
    this.leads = paper === 'answers';
    await this.updateComplete;
    await this.querySelector('kp-guess-entry')!.updateComplete;
    await this.querySelector('kp-guess')?.updateComplete;
    print();
    this.paper = null;
    this.leads = leaderLooksOn();
  }

  #keep(change: Partial<LessonWork>): void {
    if (this.paper !== null) return;
    this.work = { ...this.work, ...change };
    keepWork(this.lesson.name, this.work);
  }

  #guessed = ({ detail }: HTMLElementEventMap['kp-guess']): void => this.#keep({ guess: detail });

  #wrote = ({ detail, target }: HTMLElementEventMap['kp-answered']): void => {
    const name = (target as Element).closest<HTMLElement>('[data-question]')?.dataset.question;
    if (name !== undefined) this.#keep({ written: { ...this.work.written, [name]: detail.text } });
  };

  #said = ({ detail }: HTMLElementEventMap['kp-own-words']): void => this.#keep({ ownWords: detail.text });
}

customElements.define('kp-lesson-page', LessonPage);
