// What 'The ceiling' loads once its figures stand: the elements that ask more of the solver, and the entry
// with the question.

import { html, nothing } from 'lit';
import '../components/answer/kp-answer.js';
import type { Answered } from '../pages/notebook-page.js';
import type { CeilingQuestions } from '../state/derive.js';
import { countInWords, ordinal } from '../text/format.js';
import type { UnitSystem } from '../text/unit-systems.js';
import type { Solver } from '../worker/solver-client.js';
import { modelNote, tableNote } from './ceiling-notes.js';
import './plates-or-reflux.js';
import { judged, modelTable, ninetySixWords, tryIt } from './the-96.js';
import './the-ceiling-moves.js';
import { ink, print, roundStrength } from './words.js';

export type Later = typeof import('./ceiling-later.js');

type Ceiling = Answered<CeilingQuestions>;

/** 'What is the 96 %?' with its table and its question, and 'Plates or reflux?'. */
export function lastEntries(now: Ceiling, solver: Solver, units: UnitSystem): unknown {
  return html`<section class="entry prose" aria-labelledby="ninety-six">
      <h2 id="ninety-six">What is the 96 %?</h2>
      ${ninetySixWords(now, units)} ${modelTable(now, units)} ${question(now, units)}
      <aside class="notes">${modelNote}</aside>
    </section>
    <section class="entry prose" aria-labelledby="plates-or-reflux">
      <h2 id="plates-or-reflux">Plates or reflux?</h2>
      <kp-plates-or-reflux .solver=${solver} .scenario=${now.scenario} .units=${units}></kp-plates-or-reflux>
      <aside class="notes">${tableNote}</aside>
    </section>`;
}

function question(now: Ceiling, units: UnitSystem): unknown {
  const asked = tryIt(now);
  if (asked === undefined) return nothing;
  const { ladder } = now.answers.stages;
  const lead = html`Step ${ink(countInWords(asked.from))} passes ${print(roundStrength(0.96, units))} from this kettle;
  passing ${print(roundStrength(0.97, units))} takes`;
  return html`<kp-answer
    .lead=${lead}
    .tail=${'more.'}
    .label=${`Steps after the ${ordinal(asked.from)} until ${roundStrength(0.97, units)} is passed`}
    .subject=${now.answers.stages}
    .judge=${(given: number) => judged(given, asked, ladder, units)}
  ></kp-answer>`;
}
