// What the kettle holds, from its thermometer.

import { html } from 'lit';
import { carryUncertainty, kettleFromTemperature, water } from '#lib/index.js';
import { fixed, joined } from '../../../text/format.js';
import { ink, source } from '../../words.js';
import { strengthInk, temperatureText, volumeInk } from '../amounts.js';
import { mostOfIt, plusMinusMeans } from '../most-of-it.js';
import { workingPiece, type Worked } from '../working.js';
import {
  checkedClause,
  gaugesSay,
  platesClause,
  readAt,
  sureGauges,
  sureOf,
  thermometer,
  type Read,
} from './still-gauges.js';

interface Asked extends Read {
  readonly left_m3: number | null;
}

/** The kettle's strength, its vapour's, and the pure alcohol in it. */
function kettle({ left_m3, ...read }: Asked) {
  const found = kettleFromTemperature(thermometer(read));
  return found.found && left_m3 !== null ? { ...found, pure_m3: found.strength * left_m3 } : found;
}

function answer(worked: Worked): unknown {
  const { values, says, units } = worked;
  const asked: Asked = {
    ...readAt(values.kettleReading, worked, true),
    left_m3: says('left') ? values.kettleVolume : null,
  };
  const now = kettle(asked);
  if (!now.found) {
    const pressure_Pa = asked.air_Pa + asked.over_Pa;
    return now.reason === 'hotter-than-water'
      ? html`<p>
          Water itself boils at ${ink(temperatureText(water.boilingTemperature(pressure_Pa), units, 1))} under this
          pressure. The kettle is as good as spent, or the thermometer, the barometer or what stands over the kettle is
          not as said.
        </p>`
      : html`<p>
          No mixture of ethanol and water boils so cold in this air: the kettle does not boil yet, or a reading is off.
        </p>`;
  }
  const carried = carryUncertainty(kettle, asked, sureOf(worked, now.modelError_K));
  const { strength } = carried;
  const left = carried.pure_m3;
  // One kelvin through the slope, told as the reader counts degrees.
  const perDegree = 0.01 / now.kelvinPerPercent / (units.temperature.unit === '°F' ? 1.8 : 1);
  const whole = units.strength.unit === 'proof' ? 200 : 100;
  return html`<p>
      What boils there holds <b>${strengthInk(strength!, units)}</b>; the vapour that leaves it has
      ${strengthInk(now.vapourStrength, units)}.
      ${left === undefined ? '' : html`With that much left, ${volumeInk(left, units)} of pure alcohol are still in it.`}
    </p>
    <p>
      A degree hotter is ${ink(joined(fixed(whole * Math.abs(perDegree), 1), units.strength.unit))} less here.
      ${mostOfIt(strength!, gaugesSay)}
    </p>`;
}

export const kettleGauge = workingPiece({
  sentences: [
    [
      'The kettle’s thermometer shows ',
      { blank: 'kettleReading' },
      ' while it boils, in air of ',
      { blank: 'airPressure' },
      '. ',
      platesClause,
      checkedClause,
      {
        clause: 'left',
        put: 'How much is left in it is known',
        stands: true,
        parts: ['There are ', { blank: 'kettleVolume' }, ' left in it, counted at 20 °C. '],
      },
    ],
    sureGauges,
  ],
  answer,
  cautions: ['kettle'],
  notes: () =>
    html`<p>${plusMinusMeans}</p>
      <p>Each kPa of air is some 0.27 °C. An altitude can be typed instead of a pressure: 600 m.</p>
      ${source(html`the reference model’s boiling points, with its own uncertainty; water by IAPWS.`)}`,
  provides: (worked) => {
    const now = kettle({ ...readAt(worked.values.kettleReading, worked, true), left_m3: null });
    return [
      {
        name: 'kettleRead',
        label: 'strength of the kettle by its thermometer',
        quantity: 'strength',
        value: now.found ? now.strength : null,
      },
    ];
  },
});
