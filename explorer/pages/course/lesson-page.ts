// A page of the course: the parts of a lesson with its guess, questions and own words between them. What has been
// drawn and written is kept in this browser.

import { html, nothing, type PropertyDeclarations } from 'lit';
import type { Asks } from '../../entries/asking.js';
import '../../entries/guess/kp-guess-entry.js';
import { leaderLooksOn, paperWanted } from '../../entries/leader.js';
import { leadersListen } from '../../entries/lesson/leaders-view.js';
import { opening } from '../../entries/lesson/opening.js';
import { tries } from '../../entries/lesson/tries.js';
import { why } from '../../entries/lesson/why.js';
import '../../entries/own-words/kp-own-words.js';
import '../../entries/question/kp-question-entry.js';
import { keepWork, keptWork, type LessonWork } from '../../state/course-work.js';
import type { Scenario } from '../../state/scenario.js';
import '../../styles/course.css';
import { NotebookPage } from '../notebook-page.js';
import type { Lesson } from './lesson.js';

export class LessonPage extends NotebookPage<Asks> {
  static override properties: PropertyDeclarations = {
    lesson: { attribute: false },
    mine: { state: true },
  };
  declare lesson: Lesson;
  declare private mine: LessonWork;

  #asked = '';
  #questions: Asks = {};

  constructor(lesson: Lesson) {
    super(lesson.inFocus);
    this.lesson = lesson;
    this.mine = keptWork(lesson.name);
    this.addEventListener('kp-guess', ({ detail }) => this.#keep({ guess: detail }));
    this.addEventListener('kp-own-words', ({ detail }) => this.#keep({ ownWords: detail.text }));
    this.addEventListener('kp-answered', ({ detail, target }) => {
      const name = (target as Element).closest<HTMLElement>('[data-question]')?.dataset.question;
      if (name !== undefined) this.#keep({ written: { ...this.mine.written, [name]: detail.text } });
    });
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
    const { lesson, units } = this;
    const here = {
      now: this.answered,
      kept: this.pencils,
      units,
      scenario: this.scenario,
      setup: (sentence: Lesson['sentence']) => this.setup(sentence),
      redraw: () => this.requestUpdate(),
    };
    return html`<header class="page-head">
        <h1>${lesson.title}</h1>
        <p class="promise">${lesson.promise}</p>
      </header>
      ${opening(lesson, here)} ${this.#guess()} ${tries(lesson, here)} ${why(lesson, here)} ${this.#check()}
      ${this.#ownWords()} ${leaderLooksOn() ? leadersListen(lesson) : nothing} ${this.foot()}`;
  }

  #guess(): unknown {
    const paper = paperWanted();
    return html`<section class="entry after-words guess" aria-label="Your guess">
      <kp-guess-entry
        .name=${this.lesson.guess}
        .state=${paper === null ? this.mine.guess : { points: [], answered: paper === 'answers' }}
        .solver=${this.solver}
        .scenario=${this.scenario}
        .units=${this.units}
      ></kp-guess-entry>
    </section>`;
  }

  #check(): unknown {
    return html`<section class="entry prose" aria-labelledby="check">
      <h2 id="check">Check yourself</h2>
      ${this.lesson.questions.map(
        (name) =>
          html`<kp-question-entry
            .name=${name}
            .written=${paperWanted() === null ? (this.mine.written[name] ?? '') : ''}
            .leads=${leaderLooksOn()}
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
        .text=${paperWanted() === null ? this.mine.ownWords : ''}
        .leads=${leaderLooksOn()}
      ></kp-own-words>
      <aside class="notes on-screen">
        <p>What you draw and write here is kept in this browser and sent nowhere.</p>
      </aside>
    </section>`;
  }

  #keep(change: Partial<LessonWork>): void {
    if (paperWanted() !== null) return;
    this.mine = { ...this.mine, ...change };
    keepWork(this.lesson.name, this.mine);
  }
}

customElements.define('kp-lesson-page', LessonPage);
