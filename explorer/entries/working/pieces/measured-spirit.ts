// The spirit that the workings of a page share: what a hydrometer shows in so much of it, so warm.

import { spiritFromMeasured, trueStrengthFromReading, type Spirit } from '#lib/index.js';
import type { WorkingPart } from '../working.js';

/** What is measured, by the names of the numbers. */
export interface MeasuredSpirit {
  readonly spiritReading: number;
  readonly spiritVolume: number;
  readonly spiritTemperature: number;
}

export const measuredSentence: readonly WorkingPart[] = [
  'A hydrometer shows ',
  { blank: 'spiritReading' },
  ' in ',
  { blank: 'spiritVolume' },
  ' of spirit at ',
  { blank: 'spiritTemperature' },
  '. ',
];

export const sureSentence: readonly WorkingPart[] = [
  'The hydrometer is sure to ',
  { blank: 'sureStrength' },
  ', the volume to ',
  { blank: 'sureVolume' },
  ', the thermometer to ',
  { blank: 'sureTemperature' },
  '.',
];

/** The spirit as it truly is, its volume at 20 °C; the reason where no spirit floats the hydrometer so. */
export function trueSpirit(measured: MeasuredSpirit): Spirit | string {
  const { spiritReading, spiritVolume, spiritTemperature } = measured;
  const read = trueStrengthFromReading({
    scale: 'volume',
    strength: spiritReading,
    temperature_K: spiritTemperature,
  });
  if (!read.found) return read.message;
  return spiritFromMeasured({
    volume_m3: spiritVolume,
    temperature_K: spiritTemperature,
    strength: read.strength,
  });
}
