// What strength the vapour has, from the head's thermometer; and where that tells nothing.

import { html } from 'lit';
import { carryUncertainty, vapourFromTemperature } from '#lib/index.js';
import { ink } from '../../words.js';
import { degreesText, strengthInk } from '../amounts.js';
import { mostOfIt } from '../most-of-it.js';
import { workingPiece, type Worked } from '../working.js';
import { checkedClause, gaugesSay, readAt, sureOf, thermometer, type Read } from './still-gauges.js';

const vapour = (read: Read) => vapourFromTemperature(thermometer(read));

/** Below this slope a thermometer of the usual kind cannot tell one per cent vol, K. */
const tellsLittle_K = 0.2;

function answer(worked: Worked): unknown {
  const { values, units } = worked;
  const asked = readAt(values.headReading, worked, false);
  const now = vapour(asked);
  if (!now.found) {
    return now.reason === 'hotter-than-water'
      ? html`<p>That is hotter than steam in this air: no spirit passes there, or a reading is off.</p>`
      : html`<p>
          No vapour of ethanol and water is so cold in this air. The thermometer is not in the vapour yet, it reads too
          low, or the barometer is off.
        </p>`;
  }
  const { strength } = carryUncertainty(vapour, asked, sureOf(worked, now.modelError_K));
  const slope = Math.abs(now.kelvinPerPercent);
  return html`<p>
      The vapour that passes there has <b>${strengthInk(strength!, units)}</b>. ${mostOfIt(strength!, gaugesSay)}
    </p>
    <p>
      One % vol moves this thermometer by ${ink(degreesText(slope, units, 2))}.
      ${
        slope < tellsLittle_K
          ? 'So near the azeotrope it cannot tell 94 from 96 % vol: a hydrometer can.'
          : 'Here the thermometer tells the strength.'
      }
    </p>`;
}

export const headGauge = workingPiece({
  sentences: [
    [
      'The head’s thermometer shows ',
      { blank: 'headReading' },
      ' in the same air of ',
      { blank: 'airPressure' },
      '. ',
      checkedClause,
    ],
  ],
  answer,
  notes: () =>
    html`<p>
      The thermometer has to sit in the vapour, wet with what condenses on it. The pressure at the head is taken as that
      of the air.
    </p>`,
});
