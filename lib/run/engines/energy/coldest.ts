// Nothing in a still gets colder than the coldest thing round it: air, cooling water, what was filled in, and for what a set duty cools the
// temperature at which that has faded away. A state beyond it is none, however small the error of the step that ended there.

import type { CompleteProblem } from '../../complete.js';
import { FADES_TO_K } from './fading.js';
import { READINGS, TEMPERATURE_K } from './readings.js';
import type { Streams } from './streams.js';
import type { TrainTables } from './tables.js';

/** Colder than everything by this is no round-off of a corner any more. Source: this project's choice. */
const COLDER_K = 1;
/** Numbers of one interval of a table of boiling points, and where the temperature is among them. */
const ROW = 16;
const BOILS_K = 4;

/** The coldest a part of a problem's still can get, K. */
export function coldest_K(
  { still, chargeTemperature_K, doublerCharges }: CompleteProblem,
  tables: TrainTables,
): number {
  const { air, productCondenser, refluxCondenser: condenser } = still;
  const coldest = Math.min(
    air.temperature_K,
    productCondenser.inlet_K,
    chargeTemperature_K,
    ...doublerCharges.map(({ temperature_K }) => temperature_K ?? Infinity),
  );
  if (condenser.kind !== 'partial') return coldest;
  if (condenser.coolant.kind === 'water') return Math.min(coldest, condenser.coolant.inlet_K);
  const boils = tables.boiling.at(-1)!.filter((_, i) => i % ROW === BOILS_K);
  return Math.min(coldest, boils.reduce((least, T) => Math.min(least, T), Infinity) - FADES_TO_K);
}

/** Whether a part is colder than can be, in the state last evaluated. */
export function tooCold({ readings, count }: Streams, coldest: number): boolean {
  for (let at = TEMPERATURE_K; at < READINGS * count; at += READINGS) {
    if (readings[at]! < coldest - COLDER_K) return true;
  }
  return false;
}
