// The shape of a problem that came as plain data, from an address, a file or another program: records where records
// belong, known kinds, lists that are lists. Ranges are checked afterwards, on data of the right shape.

import type { InputFault } from '../errors.js';
import { ACTIVITY_NAMES } from '../mixture/activity/registry.js';

const CHARGES = ['volume', 'amount'];
const HEATS = ['power', 'boilUp'];
const OUTPUTS = ['every', 'perStep'];
const STARTS = [undefined, 'firstVapour', 'charge'];

/** Faults of the parts that all problems share: kind, charge, activity, heat. */
export function sharedShapeFaults(problem: unknown, kind: string): InputFault[] {
  if (!isRecord(problem)) return [{ argument: 'problem', value: problem, expected: 'a record' }];
  return [
    ...oneOfFault('kind', problem['kind'], [kind]),
    ...kindFault('charge', problem['charge'], CHARGES),
    ...oneOfFault('activity', problem['activity'], ACTIVITY_NAMES),
    ...kindFault('heat', problem['heat'], HEATS),
  ];
}

/** Faults of the shape of a simple problem. */
export function simpleShapeFaults(problem: unknown): InputFault[] {
  const faults = sharedShapeFaults(problem, 'simple');
  return isRecord(problem) ? [...faults, ...rulesFaults('until', problem['until'])] : faults;
}

/** Faults of the shape of a column problem. */
export function columnShapeFaults(problem: unknown): InputFault[] {
  const faults = sharedShapeFaults(problem, 'column');
  if (!isRecord(problem)) return faults;
  return [
    ...faults,
    ...recordFault('column', problem['column']),
    ...sheetFaults(problem['sheet']),
    ...kindFault('outputs', problem['outputs'], OUTPUTS),
    ...oneOfFault('start', problem['start'], STARTS),
  ];
}

function sheetFaults(sheet: unknown): InputFault[] {
  if (!Array.isArray(sheet)) return [{ argument: 'sheet', value: sheet, expected: 'a list of steps' }];
  return sheet.flatMap((step: unknown, i) => {
    const where = `sheet[${String(i)}]`;
    return isRecord(step) ? rulesFaults(`${where}.until`, step['until']) : recordFault(where, step);
  });
}

/** Faults unless the value is a list of records. */
export function rulesFaults(where: string, rules: unknown): InputFault[] {
  if (!Array.isArray(rules)) return [{ argument: where, value: rules, expected: 'a list of stop rules' }];
  return rules.flatMap((rule: unknown, i) => recordFault(`${where}[${String(i)}]`, rule));
}

/** Faults unless the value is a record of a known kind. */
export function kindFault(argument: string, value: unknown, kinds: readonly string[]): InputFault[] {
  return isRecord(value) ? oneOfFault(`${argument}.kind`, value['kind'], kinds) : recordFault(argument, value);
}

/** A fault unless the value is one of the known ones. */
export function oneOfFault(argument: string, value: unknown, known: readonly unknown[]): InputFault[] {
  if (known.includes(value)) return [];
  const names = known.filter((name) => name !== undefined).map(String);
  return [{ argument, value, expected: names.length === 1 ? `'${names[0]!}'` : `one of ${names.join(', ')}` }];
}

/** A fault unless the value is a list. */
export function listFault(argument: string, value: unknown, expected: string): InputFault[] {
  return Array.isArray(value) ? [] : [{ argument, value, expected }];
}

function recordFault(argument: string, value: unknown): InputFault[] {
  return isRecord(value) ? [] : [{ argument, value, expected: 'a record' }];
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
