// The reverse: what has to be put together for a volume of a strength.

import { html } from 'lit';
import { blend } from '#lib/index.js';
import { ink } from '../../words.js';
import { massInk, strengthText, volumeInk } from '../amounts.js';
import { workingPiece, type Worked } from '../working.js';

/** Water at 20 °C, kg/m³ (OIML R 22). */
const WATER_kg_m3 = 998.2;

function answer({ values, says, units }: Worked): unknown {
  const { strongerStrength, madeVolume, madeStrength } = values;
  const weak = says('feints') ? values.weakerStrength : 0;
  if (!(strongerStrength > weak && madeStrength >= weak && madeStrength <= strongerStrength)) {
    return html`<p>
      What is wanted has to lie between the two: between ${ink(strengthText(weak, units))} and
      ${ink(strengthText(strongerStrength, units))}.
    </p>`;
  }
  const { stronger_m3, weaker_m3, mixed } = blend({
    stronger: { strength: strongerStrength },
    weaker: { strength: weak },
    strength: madeStrength,
    volume_m3: madeVolume,
  });
  const other =
    weak === 0
      ? html`${massInk(weaker_m3 * WATER_kg_m3, units)} of water (${volumeInk(weaker_m3, units)})`
      : html`${volumeInk(weaker_m3, units)} of the weaker`;
  return html`<p>
    Take <b>${volumeInk(stronger_m3, units)} of the stronger</b> and <b>${other}</b>. Apart they are
    ${volumeInk(madeVolume + mixed.lost_m3, units)}.
  </p>`;
}

export const toMake = workingPiece({
  sentences: [
    [
      'Wanted are ',
      { blank: 'madeVolume' },
      ' at ',
      { blank: 'madeStrength' },
      ', from spirit of ',
      { blank: 'strongerStrength' },
      ' and ',
      {
        clause: 'feints',
        put: 'Take a weaker spirit instead of water',
        instead: 'water,',
        parts: ['a weaker one of ', { blank: 'weakerStrength' }, ','],
      },
      ' all at 20 °C.',
    ],
  ],
  answer,
  cautions: ['pouring'],
});
