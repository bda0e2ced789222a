// The hydrometer at the spout: warm spirit, and what a parrot hides.

import { html } from 'lit';
import { behindParrot, carryUncertainty, flashPoint, trueStrengthFromReading } from '#lib/index.js';
import { ink, source } from '../../words.js';
import { strengthInk, temperatureText } from '../amounts.js';
import { mostOfIt } from '../most-of-it.js';
import { workingPiece, type Worked } from '../working.js';

interface Asked {
  readonly reading: number;
  readonly temperature_K: number;
}

const trueStrength = ({ reading, temperature_K }: Asked) =>
  trueStrengthFromReading({ scale: 'volume', strength: reading, temperature_K });

const LITRE_m3 = 1e-3;

function answer({ values, says, units }: Worked): unknown {
  const asked: Asked = { reading: values.spoutReading, temperature_K: values.spoutTemperature };
  const now = trueStrength(asked);
  if (!now.found) return html`<p class="red">${now.message}</p>`;
  const { strength } = carryUncertainty(trueStrength, asked, {
    reading: values.sureStrength,
    temperature_K: values.sureTemperature,
  });
  const spout = says('parrot')
    ? behindParrot(now.strength, values.parrotVolume, -values.parrotFall / LITRE_m3)
    : undefined;
  return html`<p>
    It is truly <b>${strengthInk(strength!, units)}</b> at 20 °C.
    ${mostOfIt(strength!, { reading: 'the hydrometer', temperature_K: 'the thermometer' })}
    ${
      spout === undefined
        ? ''
        : html`The spirit that runs in now has ${strengthInk(spout, units)}: the parrot still holds some of what came
          before.`
    }
    ${now.strength >= 0.02 ? html`Its vapour can be lit from some ${ink(temperatureText(flashPoint(now.strength), units))}.` : ''}
  </p>`;
}

export const spoutGauge = workingPiece({
  sentences: [
    [
      'The hydrometer at the spout shows ',
      { blank: 'spoutReading' },
      ' in spirit of ',
      { blank: 'spoutTemperature' },
      '. ',
      {
        clause: 'parrot',
        put: 'It floats in a parrot',
        stands: true,
        parts: [
          'It floats in a parrot that holds ',
          { blank: 'parrotVolume' },
          ', and its reading falls by ',
          { blank: 'parrotFall' },
          ' with every litre that comes over. ',
        ],
      },
    ],
    [
      'The hydrometer is sure to ',
      { blank: 'sureStrength' },
      ', its thermometer to ',
      { blank: 'sureTemperature' },
      '.',
    ],
  ],
  answer,
  cautions: ['spout'],
  notes: () =>
    source(
      html`OIML R 22 (1975), with the glass’s expansion; 27 CFR 30.61 has a worked example. The parrot is taken as well
      mixed.`,
    ),
});
