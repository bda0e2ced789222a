// A posed question on the page: its sentence with the blank, and for a leader answer and hints beside it.

import { html, nothing } from 'lit';
import '../../components/answer/kp-answer.js';
import type { PosedQuestion } from './definition.js';
import { judged } from './judge.js';

/** `written` stands in the blank; `leads` where a leader looks on. */
export function questionView({ lead, tail, read, asked }: PosedQuestion, written: string, leads: boolean): unknown {
  return html`<kp-answer
      .lead=${lead}
      .tail=${tail}
      .label=${`${lead} … ${tail}`}
      .read=${read}
      .judge=${(number: number, attempt: number) => judged(number, asked, attempt)}
      .answerWords=${asked.answerWords}
      .given=${written}
      .subject=${`${lead} ${asked.answerWords}`}
    ></kp-answer>
    ${
      leads
        ? html`<p class="leader-answer"><b>Answer.</b> ${asked.answerWords}</p>
            <p class="leader-answer"><b>Hints.</b> ${asked.hints.join(' ')}</p>`
        : nothing
    }`;
}
