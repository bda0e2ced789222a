// Stills to begin with, all invented, from a bench to a distillery, in litres and in US gallons.

import { toSI } from '../units/units.js';
import type { VolumeFraction20C } from '../units/quantities.js';
import { completeStill } from './describe.js';
import type { Still } from './still.js';

/** A still with what one would fill into it. Invented. */
export interface StillPreset {
  readonly name: string;
  /** In a sentence. */
  readonly about: string;
  readonly still: Still;
  readonly charge: { readonly volume_m3: number; readonly strength: VolumeFraction20C };
  readonly doublerCharges: readonly { readonly volume_m3: number; readonly strength: VolumeFraction20C }[];
}

const litres = (value: number): number => toSI(value, 'L');
const gallons = (value: number): number => toSI(value, 'US gal');

/** Invented stills. Source: none; drawn up by completeStill, docs/theory/train.md. */
export const STILL_PRESETS: readonly StillPreset[] = [
  {
    name: 'benchPot',
    about: 'A 20 L pot on a bench, heated by 1.5 kW.',
    still: completeStill({ kettle: { volume_m3: litres(20), power_W: 1500 } }),
    charge: { volume_m3: litres(15), strength: 0.1 },
    doublerCharges: [],
  },
  {
    name: 'benchPacking',
    about: 'A 20 L kettle under a metre of rings, 60 mm wide, heated by 1.2 kW.',
    still: completeStill({
      kettle: { volume_m3: litres(20), power_W: 1200 },
      column: { kind: 'packing', height_m: 1, diameter_m: 0.06, hetp_m: 0.2 },
      head: { heatLoss_W_K: 0, metal_J_K: 0 },
    }),
    charge: { volume_m3: litres(15), strength: 0.3 },
    doublerCharges: [],
  },
  {
    name: 'shedDoubler',
    about: 'A 26 gallon pot with a 5 gallon doubler, heated by 5.5 kW.',
    still: completeStill({ kettle: { volume_m3: gallons(26), power_W: 5500 }, doublers: [{ volume_m3: gallons(5) }] }),
    charge: { volume_m3: gallons(20), strength: 0.09 },
    doublerCharges: [{ volume_m3: gallons(2.5), strength: 0.3 }],
  },
  {
    name: 'fourPlates',
    about: 'A 300 L kettle with four bubble-cap plates and a reflux condenser of set duty.',
    still: completeStill({
      kettle: { volume_m3: litres(300), power_W: 18e3 },
      column: { kind: 'plates', count: 4 },
      head: { heatLoss_W_K: 0, metal_J_K: 0 },
      refluxCondenser: { kind: 'partial', coolant: { kind: 'duty', power_W: 9e3 } },
    }),
    charge: { volume_m3: litres(220), strength: 0.12 },
    doublerCharges: [],
  },
  {
    name: 'twelvePlates',
    about: 'A 1000 L kettle under twelve sieve plates with a total condenser.',
    still: completeStill({
      kettle: { volume_m3: litres(1000), power_W: 60e3 },
      column: { kind: 'plates', count: 12, plateKind: 'sieve', diameter_m: 0.26, spacing_m: 0.3, openAreaShare: 0.07 },
      head: { heatLoss_W_K: 0, metal_J_K: 0 },
    }),
    charge: { volume_m3: litres(800), strength: 0.25 },
    doublerCharges: [],
  },
  {
    name: 'doubleRetort',
    about: 'A 500 gallon rum pot with two retorts in series.',
    still: completeStill({
      kettle: { volume_m3: gallons(500), power_W: 110e3 },
      doublers: [{ volume_m3: gallons(110) }, { volume_m3: gallons(90) }],
    }),
    charge: { volume_m3: gallons(380), strength: 0.065 },
    doublerCharges: [
      { volume_m3: gallons(46), strength: 0.3 },
      { volume_m3: gallons(38), strength: 0.72 },
    ],
  },
  {
    name: 'spiritStill',
    about: 'A 5000 L spirit still of bare copper with a long arm.',
    still: completeStill({
      kettle: { volume_m3: litres(5000), power_W: 160e3 },
      head: { heatLoss_W_K: 130, metal_J_K: 250e3, film_m3: 2e-3 },
    }),
    charge: { volume_m3: litres(3500), strength: 0.25 },
    doublerCharges: [],
  },
];
