// What a lesson lets one try: its sentence with the ruler, the live figure, results in words, and the steps.

import { html, nothing } from 'lit';
import '../../components/figure/kp-figure.js';
import { paragraphs, prose } from '../../components/term/prose.js';
import type { Lesson, ShownFigure } from '../../pages/course/lesson.js';
import type { Here } from '../entry.js';
import { leaderLooksOn } from '../leader.js';
import { leadersFound } from './leaders-view.js';
import { numbersNow, type LessonHere } from './numbers-now.js';

export function tries(lesson: Lesson, here: LessonHere & Pick<Here, 'setup'>): unknown {
  const numbers = numbersNow(lesson, here);
  const heading = `then-try-${here.id}`;
  return html`<section class="entry tries" aria-labelledby=${heading}>
      <h2 id=${heading}>Then try</h2>
      ${here.setup(lesson.sentence)}
      ${numbers === undefined ? html`<div class="figure-to-come"></div>` : figures(numbers.tries.figures, here.kept.length)}
    </section>
    <section class="entry prose after-words steps-entry" aria-label="What to do">
      ${numbers === undefined ? nothing : html`<div class="result-words">${paragraphs(numbers.tries.words)}</div>`}
      <ol class="steps">
        ${lesson.steps.map((step) => html`<li>${prose(step)}</li>`)}
      </ol>
      ${leaderLooksOn() ? leadersFound(lesson) : nothing}
      <aside class="notes"><p>${prose(lesson.assumed)}</p></aside>
    </section>`;
}

/** One figure under the ruler, or a pair side by side. */
function figures(shown: readonly ShownFigure[], pencils: number): unknown {
  const pair = shown.length > 1;
  const drawn = shown.map(
    ({ figure, rows, keeps }) =>
      html`<kp-figure
        class=${pair ? '' : 'setup-figure'}
        .figure=${figure}
        .rows=${rows}
        .pencils=${keeps ? pencils : -1}
        ?pair=${pair}
      ></kp-figure>`,
  );
  return pair ? html`<div class="figure-pair wide setup-figure">${drawn}</div>` : drawn;
}
