// The numbers of a run as they stand in a file: SI, with the unit in the name, so that the file can be read
// without this program. What a file leaves out is as it starts; what nobody knows is refused, not dropped.

import { parameters, startingScenario, type Parameter } from '../state/parameters.js';
import type { ParameterKey, Scenario } from '../state/scenario.js';

/** Numbers as a file holds them, by name. */
export type FileNumbers = Readonly<Record<string, number>>;

const unitOf: Readonly<Record<Parameter['quantity'], string>> = {
  volume: '_m3',
  strength: '',
  power: '_W',
  pressure: '_Pa',
  temperature: '_K',
  across: '_m',
  minutes: '_s',
  percent: '',
  plates: '',
  ratio: '',
};

/** What reading and writing may add to a limit, relative. */
const roundOff = 1e-9;

/** Name of a number in a file: 'chargeVolume_m3'. */
export function nameInFile({ key, quantity }: Parameter): string {
  return `${key}${unitOf[quantity]}`;
}

export function toFileNumbers(scenario: Scenario): FileNumbers {
  return Object.fromEntries(parameters.map((row) => [nameInFile(row), scenario[row.key]]));
}

/** The numbers of a file; a sentence where one cannot be used. */
export function fromFileNumbers(numbers: FileNumbers): Scenario | string {
  const scenario: Record<ParameterKey, number> = { ...startingScenario };
  for (const [name, value] of Object.entries(numbers)) {
    const row = parameters.find((one) => nameInFile(one) === name);
    if (row === undefined) return `‘${name}’ is no number that these pages know`;
    const inRange = value >= row.low * (1 - roundOff) && value <= row.high * (1 + roundOff);
    if (!inRange) return `‘${name}’ is ${String(value)} and would have to be ${String(row.low)} to ${String(row.high)}`;
    if (row.quantity === 'plates' && !Number.isInteger(value))
      return `‘${name}’ is ${String(value)} and no whole number`;
    scenario[row.key] = value;
  }
  return scenario;
}
