// How a lesson opens: its goal, why it surprises, and for a leader what comes first.

import { html } from 'lit';
import { paragraphs, prose } from '../../components/term/prose.js';
import type { Lesson } from '../../pages/course/lesson.js';
import type { Here } from '../entry.js';
import { leaderLooksOn, printAs, setLeaderLooksOn } from '../leader.js';
import { caution } from '../words.js';
import { leadersHead } from './leaders-view.js';

export function opening(lesson: Lesson, { id, redraw }: Pick<Here, 'id' | 'redraw'>): unknown {
  const heading = `guess-first-${id}`;
  const acts = {
    turn: () => {
      setLeaderLooksOn(!leaderLooksOn());
      redraw();
    },
    print: (paper: 'worksheet' | 'answers') => void printAs(paper, redraw),
  };
  return html`<section class="entry prose" aria-labelledby=${heading}>
    <p class="goal"><b>After this page you can</b> ${prose(lesson.goal)}</p>
    <h2 id=${heading}>Guess first</h2>
    ${paragraphs(lesson.opening)}
    <aside class="notes beside-all">${caution(lesson.caution)} ${leadersHead(lesson, leaderLooksOn(), acts)}</aside>
  </section>`;
}
