// The shape of a problem that came as plain data, from an address, a file or another program: records where records
// belong, known kinds, lists that are lists. Ranges are checked afterwards, on data of the right shape.

import type { InputFault } from '../errors.js';
import { ACTIVITY_NAMES } from '../mixture/activity/registry.js';

const CHARGES = ['volume', 'amount'];
const HEATS = ['power', 'boilUp'];
const OUTPUTS = ['every', 'perStep'];
const STARTS = [undefined, 'firstVapour', 'charge'];
const TRAIN_STARTS = [undefined, 'cold', 'firstVapour'];
const ENERGIES = [undefined, 'balance', 'constantMolarOverflow'];
const JARS = ['size', 'perStep'];

/** Longer run sheets, and steps of more rules, nobody writes. */
const MOST_STEPS = 200;
const MOST_RULES = 20;

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

/** Faults of the shape of a train problem; the still's own are lib/still's. */
export function trainShapeFaults(problem: unknown): InputFault[] {
  if (!isRecord(problem)) return [{ argument: 'problem', value: problem, expected: 'a record' }];
  const still = problem['still'];
  const doublerCharges = problem['doublerCharges'];
  const jars = problem['jars'];
  return [
    ...oneOfFault('kind', problem['kind'], ['train']),
    ...recordFault('still', still),
    ...kindFault('charge', problem['charge'], CHARGES),
    ...oneOfFault('activity', problem['activity'], ACTIVITY_NAMES),
    ...(Array.isArray(doublerCharges)
      ? Array.from(doublerCharges).flatMap((own: unknown, i) => doublerFaults(`doublerCharges[${String(i)}]`, own))
      : [{ argument: 'doublerCharges', value: doublerCharges, expected: 'a list with the charge of each doubler' }]),
    ...sheetFaults(problem['sheet']),
    ...kindFault('outputs', problem['outputs'], OUTPUTS),
    ...oneOfFault('start', problem['start'], TRAIN_STARTS),
    ...oneOfFault('energy', problem['energy'], ENERGIES),
    ...(jars === undefined ? [] : kindFault('jars', jars, JARS)),
  ];
}

function doublerFaults(where: string, own: unknown): InputFault[] {
  return isRecord(own) ? kindFault(`${where}.charge`, own['charge'], CHARGES) : recordFault(where, own);
}

function sheetFaults(sheet: unknown): InputFault[] {
  if (!Array.isArray(sheet)) return [{ argument: 'sheet', value: sheet, expected: 'a list of steps' }];
  if (sheet.length > MOST_STEPS) return [tooMany('sheet', sheet.length, MOST_STEPS, 'steps')];
  return Array.from(sheet).flatMap((step: unknown, i) => {
    const where = `sheet[${String(i)}]`;
    return isRecord(step) ? rulesFaults(`${where}.until`, step['until']) : recordFault(where, step);
  });
}

function rulesFaults(where: string, rules: unknown): InputFault[] {
  if (!Array.isArray(rules)) return [{ argument: where, value: rules, expected: 'a list of stop rules' }];
  if (rules.length > MOST_RULES) return [tooMany(where, rules.length, MOST_RULES, 'stop rules')];
  return Array.from(rules).flatMap((rule: unknown, i) => recordFault(`${where}[${String(i)}]`, rule));
}

function tooMany(argument: string, length: number, most: number, what: string): InputFault {
  return { argument: `${argument}.length`, value: length, expected: `up to ${String(most)} ${what}` };
}

function kindFault(argument: string, value: unknown, kinds: readonly string[]): InputFault[] {
  return isRecord(value) ? oneOfFault(`${argument}.kind`, value['kind'], kinds) : recordFault(argument, value);
}

/** A fault unless the value is one of the known ones. */
export function oneOfFault(argument: string, value: unknown, known: readonly unknown[]): InputFault[] {
  if (known.includes(value)) return [];
  const names = known.filter((name) => name !== undefined).map(String);
  return [{ argument, value, expected: names.length === 1 ? `'${names[0]!}'` : `one of ${names.join(', ')}` }];
}

function recordFault(argument: string, value: unknown): InputFault[] {
  return isRecord(value) ? [] : [{ argument, value, expected: 'a record' }];
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
