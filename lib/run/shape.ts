// The shape of a problem that came as plain data, from an address, a file or another program: records where records belong, known kinds,
// lists that are lists, and no names nobody knows. Ranges are checked afterwards, on data of the right shape.

import type { InputFault } from '../errors.js';
import { ACTIVITY_NAMES } from '../mixture/activity/registry.js';
import { descriptionFaults } from '../still/check-description.js';
import { MODELS } from './engines/registry.js';
import { RULE_KINDS } from './stop-rules.js';

const HEATS = ['power', 'boilUp'];
const STARTS = ['cold', 'firstVapour', 'charge'];

/** Fields of a problem, and what checks the shape of each; `needed` ones must be there. */
const FIELDS: Readonly<Record<string, { needed?: true; faults: (where: string, value: unknown) => InputFault[] }>> = {
  still: { needed: true, faults: (where, value) => descriptionFaults(value, where) },
  charge: { needed: true, faults: chargeFaults },
  chargeTemperature_K: { faults: none },
  doublerCharges: { faults: (where, value) => listFaults(where, value, 'the charge of each doubler', doublerFaults) },
  activity: { faults: activityFaults },
  model: { faults: (where, value) => oneOfFault(where, value, MODELS) },
  heat: { faults: heatFaults },
  sheet: { needed: true, faults: (where, value) => listFaults(where, value, 'steps', stepFaults, 1) },
  outputs: { faults: (where, value) => kindFault(where, value, OUTPUTS) },
  jars: { faults: (where, value) => kindFault(where, value, JARS) },
  start: { faults: (where, value) => oneOfFault(where, value, STARTS) },
  lags: { faults: (where, value) => fieldsFaults(where, value, ['boil_s', 'weir_s']) },
  tolerance: { faults: none },
};
const OUTPUTS = { every: ['interval_s'], perStep: ['points'], evenly: ['rows'] };
const JARS = { size: ['volume_m3'], perStep: [] };
const CHARGES = { volume: ['volume_m3', 'strength'], amount: ['amount_mol', 'moleFraction'] };
/** Longer run sheets, and steps of more rules, nobody writes. */
const MOST_STEPS = 200;
const MOST_RULES = 20;

/** Everything that is wrong with the shape of a problem. */
export function shapeFaults(problem: unknown): InputFault[] {
  if (!isRecord(problem)) return [{ argument: 'problem', value: problem, expected: 'a record' }];
  const unknown = Object.keys(problem).filter((name) => !Object.hasOwn(FIELDS, name));
  return [
    ...unknown.map((name) => unknownFault('', name, problem[name], Object.keys(FIELDS))),
    ...Object.entries(FIELDS).flatMap(([name, { needed, faults }]) => {
      const value = problem[name];
      return value === undefined && needed !== true ? [] : faults(name, value);
    }),
  ];
}

function none(): InputFault[] {
  return [];
}

function chargeFaults(where: string, charge: unknown): InputFault[] {
  return kindFault(where, charge, CHARGES);
}

function doublerFaults(where: string, own: unknown): InputFault[] {
  const faults = fieldsFaults(where, own, ['charge', 'temperature_K']);
  return isRecord(own) ? [...faults, ...chargeFaults(`${where}.charge`, own['charge'])] : faults;
}

function heatFaults(where: string, heat: unknown): InputFault[] {
  return isRecord(heat) ? oneOfFault(`${where}.kind`, heat['kind'], HEATS) : recordFault(where, heat);
}

/** A model by name, or one of the caller's own. */
function activityFaults(where: string, activity: unknown): InputFault[] {
  if (isRecord(activity) && typeof activity['activity'] === 'function' && typeof activity['excessGibbs'] === 'function')
    return [];
  return oneOfFault(where, activity, ACTIVITY_NAMES);
}

function stepFaults(where: string, step: unknown): InputFault[] {
  const faults = fieldsFaults(where, step, ['reflux', 'heat', 'until']);
  if (!isRecord(step)) return faults;
  const { heat } = step;
  return [
    ...faults,
    ...(heat === undefined ? [] : heatFaults(`${where}.heat`, heat)),
    ...listFaults(`${where}.until`, step['until'], 'rules that end the step', ruleFaults, 1, MOST_RULES),
  ];
}

function ruleFaults(where: string, rule: unknown): InputFault[] {
  return kindFault(where, rule, RULE_KINDS);
}

function listFaults(
  where: string,
  list: unknown,
  what: string,
  each: (where: string, value: unknown) => InputFault[],
  least = 0,
  most = MOST_STEPS,
): InputFault[] {
  if (!Array.isArray(list) || list.length < least) {
    return [
      {
        argument: where,
        value: list,
        expected: `a list of ${least === 0 ? '' : `at least ${String(least)}: `}${what}`,
      },
    ];
  }
  if (list.length > most) {
    return [{ argument: `${where}.length`, value: list.length, expected: `up to ${String(most)} ${what}` }];
  }
  return Array.from({ length: list.length }, (_none, i) => each(`${where}[${String(i)}]`, list[i])).flat();
}

/** A record of a known kind, with the fields of that kind and no others. */
function kindFault(where: string, value: unknown, kinds: Readonly<Record<string, readonly string[]>>): InputFault[] {
  if (!isRecord(value)) return recordFault(where, value);
  const { kind } = value;
  const faults = oneOfFault(`${where}.kind`, kind, Object.keys(kinds));
  return faults.length > 0 ? faults : fieldsFaults(where, value, ['kind', ...kinds[kind as string]!]);
}

/** A record with no other fields than these. */
function fieldsFaults(where: string, value: unknown, known: readonly string[]): InputFault[] {
  if (!isRecord(value)) return recordFault(where, value);
  return Object.keys(value)
    .filter((name) => !known.includes(name))
    .map((name) => unknownFault(`${where}.`, name, value[name], known));
}

function unknownFault(where: string, name: string, value: unknown, known: readonly string[]): InputFault {
  return {
    argument: `${where}${name === '' ? "''" : name}`,
    value,
    expected: `no such field; known are ${known.join(', ')}`,
  };
}

/** A fault unless the value is one of the known ones. */
export function oneOfFault(argument: string, value: unknown, known: readonly unknown[]): InputFault[] {
  if (known.includes(value)) return [];
  const names = known.map(String);
  return [{ argument, value, expected: names.length === 1 ? `'${names[0]!}'` : `one of ${names.join(', ')}` }];
}

function recordFault(argument: string, value: unknown): InputFault[] {
  return isRecord(value) ? [] : [{ argument, value, expected: 'a record' }];
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
