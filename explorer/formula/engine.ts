// The one door to mathjs: units the small table does not know. Loaded only when such a unit is typed, so
// that its bytes never stand before the first figure. Only plain SI numbers leave it.

import { create, createUnitDependencies, toDependencies, unitDependencies } from 'mathjs';

const math = create({ ...unitDependencies, ...toDependencies, ...createUnitDependencies }, {});

/** Units people type that mathjs spells otherwise. */
const spellings: readonly (readonly [RegExp, string])[] = [
  [/btu/giu, 'BTU'],
  [/(?:hr|hours?)\b/giu, 'h'],
  [/\bqts?\b/giu, 'qt'],
  [/\bquarts?\b/giu, 'qt'],
  [/\bpints?\b/giu, 'pint'],
  [/\bcups?\b/giu, 'cup'],
  [/\bhp\b/giu, 'hp'],
  [/\btorr\b/giu, 'torr'],
  [/³/gu, '^3'],
];

/** The dimension wanted, as the SI unit it is measured in. */
export type EngineDimension = 'm^3' | 'W' | 'Pa' | 'm';

/** `number` of `unit` in SI; undefined where the unit is unknown or of another dimension. */
export function siFromUnit(number: number, unit: string, dimension: EngineDimension): number | undefined {
  const spelled = spellings.reduce((text, [pattern, right]) => text.replace(pattern, right), unit);
  for (const candidate of [spelled, unit, unit.toLowerCase()]) {
    try {
      return math.unit(number, candidate).toNumber(dimension);
    } catch {
      // not a unit in this spelling, or of another dimension: try the next
    }
  }
  return undefined;
}
