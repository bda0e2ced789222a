// Inputs of a still below and above its column: kettle, doublers, head, condensers, and the air it stands in.

import { across, everywhere, grain, small, type Input, type PlainQuantity } from './input.js';
import { mostDoublers } from './inputs-of-run.js';

export const lost: PlainQuantity = { unit: 'W/K', si: 1 };
export const stored: PlainQuantity = { unit: 'kJ/K', si: 1000 };
/** A kilogram of water is a litre, near enough for a tap. */
const water: PlainQuantity = { unit: 'kg/min', si: 1 / 60 };
const kelvin: PlainQuantity = { unit: 'K', si: 1 };

const high = { tooHigh: 'is more than a small still has', tooLow: 'is less than it can be' };
const losing = { quantity: lost, low: 0, high: 200, grain: everywhere(0, 200, 0.1, 2), ...high } as const;
const storing = { quantity: stored, low: 0, high: 1e6, grain: everywhere(0, 1000, 0.1, 2), ...high } as const;

const kettle: readonly Input[] = [
  {
    key: 'still.kettle.volume_m3',
    name: 'kettle',
    inFormulas: 'kettleVolume',
    label: 'volume of the kettle',
    quantity: 'volume',
    low: 0.000_99,
    high: 1.505,
    grain: {
      metric: grain(1, 1500, 5, 1),
      us: grain(0.5, 395, 1, 1),
      imperial: grain(0.5, 330, 1, 1),
    },
    tooHigh: 'is more than these pages work with',
    tooLow: 'is less than a still can run on',
  },
  {
    key: 'still.kettle.power_W',
    name: 'heat',
    inFormulas: 'heat',
    label: 'heat into the kettle',
    quantity: 'power',
    low: 290,
    high: 60_100,
    grain: {
      metric: grain(0.3, 60, 0.25, 2),
      us: grain(1000, 205_000, 500, 0),
      imperial: grain(0.3, 60, 0.25, 2),
    },
    tooHigh: 'is more than a small still takes',
    tooLow: 'is too little to keep it boiling',
  },
  {
    key: 'still.kettle.diameter_m',
    name: 'kettle-diameter',
    label: 'diameter of the kettle',
    quantity: 'across',
    low: 0.0499,
    high: 2.01,
    grain: across(50, 2000, 10),
    ...high,
  },
  {
    key: 'still.kettle.heatingSurfaceHeight_m',
    name: 'heating-surface',
    label: 'height that the heating surface reaches',
    quantity: 'across',
    low: 0.0009,
    high: 1.01,
    grain: across(1, 1000, 1),
    ...high,
  },
  { key: 'still.kettle.heatLoss_W_K', name: 'kettle-loss', label: 'heat the kettle loses', ...losing },
  { key: 'still.kettle.metal_J_K', name: 'kettle-metal', label: 'heat the kettle’s metal stores', ...storing },
];

const which = ['', 'second ', 'third '];

const doublers = Array.from({ length: mostDoublers }, (_none, i): readonly Input[] => {
  const end = i === 0 ? '' : `-${String(i + 1)}`;
  const of = `the ${which[i]!}doubler`;
  return [
    {
      key: `still.doublers[${i}].volume_m3`,
      name: `doubler-size${end}`,
      label: `volume of ${of}`,
      quantity: 'volume',
      low: 0.000_099,
      high: 1.01,
      grain: small(0.1, 1000, 0.1, 1),
      ...high,
    },
    {
      key: `still.doublers[${i}].diameter_m`,
      name: `doubler-diameter${end}`,
      label: `diameter of ${of}`,
      quantity: 'across',
      low: 0.0199,
      high: 1.51,
      grain: across(20, 1500, 5),
      ...high,
    },
    {
      key: `still.doublers[${i}].dipDepth_m`,
      name: `doubler-dip${end}`,
      label: `depth of the pipe’s mouth in ${of}`,
      quantity: 'across',
      low: 0,
      high: 1.01,
      grain: across(0, 1000, 1),
      ...high,
    },
    { key: `still.doublers[${i}].heatLoss_W_K`, name: `doubler-loss${end}`, label: `heat ${of} loses`, ...losing },
    {
      key: `still.doublers[${i}].metal_J_K`,
      name: `doubler-metal${end}`,
      label: `heat the metal of ${of} stores`,
      ...storing,
    },
  ];
}).flat();

const held = {
  of: ['volume'],
  quantity: 'volume',
  low: 0.000_000_9,
  high: 0.0201,
  grain: small(0.001, 20, 0.001, 3),
  ...high,
} as const;
const flowing = { quantity: water, low: 0, high: 10, grain: everywhere(0, 600, 0.1, 2), ...high } as const;
const cold = {
  quantity: 'temperature',
  low: 273.1,
  high: 333.2,
  grain: { metric: grain(0, 60, 1, 1), us: grain(32, 140, 1, 1), imperial: grain(0, 60, 1, 1) },
  tooHigh: 'is too warm to cool with',
  tooLow: 'is ice',
} as const;
const transferring = { quantity: lost, low: 0, high: 1e5, grain: everywhere(0, 100_000, 1, 1), ...high } as const;

const above: readonly Input[] = [
  { key: 'still.head.heatLoss_W_K', name: 'head-loss', label: 'heat the head loses', ...losing },
  { key: 'still.head.metal_J_K', name: 'head-metal', label: 'heat the head’s metal stores', ...storing },
  {
    key: 'still.head.film_m3',
    name: 'head-film',
    label: 'liquid that clings to the head',
    quantity: 'volume',
    low: 0.000_000_9,
    high: 0.0201,
    grain: small(0.001, 20, 0.001, 3),
    ...high,
  },
  { key: 'still.refluxCondenser.holdUp.volume_m3', name: 'drum', label: 'what the reflux condenser holds', ...held },
  {
    key: 'still.refluxCondenser.subcooling_K',
    of: ['total'],
    name: 'subcooling',
    label: 'how far below its boil the reflux comes back',
    quantity: kelvin,
    low: 0,
    high: 70,
    grain: everywhere(0, 70, 1, 1),
    ...high,
  },
  {
    key: 'still.refluxCondenser.coolant.power_W',
    of: ['duty'],
    name: 'duty',
    label: 'duty of the reflux condenser',
    quantity: 'power',
    low: 0,
    high: 60_100,
    grain: { metric: grain(0, 60, 0.1, 2), us: grain(0, 205_000, 500, 0), imperial: grain(0, 60, 0.1, 2) },
    ...high,
  },
  {
    key: 'still.refluxCondenser.coolant.flow_kg_s',
    of: ['water'],
    name: 'reflux-water',
    label: 'water through the reflux condenser',
    ...flowing,
  },
  {
    key: 'still.productCondenser.holdUp.volume_m3',
    name: 'condenser-held',
    label: 'what the product condenser holds',
    ...held,
  },
  {
    key: 'still.productCondenser.flow_kg_s',
    name: 'water',
    label: 'water through the product condenser',
    ...flowing,
  },
  {
    key: 'still.productCondenser.inlet_K',
    name: 'water-temperature',
    label: 'temperature of the cooling water',
    ...cold,
  },
  {
    key: 'still.productCondenser.transfer_W_K',
    name: 'transfer',
    label: 'heat the product condenser passes on',
    ...transferring,
  },
];

const air: readonly Input[] = [
  {
    key: 'still.air.pressure_Pa',
    name: 'pressure',
    inFormulas: 'pressure',
    label: 'air pressure, or an altitude',
    quantity: 'pressure',
    low: 54_400,
    high: 109_000,
    grain: {
      metric: grain(55, 108.5, 0.5, 1),
      us: grain(7.9, 15.8, 0.1, 2),
      imperial: grain(55, 108.5, 0.5, 1),
    },
    tooHigh: 'is more than the open air has',
    tooLow: 'is less than at the highest villages',
  },
  {
    key: 'still.air.temperature_K',
    name: 'air',
    label: 'temperature of the air',
    quantity: 'temperature',
    low: 253,
    high: 323.2,
    grain: { metric: grain(-20, 50, 1, 1), us: grain(-4, 122, 1, 1), imperial: grain(-20, 50, 1, 1) },
    tooHigh: 'is hotter than a still house',
    tooLow: 'is colder than these pages work with',
  },
];

export const inputsOfStill: readonly Input[] = [...kettle, ...doublers, ...above, ...air];
