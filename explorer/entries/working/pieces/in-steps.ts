// Bringing a spirit down slowly, portion by portion.

import { html } from 'lit';
import { reduceInSteps } from '#lib/index.js';
import { massText, strengthText, temperatureText, volumeText } from '../amounts.js';
import { workingPiece, type Worked } from '../working.js';
import { trueSpirit } from './measured-spirit.js';

function answer({ values, units }: Worked): unknown {
  const spirit = trueSpirit(values);
  if (typeof spirit === 'string') return html`<p class="red">${spirit}</p>`;
  const { wantedStrength, steps, waterTemperature } = values;
  if (!(wantedStrength > 0 && wantedStrength <= spirit.strength)) {
    return html`<p>The spirit is not stronger than what is wanted, so there is nothing to add.</p>`;
  }
  const portions = reduceInSteps({ spirit, strength: wantedStrength, steps, water_K: waterTemperature });
  return html`<div class="wide-table" role="region" aria-label="Portions of water" tabindex="0">
    <table class="figures-table">
      <thead>
        <tr>
          <th scope="col">portion</th>
          <th scope="col">water</th>
          <th scope="col">then it is</th>
          <th scope="col">of</th>
          <th scope="col">as warm as</th>
        </tr>
      </thead>
      <tbody>
        ${portions.map(
          ({ water_kg, spirit: made }, index) =>
            html`<tr>
              <th scope="row">${index + 1}</th>
              <td class="ink">${massText(water_kg, units)}</td>
              <td class="ink">${volumeText(made.volume_m3, units)}</td>
              <td class="ink">${strengthText(made.strength, units)}</td>
              <td class="ink">${temperatureText(made.temperature_K!, units)}</td>
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}

export const inSteps = workingPiece({
  sentences: [
    [
      'The same spirit can be brought down slowly, in ',
      { blank: 'steps' },
      ' portions of water, each followed by a rest until it is as cool as before.',
    ],
  ],
  answer,
  cautions: ['pouring'],
  notes: () =>
    html`<p>
      Each portion lowers the strength by the same. How long to rest is a matter of taste (common practice, no published
      source).
    </p>`,
});
