// Refuses what a train cannot be run as, with its reason: surroundings hotter than spirit boils, and parts that hold next to nothing.

import type { EthanolWater } from '../../../equilibrium/ethanol-water.js';
import type { Fault } from '../../../errors.js';
import { type Holder, LAMBDA0, MOL_PER_M3, trainOf } from './holders.js';
import type { CompleteProblem } from '../../complete.js';

/** A part that the vapour renews in less than this, s, is refused: films on metal are renewed in some 50 ms. Source: this project's choice. */
const LEAST_RENEWAL_s = 1e-3;

/** A part that holds less than this for each J/K of its metal is refused, mol: a tenth of a micrometre of liquid on a centimetre of copper. Source: this project's choice. */
const LEAST_FILM = 1e-7;

/** Everything round the still must be colder than the coldest boiling point there is at the head: else it boils by itself, and dries out. */
export function surroundingsFaults({ still, activity }: CompleteProblem, system: EthanolWater): Fault[] {
  const { air, refluxCondenser: condenser } = still;
  const { temperature } = system.curve(activity).at(air.pressure_Pa);
  const coldest_K = temperature.reduce((least, value, i) => (i % 4 === 0 ? Math.min(least, value) : least));
  const colder = (argument: string, value: number): Fault[] => {
    if (value < coldest_K) return [];
    const expected = `a temperature below ${coldest_K.toFixed(2)} K, where spirit boils at this pressure`;
    return [{ argument, value, expected }];
  };
  return [
    ...colder('still.air.temperature_K', air.temperature_K),
    ...(condenser.kind === 'partial' && condenser.coolant.kind === 'water'
      ? colder('still.refluxCondenser.coolant.inlet_K', condenser.coolant.inlet_K)
      : []),
  ];
}

/** No part may hold so little that its vapour renews it in no time. */
export function holdUpFaults(problem: CompleteProblem): Fault[] {
  const { holders, drum, nominalVapour_mol_s } = trainOf(problem);
  const least_mol = LEAST_RENEWAL_s * nominalVapour_mol_s;
  const where = {
    kettle: 'charge',
    doubler: 'doublerCharges',
    plate: 'still.column.holdUp',
    packing: 'still.column.liquidShare',
    head: 'still.head.film_m3',
    partialCondenser: 'still.refluxCondenser.holdUp',
  };
  const held = new Map<string, number>();
  for (const { kind, scale_mol } of holders) {
    held.set(where[kind], Math.min(held.get(where[kind]) ?? Infinity, kind === 'kettle' ? 20 * scale_mol : scale_mol));
  }
  held.set('still.productCondenser.holdUp', drum.scale_mol);
  const expected = `to hold ${least_mol.toPrecision(2)} mol or more, which vapour at ${(nominalVapour_mol_s * LAMBDA0).toPrecision(3)} W renews in a millisecond`;
  const little = [...held].filter(([, mol]) => mol < least_mol);
  return [...little.map(([argument, value]) => ({ argument, value, expected })), ...filmFaults(holders, where)];
}

/** Nor so little liquid on so much metal that the liquid is boiled away and condensed again by a breath of warmth in it. */
function filmFaults(holders: readonly Holder[], where: Readonly<Record<Holder['kind'], string>>): Fault[] {
  const thin = holders.filter(({ kind, scale_mol, metal_J_K }) => {
    return kind !== 'kettle' && scale_mol < LEAST_FILM * metal_J_K;
  });
  const named = new Map(thin.map((holder) => [where[holder.kind], holder]));
  return [...named].map(([argument, { kind, scale_mol, metal_J_K }]) => {
    const [per, unit] = kind === 'head' ? [MOL_PER_M3, 'm³'] : [1, 'mol'];
    const least = `${((LEAST_FILM * metal_J_K) / per).toPrecision(2)} ${unit} or more`;
    const expected = `${least}, a tenth of a micrometre of liquid on ${metal_J_K.toPrecision(3)} J/K of metal`;
    return { argument, value: scale_mol / per, expected };
  });
}
