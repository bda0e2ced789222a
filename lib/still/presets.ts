// Stills to begin with, all invented, from a bench to a distillery, in litres and in US gallons.

import { toSI } from '../units/units.js';
import type { VolumeFraction20C } from '../units/quantities.js';
import { deepFreeze } from '../deep-freeze.js';
import type { StillDescription } from './describe.js';

interface Filled {
  readonly kind: 'volume';
  readonly volume_m3: number;
  readonly strength: VolumeFraction20C;
}

/** A still as far as it is known, with what one would fill into it: the parts of a problem. Invented. */
export interface StillPreset {
  readonly name: string;
  /** In a sentence. */
  readonly about: string;
  readonly still: StillDescription;
  readonly charge: Filled;
  readonly doublerCharges: readonly { readonly charge: Filled }[];
}

const litres = (value: number): number => toSI(value, 'L');
const gallons = (value: number): number => toSI(value, 'US gal');

const filled = (volume_m3: number, strength: number): Filled => ({ kind: 'volume', volume_m3, strength });
const charged = (volume_m3: number, strength: number): { charge: Filled } => ({ charge: filled(volume_m3, strength) });

/**
 * Invented stills, frozen, each a description to run as it is or to begin one of your own with; completions() says what nobody set.
 * Source: none; what is left out is this project's choice, docs/theory/train.md.
 */
export const STILL_PRESETS: readonly StillPreset[] = deepFreeze<readonly StillPreset[]>([
  {
    name: 'benchPot',
    about: 'A 20 L pot on a bench, heated by 1.5 kW.',
    still: { kettle: { volume_m3: litres(20), power_W: 1500 } },
    charge: filled(litres(15), 0.1),
    doublerCharges: [],
  },
  {
    name: 'benchPacking',
    about: 'A 20 L kettle under a metre of rings, 60 mm wide, heated by 1.2 kW.',
    still: {
      kettle: { volume_m3: litres(20), power_W: 1200 },
      column: { kind: 'packing', height_m: 1, diameter_m: 0.06, hetp_m: 0.2 },
      head: { heatLoss_W_K: 0, metal_J_K: 0 },
    },
    charge: filled(litres(15), 0.3),
    doublerCharges: [],
  },
  {
    name: 'shedDoubler',
    about: 'A 26 gallon pot with a 5 gallon doubler, heated by 5.5 kW.',
    still: { kettle: { volume_m3: gallons(26), power_W: 5500 }, doublers: [{ volume_m3: gallons(5) }] },
    charge: filled(gallons(20), 0.09),
    doublerCharges: [charged(gallons(2.5), 0.3)],
  },
  {
    name: 'fourPlates',
    about: 'A 300 L kettle with four bubble-cap plates and a reflux condenser of set duty.',
    still: {
      kettle: { volume_m3: litres(300), power_W: 18e3 },
      column: { kind: 'plates', count: 4 },
      head: { heatLoss_W_K: 0, metal_J_K: 0 },
      refluxCondenser: { kind: 'partial', coolant: { kind: 'duty', power_W: 9e3 } },
    },
    charge: filled(litres(220), 0.12),
    doublerCharges: [],
  },
  {
    name: 'twelvePlates',
    about: 'A 1000 L kettle under twelve sieve plates with a total condenser.',
    still: {
      kettle: { volume_m3: litres(1000), power_W: 60e3 },
      column: { kind: 'plates', count: 12, plateKind: 'sieve', diameter_m: 0.26, spacing_m: 0.3, openAreaShare: 0.07 },
      head: { heatLoss_W_K: 0, metal_J_K: 0 },
    },
    charge: filled(litres(800), 0.25),
    doublerCharges: [],
  },
  {
    name: 'doubleRetort',
    about: 'A 500 gallon rum pot with two retorts in series.',
    still: {
      kettle: { volume_m3: gallons(500), power_W: 110e3 },
      doublers: [{ volume_m3: gallons(110) }, { volume_m3: gallons(90) }],
    },
    charge: filled(gallons(380), 0.065),
    doublerCharges: [charged(gallons(46), 0.3), charged(gallons(38), 0.72)],
  },
  {
    name: 'spiritStill',
    about: 'A 5000 L spirit still of bare copper with a long arm.',
    still: {
      kettle: { volume_m3: litres(5000), power_W: 160e3 },
      head: { heatLoss_W_K: 130, metal_J_K: 250e3, film_m3: 2e-3 },
    },
    charge: filled(litres(3500), 0.25),
    doublerCharges: [],
  },
]);
