// Why it is so: the explanation, its figure, and common sayings set right. Not on a worksheet.

import { html, nothing } from 'lit';
import '../../components/figure/kp-figure.js';
import { paragraphs, prose } from '../../components/term/prose.js';
import type { Lesson } from '../../pages/course/lesson.js';
import { source } from '../words.js';
import { numbersNow, type LessonHere } from './numbers-now.js';

export function why(lesson: Lesson, here: LessonHere): unknown {
  const numbers = numbersNow(lesson, here);
  if (numbers === undefined) return nothing;
  const heading = `why-${here.id}`;
  const { why: texts, whyFigure, sayings, source: words } = numbers;
  return html`<section class="entry prose not-on-worksheet" aria-labelledby=${heading}>
      <h2 id=${heading}>Why</h2>
      ${paragraphs(texts)}
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
