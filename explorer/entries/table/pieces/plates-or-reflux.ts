// 'Plates or reflux?': the spout at one moment for several plates and reflux ratios, filled cell by cell once the
// figures stand.

import { html } from 'lit';
import { numberWithUnit } from '../../../components/number/number-spec.js';
import { comparison } from '../../../pages/the-ceiling/comparison.js';
import { measureOf } from '../../../pages/course/questions.js';
import type { RunAnswer } from '../../../worker/kinds/run.js';
import type { Answer } from '../../../worker/questions.js';
import { tableNote } from '../../../pages/the-ceiling/notes.js';
import type { Later } from '../../entry.js';
import type { Piece } from '../../pieces.js';
import { ratioOf } from '../../../state/problems.js';
import { numberAt } from '../../../state/paths.js';

export const platesOrReflux: Piece = {
  asksLater: (scenario) =>
    Object.fromEntries(comparison(scenario).questions.map((question, cell) => [String(cell), question])),
  view: ({ later, scenario: set, units, specs }) => {
    // While new cells are computed the old table stands, with the numbers it belongs to.
    const scenario = later?.scenario ?? set;
    const { plates, refluxes } = comparison(scenario);
    const after = units.volume.withUnit(measureOf(scenario));
    const text = (row: number, column: number): string => {
      const strength = strengthIn(later?.answers[String(row * refluxes.length + column)]);
      return strength === undefined ? '·' : units.strength.text(strength);
    };
    return html`<p class="table-title">
        <b>Strength at the spout after ${after}</b>, ${units.strength.unit}, by plates and reflux
      </p>
      <table class="figures-table">
        <thead>
          <tr>
            <th scope="col">plates</th>
            ${refluxes.map((reflux) => html`<th scope="col">${numberWithUnit(specs('sheet[2].reflux'), reflux)}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${plates.map(
            (count, row) =>
              html`<tr>
                <th scope="row">${count}</th>
                ${refluxes.map((reflux, column) => {
                  const here = count === numberAt(scenario, 'still.column.count') && reflux === ratioOf(scenario);
                  return html`<td>
                    ${here ? html`<span class="here">${text(row, column)}</span>` : text(row, column)}
                  </td>`;
                })}
              </tr>`,
          )}
        </tbody>
      </table>
      ${progress(later)}`;
  },
  notes: () => tableNote,
};

/** How far it has come, with a word to stop it; its line is kept free, so that nothing moves. */
function progress(later: Later | undefined): unknown {
  const { done = 0, of = 0, state = 'waiting' } = later ?? {};
  return html`<p class="later-line">
    ${
      state === 'running' || state === 'waiting'
        ? html`${done} of ${of} runs. <button type="button" class="word-button" @click=${later?.stop}>Stop</button>`
        : state === 'stopped'
          ? html`Stopped after ${done} of ${of} runs.
              <button type="button" class="word-button" @click=${later?.goOn}>Go on</button>`
          : ''
    }
  </p>`;
}

function strengthIn(answer: Answer | undefined): number | undefined {
  return (answer as RunAnswer<'spoutStrength'> | undefined)?.solution.spoutStrength.at(-1);
}
