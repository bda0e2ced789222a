// A page to look at each figure alone, from invented rows, with the milliseconds a repaint takes:
// `npx vite tests/explorer/figures/gallery`, then pick one, or all.

import { html, render } from 'lit';
import '../../../../explorer/styles/tokens.css';
import '../../../../explorer/styles/page.css';
import '../../../../explorer/styles/frame.css';
import '../../../../explorer/styles/margin.css';
import '../../../../explorer/styles/figure.css';
import '../../../../explorer/styles/figure-words.css';
import '../../../../explorer/components/figure/kp-figure.js';
import { cases } from '../cases.js';
import type { Case } from '../cases.js';
import { repaintTimes } from './repaint-times.js';
import { showStills } from './stills.js';

const asked = new URLSearchParams(location.search);
if (asked.has('theme')) document.documentElement.dataset.theme = asked.get('theme') ?? '';
const name = asked.get('figure') ?? 'all';
const chosen = cases.filter((one) => name === 'all' || one.name === name);

const shown = (one: Case): unknown =>
  html`<kp-figure .figure=${one.figure} .rows=${one.rows} .pencils=${one.pencils} ?pair=${one.pair}></kp-figure>`;

const choose = (event: Event): void => {
  asked.set('figure', (event.currentTarget as HTMLSelectElement).value);
  location.search = asked.toString();
};

// Pairs stand side by side, as on the pages.
const groups = chosen.reduce<Case[][]>((all, one) => {
  const last = all.at(-1);
  if (one.pair && last?.length === 1 && last[0]?.pair) last.push(one);
  else all.push([one]);
  return all;
}, []);

render(
  html`<section style="display: contents">
    <div class="entry">
      <label style="font: 15px/20px var(--label)"
        >Figure
        <select @change=${choose}>
          ${['all', 'stills', ...cases.map((one) => one.name)].map(
            (option) => html`<option ?selected=${option === name}>${option}</option>`,
          )}
        </select>
      </label>
    </div>
    ${groups.map((group) =>
      group[0]?.pair
        ? html`<div class="entry"><div class="wide figure-pair">${group.map(shown)}</div></div>`
        : html`<div class="entry">${group.map(shown)}</div>`,
    )}
    <div class="entry"><p id="times" style="font: 15px/20px var(--label)"></p></div>
  </section>`,
  document.querySelector('main')!,
);

if (name === 'all' || name === 'stills') showStills(document.querySelector('main')!);

if (asked.has('time')) {
  void document.fonts.ready
    .then(() => repaintTimes(chosen))
    .then((text) => {
      document.querySelector('#times')!.textContent = text;
    });
}
