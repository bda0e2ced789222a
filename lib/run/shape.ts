// The shape of a problem that came as plain data, from an address, a file or another program: records where records belong, known kinds,
// lists that are lists, and no names nobody knows. Ranges are checked afterwards, on data of the right shape.

import { choiceFault, fieldFaults, isRecord, kindFault, listFault, recordFault, unknownFault } from '../arguments.js';
import type { Fault } from '../errors.js';
import { CHARGES } from './charge.js';
import { ACTIVITY_NAMES } from '../mixture/activity/registry.js';
import { descriptionFaults } from '../still/check-description.js';
import { MODELS } from './engines/registry.js';
import { RULE_KINDS } from './stop-rules.js';

const HEATS = { power: ['power_W'], boilUp: ['rate_mol_s'] };
const REFLUXES = { duty: ['power_W'], water: ['flow_kg_s'], hold: ['strength', 'leastShare', 'mostShare'] };
const STARTS = ['cold', 'firstVapour', 'charge'];

/** Fields of a problem, and what checks the shape of each; `needed` ones must be there. */
const FIELDS: Readonly<Record<string, { needed?: true; faults: (where: string, value: unknown) => Fault[] }>> = {
  still: { needed: true, faults: (where, value) => descriptionFaults(value, where) },
  charge: { needed: true, faults: chargeFaults },
  chargeTemperature_K: { faults: none },
  doublerCharges: { faults: (where, value) => listFaults(where, value, 'the charge of each doubler', doublerFaults) },
  activity: { faults: activityFaults },
  model: { faults: (where, value) => choiceFault(where, value, MODELS) },
  heat: { faults: heatFaults },
  sheet: { needed: true, faults: (where, value) => listFaults(where, value, 'steps', stepFaults, 1) },
  outputs: { faults: (where, value) => kindFault(where, value, OUTPUTS) },
  jars: { faults: (where, value) => kindFault(where, value, JARS) },
  start: { faults: (where, value) => choiceFault(where, value, STARTS) },
  lags: { faults: (where, value) => fieldFaults(where, value, ['boil_s', 'weir_s']) },
  tolerance: { faults: none },
};
const OUTPUTS = { every: ['interval_s'], perStep: ['points'], evenly: ['rows'] };
const JARS = { size: ['volume_m3'], perStep: [] };
/** Longer run sheets, and steps of more rules, nobody writes. */
export const MOST_STEPS = 200;
const MOST_RULES = 20;

/** Everything that is wrong with the shape of a problem. */
export function shapeFaults(problem: unknown): Fault[] {
  if (!isRecord(problem)) return recordFault('problem', problem);
  const unknown = Object.keys(problem).filter((name) => !Object.hasOwn(FIELDS, name));
  return [
    ...unknown.map((name) => unknownFault('', name, problem[name], Object.keys(FIELDS))),
    ...Object.entries(FIELDS).flatMap(([name, { needed, faults }]) => {
      const value = problem[name];
      return value === undefined && needed !== true ? [] : faults(name, value);
    }),
  ];
}

function none(): Fault[] {
  return [];
}

function chargeFaults(where: string, charge: unknown): Fault[] {
  return kindFault(where, charge, CHARGES);
}

function doublerFaults(where: string, own: unknown): Fault[] {
  const faults = fieldFaults(where, own, ['charge', 'temperature_K']);
  return isRecord(own) ? [...faults, ...chargeFaults(`${where}.charge`, own['charge'])] : faults;
}

function heatFaults(where: string, heat: unknown): Fault[] {
  return kindFault(where, heat, HEATS);
}

/** A model by name, or one of the caller's own. */
function activityFaults(where: string, activity: unknown): Fault[] {
  if (isRecord(activity) && typeof activity['activity'] === 'function' && typeof activity['excessGibbs'] === 'function')
    return [];
  return choiceFault(where, activity, ACTIVITY_NAMES);
}

/** A ratio or one of the words. */
function refluxFault(where: string, reflux: unknown): Fault[] {
  return typeof reflux === 'number'
    ? []
    : choiceFault(where, reflux, ['a ratio', 'total', 'none', 'asSet', '{ kind … }']);
}

/** Everything that is wrong with the shape of a step of a run sheet. */
export function stepFaults(where: string, step: unknown): Fault[] {
  const faults = fieldFaults(where, step, ['reflux', 'heat', 'until']);
  if (!isRecord(step)) return faults;
  const { heat, reflux } = step;
  return [
    ...faults,
    ...(isRecord(reflux) ? kindFault(`${where}.reflux`, reflux, REFLUXES) : refluxFault(`${where}.reflux`, reflux)),
    ...(heat === undefined ? [] : heatFaults(`${where}.heat`, heat)),
    ...listFaults(`${where}.until`, step['until'], 'rules that end the step', ruleFaults, 1, MOST_RULES),
  ];
}

function ruleFaults(where: string, rule: unknown): Fault[] {
  return kindFault(where, rule, RULE_KINDS);
}

function listFaults(
  where: string,
  list: unknown,
  what: string,
  each: (where: string, value: unknown) => Fault[],
  least = 0,
  most = MOST_STEPS,
): Fault[] {
  const faults = listFault(where, list, what, least, most);
  if (faults.length > 0 || !Array.isArray(list)) return faults;
  return Array.from({ length: list.length }, (_none, i) => each(`${where}[${String(i)}]`, list[i])).flat();
}
