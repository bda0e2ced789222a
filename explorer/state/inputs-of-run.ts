// Inputs of a run: what is filled in, how much runs back, and the two numbers that belong to no run.

import { everywhere, grain, type Input } from './input.js';

/** Doublers a still has at most, and steps a run sheet. */
export const mostDoublers = 3;
export const mostSteps = 12;

/** Limits are those of a small still and of what the models were fitted to. */
const filled: readonly Input[] = [
  {
    key: 'charge.volume_m3',
    name: 'charge',
    inFormulas: 'volume',
    label: 'volume of the charge',
    quantity: 'volume',
    low: 0.000_75,
    high: 1.005,
    grain: {
      metric: grain(1, 1000, 5, 1),
      us: grain(0.2, 265, 1, 1),
      imperial: grain(0.2, 220, 1, 1),
    },
    tooHigh: 'is more than these pages work with',
    tooLow: 'is less than a still can run on',
  },
  {
    key: 'charge.strength',
    name: 'strength',
    inFormulas: 'strength',
    label: 'strength of the charge',
    quantity: 'strength',
    low: 0.0049,
    high: 0.951,
    grain: {
      metric: grain(0.5, 95, 0.5, 2),
      us: grain(1, 190, 1, 1),
      imperial: grain(0.5, 95, 0.5, 2),
    },
    tooHigh: 'is stronger than a charge can be here',
    tooLow: 'is too weak to distil',
  },
];

const which = ['', 'second ', 'third '];

/** Doublers are charged alike. */
const doublersFilled = Array.from({ length: mostDoublers }, (_none, i): readonly Input[] => {
  const end = i === 0 ? '' : `-${String(i + 1)}`;
  const first = i === 0;
  return [
    {
      key: `doublerCharges[${i}].charge.volume_m3`,
      name: `doubler-volume${end}`,
      ...(first ? { inFormulas: 'doublerVolume' } : {}),
      of: ['volume'],
      label: `what the ${which[i]!}doubler is charged with`,
      quantity: 'volume',
      low: 0.000_075,
      high: 0.505,
      grain: {
        metric: grain(0.1, 500, 1, 1),
        us: grain(0.02, 133, 0.2, 2),
        imperial: grain(0.02, 110, 0.2, 2),
      },
      tooHigh: 'is more than a doubler here holds',
      tooLow: 'is too little to bubble through',
    },
    {
      key: `doublerCharges[${i}].charge.strength`,
      name: `doubler-strength${end}`,
      ...(first ? { inFormulas: 'doublerStrength' } : {}),
      of: ['volume'],
      label: `strength of the ${which[i]!}doubler’s charge`,
      quantity: 'strength',
      low: 0.0049,
      high: 0.951,
      grain: {
        metric: grain(0.5, 95, 1, 2),
        us: grain(1, 190, 2, 1),
        imperial: grain(0.5, 95, 1, 2),
      },
      tooHigh: 'is stronger than a charge can be here',
      tooLow: 'is as good as water: set 0.5 for that',
    },
  ];
}).flat();

/** The step that the sheet of a new notebook draws with; its ratio is ‘the’ reflux ratio. */
const drawing = 2;

const refluxes = Array.from({ length: mostSteps }, (_none, i): Input => ({
  key: `sheet[${i}].reflux`,
  name: i === drawing ? 'reflux' : `reflux-${String(i + 1)}`,
  ...(i === drawing ? { inFormulas: 'reflux' } : {}),
  label: i === drawing ? 'reflux ratio' : `reflux ratio of step ${String(i + 1)}`,
  quantity: 'ratio',
  low: 0,
  high: 30,
  grain: everywhere(0, 30, 0.5, 2),
  tooHigh: 'would hardly let anything out',
  tooLow: 'is less than nothing sent back',
}));

const asked: readonly Input[] = [
  {
    key: 'asked.strength',
    name: 'above',
    inFormulas: 'wantedStrength',
    label: 'strength that counts',
    quantity: 'strength',
    low: 0.199,
    high: 0.9705,
    grain: {
      metric: grain(20, 97, 1, 1),
      us: grain(40, 194, 2, 1),
      imperial: grain(20, 97, 1, 1),
    },
    tooHigh: 'is more than a column brings over in the open air',
    tooLow: 'is weaker than anyone keeps',
  },
  {
    key: 'asked.pressure_Pa',
    name: 'ceiling-pressure',
    inFormulas: 'ceilingPressure',
    label: 'pressure the ceiling is asked at',
    quantity: 'pressure',
    low: 2990,
    high: 300_100,
    grain: {
      metric: grain(3, 300, 1, 1),
      us: grain(0.5, 43.5, 0.2, 2),
      imperial: grain(3, 300, 1, 1),
    },
    tooHigh: 'is more than these pages look at',
    tooLow: 'is less than the model can be asked for',
  },
];

export const inputsOfRun: readonly Input[] = [...filled, ...doublersFilled, ...refluxes, ...asked];
