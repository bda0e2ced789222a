// A table for the wall of the still house: what the thermometers show at each strength, in the reader's air, with the
// thermometer's own offset in it.

import { html } from 'lit';
import {
  bubblePoint,
  dewPoint,
  moleFractionFromStrength,
  strengthFromMoleFraction,
  thermometerOffset,
} from '#lib/index.js';
import { fixed } from '../../../text/format.js';
import { workingPiece, type Worked } from '../working.js';
import { checkedClause, platesClause } from './still-gauges.js';

const inKettle = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 20, 30, 40].map((percent) => percent / 100);
const inHead = [20, 30, 40, 50, 55, 60, 65, 70, 75, 80, 85, 88, 90, 92, 94, 95].map((percent) => percent / 100);

function answer({ values, says, units }: Worked): unknown {
  const { airPressure, overPressure, waterReading } = values;
  const offset_K = says('checked') ? thermometerOffset(waterReading, airPressure) : 0;
  const kettle_Pa = airPressure + (says('over') ? overPressure : 0);
  const { strength, temperature } = units;
  const shown = (kelvin: number): string => fixed(temperature.toShown(kelvin + offset_K), 1);
  const percent = (share: number): string => fixed(strength.toShown(share), 0);
  return html`<p class="words-to-press">
      <button type="button" class="word-button" @click=${printAlone}>Print the table alone</button>
    </p>
    <div class="wall-tables">
      <table class="figures-table wall-table">
        <caption>
          Kettle, boiling
        </caption>
        <thead>
          <tr>
            <th scope="col">${temperature.unit}</th>
            <th scope="col">in it, ${strength.unit}</th>
            <th scope="col">its vapour</th>
          </tr>
        </thead>
        <tbody>
          ${inKettle.map((share) => {
            const { temperature_K, vapourMoleFraction } = bubblePoint(moleFractionFromStrength(share), kettle_Pa);
            return html`<tr>
              <th scope="row" class="ink">${shown(temperature_K)}</th>
              <td class="ink">${percent(share)}</td>
              <td class="ink">${percent(strengthFromMoleFraction(vapourMoleFraction))}</td>
            </tr>`;
          })}
        </tbody>
      </table>
      <table class="figures-table wall-table">
        <caption>
          Head, in the vapour
        </caption>
        <thead>
          <tr>
            <th scope="col">${temperature.unit}</th>
            <th scope="col">${strength.unit}</th>
          </tr>
        </thead>
        <tbody>
          ${inHead.map((share) => {
            const { temperature_K } = dewPoint(moleFractionFromStrength(share), airPressure);
            return html`<tr>
              <th scope="row" class="ink">${shown(temperature_K)}</th>
              <td class="ink">${percent(share)}</td>
            </tr>`;
          })}
        </tbody>
      </table>
    </div>`;
}

/** Prints what stands in this section and nothing else of the page. */
function printAlone({ target }: Event): void {
  const section = (target as Element).closest('section');
  section?.classList.add('printed-alone');
  document.documentElement.classList.add('prints-alone');
  addEventListener(
    'afterprint',
    () => {
      section?.classList.remove('printed-alone');
      document.documentElement.classList.remove('prints-alone');
    },
    { once: true },
  );
  print();
}

export const wallTable = workingPiece({
  sentences: [['In air of ', { blank: 'airPressure' }, ' the thermometers show this. ', platesClause, checkedClause]],
  answer,
  notes: () =>
    html`<p>
      For the wall of the still house, to be read at arm’s length. The air changes by some 2 kPa with the weather, which
      moves all of it by half a degree.
    </p>`,
});
