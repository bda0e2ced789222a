// What a leader sees more than an apprentice: the switch, what to have at hand, how long each part takes,
// what the steps bring out, what to listen for; and the words that print.

import { html, nothing } from 'lit';
import type { Lesson } from '../../pages/course/lesson.js';
import type { Paper } from '../leader.js';

const parts = ['guess', 'try', 'why', 'check', 'own words'] as const;

/** The switch, and under it for a leader what comes first. */
export function leadersHead(
  lesson: Lesson,
  leads: boolean,
  acts: { readonly turn: () => void; readonly print: (paper: Paper) => void },
): unknown {
  return html`<p class="leader-switch">
      <button type="button" class="word-button" aria-pressed=${leads} @click=${acts.turn}>Leader’s view</button>
    </p>
    ${leads ? html`${notes(lesson)} ${toPrint(acts.print)}` : nothing}`;
}

/** What each step of the activity should have brought out. */
export function leadersFound({ leader }: Lesson): unknown {
  return html`<div class="leader-answer">
    <p><b>What the steps bring out.</b></p>
    <ol>
      ${leader.found.map((words) => html`<li>${words}</li>`)}
    </ol>
  </div>`;
}

/** What to listen for in their own words. */
export function leadersListen({ leader }: Lesson): unknown {
  return html`<section class="entry after-words listen" aria-label="For the leader">
    <div class="leader-answer">
      <p><b>Listen for.</b></p>
      <ul>
        ${leader.listen.map((words) => html`<li>${words}</li>`)}
      </ul>
    </div>
  </section>`;
}

function notes({ leader }: Lesson): unknown {
  const whole = leader.minutes.reduce((sum, one) => sum + one, 0);
  const times = parts.map((part, k) => `${part} ${String(leader.minutes[k])}`).join(', ');
  return html`<p><b>For the leader.</b> ${leader.before}</p>
    <p><b>About ${whole} minutes:</b> ${times}.</p>`;
}

function toPrint(print: (paper: Paper) => void): unknown {
  return html`<p class="leader-prints">
    <button type="button" class="word-button" @click=${() => print('worksheet')}>Print the worksheet</button>
    <button type="button" class="word-button" @click=${() => print('answers')}>Print it with answers</button>
  </p>`;
}
