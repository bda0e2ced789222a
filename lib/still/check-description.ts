// Whether data can be the description of a still: its shape, and the numbers that are there. The rest is completed.

import { choiceFault, fieldFaults, isRecord, kindFault } from '../arguments.js';
import type { Fault } from '../errors.js';
import {
  AIR,
  DOUBLER,
  type Field,
  HEAD,
  KETTLE,
  kind,
  MOST_DOUBLERS,
  numbers,
  PACKING,
  PLATES,
  TOTAL,
  volume,
  WATER,
} from './fields.js';

/** Fields of the parts of a still, by kind where a part has kinds. */
const HELD = ['holdUp'];
const names = (fields: readonly Field[]): readonly string[] => fields.map(([name]) => name);
export const SECTIONS: Readonly<Record<string, readonly string[]>> = {
  none: [],
  plates: [...names(PLATES), 'plateKind', 'holdUp', 'efficiencyFalls'],
  packing: names(PACKING),
};
const CONDENSERS: Readonly<Record<string, readonly string[]>> = {
  none: [],
  total: [...HELD, ...names(TOTAL)],
  partial: [...HELD, 'coolant'],
};
export const HOLD_UPS = { volume: ['volume_m3'], amount: ['amount_mol'] };
const COOLANTS = { duty: ['power_W'], water: names(WATER) };
const PARTS = ['kettle', 'doublers', 'column', 'head', 'refluxCondenser', 'productCondenser', 'air'];

/**
 * What keeps data from being the description of a still: parts that are no records, of no known kind, with fields nobody knows or bad numbers.
 *
 * Equation: shape first, then each number that is there within its range.
 * @param still A StillDescription, or data that should be one.
 * @param where Path of the record in what is checked, for the faults' arguments.
 * @returns Faults, each with argument, value and what would be right; an empty list when it can be completed.
 * @example descriptionFaults({ kettle: { volume_m3: 0.1, colour: 'red' } }).length // → 1
 * Source: this project's error contract (DEVELOPERS.md).
 */
export function descriptionFaults(still: unknown, where = 'still'): Fault[] {
  const faults = fieldFaults(where, still, PARTS);
  if (!isRecord(still)) return faults;
  const { kettle, doublers, column, head, refluxCondenser, productCondenser, air } = still;
  const part = (name: string, value: unknown, known: readonly string[], own: readonly Field[]): Fault[] =>
    value === undefined
      ? []
      : [
          ...fieldFaults(`${where}.${name}`, value, known),
          ...given(`${where}.${name}`, value, own),
          ...overflowFaults(`${where}.${name}`, value),
        ];
  const partOfKind = (name: string, value: unknown, kinds: Readonly<Record<string, readonly string[]>>): Fault[] => {
    if (value === undefined) return [];
    const at = `${where}.${name}`;
    const wrong = kind(at, value, Object.keys(kinds));
    if (wrong.length > 0 || !isRecord(value)) return wrong;
    const own = value['kind'] === 'plates' ? PLATES : value['kind'] === 'packing' ? PACKING : TOTAL;
    return [...fieldFaults(at, value, ['kind', ...kinds[value['kind'] as string]!]), ...given(at, value, own)];
  };
  const known = [...names(DOUBLER), 'overflow'];
  const listed =
    doublers === undefined || (Array.isArray(doublers) && doublers.length <= MOST_DOUBLERS)
      ? Array.from(doublers ?? []).flatMap((one, i) => part(`doublers[${String(i)}]`, one ?? null, known, DOUBLER))
      : [
          {
            argument: `${where}.doublers`,
            value: doublers,
            expected: `a list of up to ${String(MOST_DOUBLERS)} doublers`,
          },
        ];
  return [
    ...faults,
    ...part('kettle', kettle ?? null, names(KETTLE), KETTLE),
    ...(isRecord(kettle) && kettle['volume_m3'] === undefined
      ? numbers(`${where}.kettle`, kettle, [volume('volume_m3')])
      : []),
    ...listed,
    ...partOfKind('column', column, SECTIONS),
    ...part('head', head, names(HEAD), HEAD),
    ...partOfKind('refluxCondenser', refluxCondenser, CONDENSERS),
    ...part('productCondenser', productCondenser, [...HELD, ...names(WATER)], WATER),
    ...heldFaults(`${where}.productCondenser`, productCondenser),
    ...part('air', air, names(AIR), AIR),
  ];
}

/** Fields nobody knows, at any depth; nothing else is looked at. */
export function unknownFieldFaults(where: string, still: unknown): Fault[] {
  return descriptionFaults(still, where).filter(({ code }) => code === 'unknownField');
}

/** A doubler's way of overflowing, where it is said. */
function overflowFaults(where: string, value: unknown): Fault[] {
  if (!isRecord(value) || value['overflow'] === undefined) return [];
  return choiceFault(`${where}.overflow`, value['overflow'], ['back', 'over']);
}

/** Hold-up and coolant where they are said: a known kind, and none but its own fields. */
function heldFaults(where: string, value: unknown): Fault[] {
  if (!isRecord(value)) return [];
  const { holdUp, coolant } = value;
  return [
    ...(holdUp === undefined ? [] : kindFault(`${where}.holdUp`, holdUp, HOLD_UPS)),
    ...(coolant === undefined ? [] : kindFault(`${where}.coolant`, coolant, COOLANTS)),
  ];
}

/** Faults of the numbers that are there. */
function given(where: string, value: unknown, own: readonly Field[]): Fault[] {
  return isRecord(value)
    ? numbers(
        where,
        value,
        own.filter(([name]) => value[name] !== undefined),
      )
    : [];
}
