// Stills of the gallery, each with a ruler for its time: `?figure=stills`, at one moment `&at=0.4`, one of them `&still=bench pot`.

import { html, render } from 'lit';
import type { TemplateResult } from 'lit';
import '../../../../explorer/styles/still.css';
import '../../../../explorer/styles/words.css';
import '../../../../explorer/components/still/kp-still.js';
import { columnStrength, columnTemperature } from '../../../../explorer/figures/column-profile.js';
import { stillPicture } from '../../../../explorer/figures/still/picture.js';
import { profileRows } from '../../../../explorer/state/still-profile.js';
import { stillMoment } from '../../../../explorer/state/still-moment.js';
import { unitSystems } from '../../../../explorer/text/unit-systems.js';
import { stillCases } from '../../still-cases.js';
import type { StillCase } from '../../still-cases.js';

const asked = new URLSearchParams(location.search);
const units = unitSystems[asked.get('units') === 'us' ? 'us' : 'metric'];

export function showStills(place: HTMLElement): void {
  const chosen = stillCases.filter(({ name }) => (asked.get('still') ?? name) === name);
  for (const one of chosen) {
    const section = document.createElement('section');
    section.className = 'entry';
    place.append(section);
    show(section, one, Number(asked.get('at') ?? 0.6));
  }
}

function show(section: HTMLElement, one: StillCase, share: number): void {
  const run = one.run();
  const position = share * (run.rows - 1);
  const moved = (event: Event): void => show(section, one, Number((event.currentTarget as HTMLInputElement).value));
  const plates = run.plates > 0;
  render(
    html`<h2>${one.name}</h2>
      <input
        type="range"
        aria-label="Time in the run of ${one.name}"
        min="0"
        max="1"
        step="0.001"
        .value=${String(share)}
        @input=${moved}
      />
      <kp-still
        .draw=${stillPicture}
        .still=${one.still}
        .moment=${stillMoment(one.still, run, position)}
        .units=${units}
      ></kp-still>
      ${plates ? profile(one, position) : ''}`,
    section,
  );
}

function profile(one: StillCase, position: number): TemplateResult {
  const run = one.run();
  const before = Math.max(0, position - 0.25 * run.rows);
  const rows = profileRows(one.still, run, [position, before], units);
  return html`<div class="wide figure-pair">
    <kp-figure pair .figure=${columnStrength} .rows=${rows}></kp-figure>
    <kp-figure pair .figure=${columnTemperature} .rows=${rows}></kp-figure>
  </div>`;
}
