// What every public function asks of its arguments besides ranges: records with no unknown fields, known choices, lists that are lists.
// Each finds faults; `refuse` throws them.

import { type Fault, InputError, type InputCode } from './errors.js';

export type Rec = Readonly<Record<string, unknown>>;

/** A record: no list, no null, nothing bare. */
export function isRecord(value: unknown): value is Rec {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** A fault unless the value is a record. */
export function recordFault(argument: string, value: unknown): Fault[] {
  return isRecord(value) ? [] : [{ code: typeCode(value), argument, value, expected: 'a record' }];
}

/** A record with no other fields than these. */
export function fieldFaults(where: string, value: unknown, known: readonly string[]): Fault[] {
  if (!isRecord(value)) return recordFault(where, value);
  return Object.keys(value)
    .filter((name) => !known.includes(name))
    .map((name) => unknownFault(`${where}.`, name, value[name], known));
}

export function unknownFault(where: string, name: string, value: unknown, known: readonly string[]): Fault {
  return {
    code: 'unknownField',
    argument: `${where}${name === '' ? "''" : name}`,
    value,
    expected: `no such field; known are ${known.join(', ')}`,
  };
}

/** A fault unless the value is one of the known ones. */
export function choiceFault(argument: string, value: unknown, known: readonly unknown[]): Fault[] {
  if (known.includes(value)) return [];
  const names = known.map(String);
  const expected = names.length === 1 ? `'${names[0]!}'` : `one of ${names.join(', ')}`;
  return [{ code: typeof value === 'string' ? 'unknownChoice' : typeCode(value), argument, value, expected }];
}

/** A record of a known kind, with the fields of that kind and no others. */
export function kindFault(
  where: string,
  value: unknown,
  kinds: Readonly<Record<string, readonly string[]>>,
  tag = 'kind',
): Fault[] {
  if (!isRecord(value)) return recordFault(where, value);
  const kind = value[tag];
  const faults = choiceFault(`${where}.${tag}`, kind, Object.keys(kinds));
  return faults.length > 0 ? faults : fieldFaults(where, value, [tag, ...kinds[kind as string]!]);
}

/** A fault unless the value is a list of so many. */
export function listFault(argument: string, value: unknown, what: string, least: number, most: number): Fault[] {
  if (!Array.isArray(value) || value.length < least) {
    const expected = `a list of ${least === 0 ? '' : `at least ${String(least)}: `}${what}`;
    return [{ code: Array.isArray(value) ? 'outOfRange' : typeCode(value), argument, value, expected }];
  }
  if (value.length <= most) return [];
  return [{ argument: `${argument}.length`, value: value.length, expected: `up to ${String(most)} ${what}` }];
}

/** A fault unless the value has these properties, each of the type named: how a slice, a system or a solution is known. */
export function shapeFault(
  argument: string,
  value: unknown,
  shape: Readonly<Record<string, string>>,
  expected: string,
): Fault[] {
  const fits =
    typeof value === 'object' &&
    value !== null &&
    Object.entries(shape).every(([name, type]) => typeName((value as Rec)[name]) === type);
  return fits ? [] : [{ code: typeCode(value), argument, value, expected }];
}

/** Throws an InputError where there are faults. */
export function refuse(faults: readonly Fault[]): void {
  if (faults.length > 0) throw new InputError(...faults);
}

/** The code of a value that is of another type, or not there. */
export function typeCode(value: unknown): InputCode {
  return value === undefined ? 'missing' : 'wrongType';
}

function typeName(value: unknown): string {
  if (value instanceof Float64Array) return 'numbers';
  return Array.isArray(value) ? 'list' : typeof value;
}
