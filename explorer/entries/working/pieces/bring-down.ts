// Bringing a spirit down: how much water it takes, and what comes of it.

import { html } from 'lit';
import { carryUncertainty, dilute, flashPoint, type Diluted, type Spirit } from '#lib/index.js';
import { ink, source } from '../../words.js';
import { massInk, strengthInk, strengthText, temperatureText, volumeInk } from '../amounts.js';
import { mostOfIt, plusMinusMeans } from '../most-of-it.js';
import { workingPiece, type Worked } from '../working.js';
import { measuredSentence, sureSentence, trueSpirit, type MeasuredSpirit } from './measured-spirit.js';

interface Asked extends MeasuredSpirit {
  readonly wantedStrength: number;
  readonly waterTemperature: number;
}

interface BroughtDown {
  readonly spirit: Spirit;
  readonly pure_m3: number;
  readonly diluted: Diluted;
}

/** Words for what an uncertainty comes from. */
const from = {
  spiritReading: 'the hydrometer',
  spiritVolume: 'the volume',
  spiritTemperature: 'the thermometer',
};

/** Where it is weaker than what is wanted, or no spirit floats the hydrometer so, the reason. */
function broughtDown({ wantedStrength, waterTemperature, ...measured }: Asked): BroughtDown | string {
  const spirit = trueSpirit(measured);
  if (typeof spirit === 'string') return spirit;
  if (wantedStrength === 0) return 'No water takes all of the strength away.';
  if (wantedStrength > spirit.strength) return 'weaker';
  const diluted = dilute({ spirit, strength: wantedStrength, water_K: waterTemperature });
  return { spirit, pure_m3: spirit.volume_m3 * spirit.strength, diluted };
}

function answer({ values, units }: Worked): unknown {
  const { spiritReading, spiritVolume, spiritTemperature, wantedStrength, waterTemperature } = values;
  const asked: Asked = { spiritReading, spiritVolume, spiritTemperature, wantedStrength, waterTemperature };
  const now = broughtDown(asked);
  if (now === 'weaker') {
    const spirit = trueSpirit(asked) as Spirit;
    return html`<p>
      The spirit is truly ${strengthInk(spirit.strength, units)}, weaker than what is wanted. Water only makes it
      weaker: see below what a stronger spirit would have to add.
    </p>`;
  }
  if (typeof now === 'string') return html`<p class="red">${now}</p>`;
  const carried = carryUncertainty(broughtDown, asked, {
    spiritReading: values.sureStrength,
    spiritVolume: values.sureVolume * spiritVolume,
    spiritTemperature: values.sureTemperature,
  });
  const water = carried['diluted.water_kg']!;
  const { spirit, diluted } = now;
  const { spirit: made, lost_m3, warmed_K } = diluted;
  return html`<p>
      It is truly ${strengthInk(carried['spirit.strength']!, units)} and
      ${volumeInk(carried['spirit.volume_m3']!, units)} at 20 °C: ${volumeInk(carried.pure_m3!, units)} of pure alcohol.
    </p>
    <p>
      <b>Weigh in ${massInk(water, units)} of water</b>, which is ${volumeInk(diluted.water_m3, units)}. That makes
      ${volumeInk(carried['diluted.spirit.volume_m3']!, units)} at ${ink(strengthText(made.strength, units))},
      ${lost(lost_m3, units)}. ${warmed(made.temperature_K, warmed_K, units)}
    </p>
    <p>
      ${mostOfIt(water, from)} Keep some of the water back: stir, let it come to 20 °C, measure, and add the rest.
      ${lit(spirit.strength, made.strength, units)}
    </p>`;
}

type Units = Worked['units'];

function lost(lost_m3: number, units: Units): unknown {
  if (Math.abs(lost_m3) < 5e-7) return html`as much as spirit and water apart`;
  return lost_m3 > 0
    ? html`${volumeInk(lost_m3, units)} less than spirit and water apart`
    : html`${volumeInk(-lost_m3, units)} more than spirit and water apart`;
}

function warmed(mixed_K: number | undefined, warmed_K: number | undefined, units: Units): unknown {
  if (mixed_K === undefined || warmed_K === undefined || warmed_K < 0.5) return '';
  return html`Mixing warms it, to ${ink(temperatureText(mixed_K, units))} at most.`;
}

/** From what warmth its vapour can be lit, before and after. */
function lit(before: number, after: number, units: Units): unknown {
  const least = 0.02;
  if (before < least || after < least) return '';
  const point = (strength: number): string => temperatureText(flashPoint(strength), units);
  return html`Its vapour can be lit from some ${ink(point(before))} before and some ${ink(point(after))} after.`;
}

export const bringDown = workingPiece({
  sentences: [
    [
      ...measuredSentence,
      'It is to come down to ',
      { blank: 'wantedStrength' },
      ' with water of ',
      { blank: 'waterTemperature' },
      '.',
    ],
    sureSentence,
  ],
  answer,
  cautions: ['pouring'],
  notes: () =>
    html`<p>${plusMinusMeans}</p>
      ${source(
        html`densities by OIML R 22 (1975); heat of mixing by the reference model; flash points from that of pure
        ethanol, NFPA 497 (2008). Sugar and oak make a hydrometer read low: see below.`,
      )}`,
  provides: ({ values }) => {
    const now = broughtDown(values);
    const there = typeof now === 'string' ? undefined : now;
    return [
      {
        name: 'waterToAdd',
        label: 'volume of the water that brings the spirit down',
        quantity: 'volume',
        value: there?.diluted.water_m3 ?? null,
      },
      {
        name: 'broughtDown',
        label: 'volume of the spirit brought down',
        quantity: 'volume',
        value: there?.diluted.spirit.volume_m3 ?? null,
      },
    ];
  },
});
