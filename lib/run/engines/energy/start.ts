// The state a train begins in. Whatever plates, head and condensers hold at the start is taken from the kettle's charge, so
// that the whole is what was filled in. Energies in units of LAMBDA0.
//
// 'cold': the kettle at its filling temperature; plates, head and drum moist with a little of the charge at the air's temperature.
// 'firstVapour': the kettle boils, plates and head are full of its liquid and boil too, the drum is full of what its vapour condenses to.
// Doublers begin as they were charged, in both.

import { ZERO_CELSIUS } from '../../../constants.js';
import type { Amounts } from '../../../mixture/volume.js';
import type { Kelvin, MoleFraction } from '../../../units/quantities.js';
import { chargeAmounts } from '../../charge.js';
import { LAMBDA0, type Train } from './holders.js';
import type { CompleteProblem } from '../../complete.js';
import { excessBelow, ROUNDING } from './rounding.js';
import { ENERGY, ETHANOL, UNKNOWNS, VAPOUR, WATER } from './streams.js';
import type { TrainTables } from './tables.js';

/** Share of its usual hold-up that clings to a cold, empty part. Source: this project's choice. */
export const MOIST = 0.01;

/** The state at the beginning. */
export function startingState(problem: CompleteProblem, train: Train, tables: TrainTables): Float64Array {
  const { holders, drum } = train;
  const state = new Float64Array(UNKNOWNS * (holders.length + 2));
  const hot = problem.start === 'firstVapour';
  const air_K = problem.still.air.temperature_K;
  const charge = chargeAmounts(problem.charge);
  const x0 = charge.ethanol_mol / (charge.ethanol_mol + charge.water_mol);
  let { ethanol_mol, water_mol } = charge;
  const read = pointReader(train, tables);
  const fill = (j: number, amounts: Amounts, temperature_K: Kelvin | 'boiling'): void => {
    const o = UNKNOWNS * j;
    state[o + ETHANOL] = amounts.ethanol_mol;
    state[o + WATER] = amounts.water_mol;
    state[o + ENERGY] = read.energy(j, amounts, temperature_K);
    state[o + VAPOUR] = read.vapour(j, amounts.ethanol_mol / (amounts.ethanol_mol + amounts.water_mol));
  };
  const take = (amount_mol: number, x: MoleFraction): Amounts => {
    const taken = { ethanol_mol: amount_mol * x, water_mol: amount_mol * (1 - x) };
    ethanol_mol -= taken.ethanol_mol;
    water_mol -= taken.water_mol;
    return taken;
  };
  holders.forEach((holder, j) => {
    if (holder.kind === 'kettle') return;
    if (holder.kind === 'doubler') {
      const own = problem.doublerCharges[holder.number - 1]!;
      fill(j, chargeAmounts(own.charge), own.temperature_K ?? air_K);
      return;
    }
    const behindDoubler = holders.some((other) => other.kind === 'doubler');
    const full = hot && !behindDoubler;
    const held = holder.brim_m3 === null ? holder.brim_mol : holder.brim_m3 / read.volume(j, x0);
    fill(j, take(full ? held : MOIST * held, x0), full ? 'boiling' : air_K);
  });
  const first = read.vapour(0, x0);
  const d = UNKNOWNS * holders.length;
  const inDrum = hot && holders.every((holder) => holder.kind !== 'doubler') ? first : x0;
  const drum_mol = drum.brim_m3 / read.volume(holders.length, inDrum);
  const drumStart = take(inDrum === first ? drum_mol : MOIST * drum_mol, inDrum);
  state[d + ETHANOL] = drumStart.ethanol_mol;
  state[d + WATER] = drumStart.water_mol;
  fill(0, { ethanol_mol, water_mol }, hot ? 'boiling' : problem.chargeTemperature_K);
  // With an efficiency below 1 the vapours build on each other from the kettle up.
  for (let j = 1; j < holders.length; j++) {
    const below = state[UNKNOWNS * (j - 1) + VAPOUR]!;
    const own = state[UNKNOWNS * j + VAPOUR]!;
    state[UNKNOWNS * j + VAPOUR] = below + holders[j]!.efficiency * (own - below);
  }
  return state;
}

/** Reads the tables of a holder, outside the hot loops. */
function pointReader(
  { holders, nominalVapour_mol_s }: Train,
  { intervals, boiling, cold }: TrainTables,
): {
  volume(j: number, x: MoleFraction): number;
  vapour(j: number, x: MoleFraction): MoleFraction;
  energy(j: number, amounts: Amounts, temperature_K: Kelvin | 'boiling'): number;
} {
  const cubic = (table: Float64Array, i: number, s: number): number =>
    table[i]! + s * (table[i + 1]! + s * (table[i + 2]! + s * table[i + 3]!));
  const place = (x: MoleFraction): readonly [number, number] => {
    const k = Math.min(intervals - 1, Math.max(0, Math.floor(x * intervals)));
    return [k, x * intervals - k];
  };
  const value = (j: number, x: MoleFraction, quantity: 0 | 4 | 8 | 12): number => {
    const [k, s] = place(x);
    return cubic(boiling[j]!, 16 * k + quantity, s);
  };
  return {
    volume: (j, x) => value(j, x, 12),
    vapour(j, x) {
      const alpha = value(j, x, 0);
      return (alpha * x) / (1 + (alpha - 1) * x);
    },
    energy(j, { ethanol_mol, water_mol }, temperature_K) {
      const amount_mol = ethanol_mol + water_mol;
      const x = ethanol_mol / amount_mol;
      const metal = holders[j]!.metal_J_K / LAMBDA0;
      const boiling_K = value(j, x, 4);
      const energy = amount_mol * (value(j, x, 8) / LAMBDA0) + metal * (boiling_K - ZERO_CELSIUS);
      // Boiling: what gives the usual vapour.
      const excess = nominalVapour_mol_s * holders[j]!.boilLag_s;
      if (temperature_K === 'boiling' || temperature_K >= boiling_K) return energy + excess;
      const [k, s] = place(x);
      const at = 8 * k;
      const below_K = boiling_K - temperature_K;
      const perMole = below_K * (cubic(cold[j]!, at, s) + cubic(cold[j]!, at + 4, s) * below_K);
      const heat = (amount_mol * perMole) / LAMBDA0 + metal * below_K;
      return energy - excessBelow(heat, ROUNDING * excess);
    },
  };
}
