// What a section and what passes it may be, for the formulas of its load.

import { fieldFaults, isRecord, refuse } from '../arguments.js';
import { ZERO_CELSIUS } from '../constants.js';
import type { Fault } from '../errors.js';
import { columnFaults } from './check.js';
import { type Field, numbers } from './fields.js';

const fraction = (name: string): Field => [name, 0, 1, 'a mole fraction of ethanol from 0 to 1'];
const flow = (name: string): Field => [name, 0, 1e9, 'a flow of 0 mol/s or more'];
const STATE: readonly Field[] = [
  fraction('vapourMoleFraction'),
  fraction('liquidMoleFraction'),
  ['temperature_K', ZERO_CELSIUS, ZERO_CELSIUS + 130, 'a temperature from 273.15 to 403.15 K (0 to 130 °C)'],
  ['pressure_Pa', 1e3, 1e6, 'a pressure from 1 kPa to 1 MPa'],
];
const FLOWS: readonly Field[] = [flow('vapour_mol_s'), flow('liquid_mol_s'), ...STATE];
const PASSING: readonly Field[] = [['returned', 0, 1, 'a share from 0 to 1: R/(R + 1)'], ...STATE];

/** Throws an InputError unless it is a section of that kind. */
export function checkSection(argument: string, section: unknown, kind: 'plates' | 'packing'): void {
  const wrong = isRecord(section) && section['kind'] !== kind;
  const fault: Fault[] = wrong
    ? [{ code: 'unknownChoice', argument: `${argument}.kind`, value: section['kind'], expected: `'${kind}'` }]
    : [];
  refuse(fault.length > 0 ? fault : columnFaults(argument, section));
}

/** Throws an InputError unless it is what passes a section. */
export function checkFlows(flows: unknown): void {
  refuse(recordFaults('flows', flows, FLOWS));
}

/** Throws an InputError unless it is what passes where a section is loaded most. */
export function checkPassing(passing: unknown): void {
  refuse(recordFaults('passing', passing, PASSING));
}

function recordFaults(argument: string, value: unknown, fields: readonly Field[]): Fault[] {
  const known = fields.map(([name]) => name);
  const faults = fieldFaults(argument, value, known);
  return faults.length > 0 ? faults : numbers(argument, value, fields);
}
