// Filling a number of bottles with all of it: which strength that makes.

import { html } from 'lit';
import { dilute } from '#lib/index.js';
import { countInWords } from '../../../text/format.js';
import { massInk, strengthInk, volumeInk } from '../amounts.js';
import { workingPiece, type Worked } from '../working.js';
import { trueSpirit } from './measured-spirit.js';

function answer({ values, units }: Worked): unknown {
  const spirit = trueSpirit(values);
  if (typeof spirit === 'string') return html`<p class="red">${spirit}</p>`;
  const { bottles, bottleVolume, wantedStrength } = values;
  const volume_m3 = bottles * bottleVolume;
  const full =
    wantedStrength > 0 ? Math.floor((spirit.volume_m3 * spirit.strength) / wantedStrength / bottleVolume) : 0;
  const atWanted = html`At ${strengthInk(wantedStrength, units)} it fills ${full > 12 ? full : countInWords(full)}
  ${full === 1 ? 'bottle' : 'bottles'}.`;
  if (volume_m3 < spirit.volume_m3) {
    return html`<p>
      Undiluted the spirit is already ${volumeInk(spirit.volume_m3, units)}, more than ${volumeInk(volume_m3, units)}:
      those bottles hold a part of it at ${strengthInk(spirit.strength, units)}. ${wantedStrength > 0 ? atWanted : ''}
    </p>`;
  }
  const { water_kg, spirit: made } = dilute({ spirit, volume_m3 });
  return html`<p>
    All of it in those bottles, ${volumeInk(volume_m3, units)} at 20 °C, is <b>${strengthInk(made.strength, units)}</b>:
    weigh in ${massInk(water_kg, units)} of water. ${wantedStrength > 0 ? atWanted : ''}
  </p>`;
}

export const bottlesFilled = workingPiece({
  sentences: [['It is to fill ', { blank: 'bottles' }, ' bottles of ', { blank: 'bottleVolume' }, '.']],
  answer,
});
