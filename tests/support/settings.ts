// Settings of a page for tests, by short names; the kettle is one that takes the charge unless it is named.

import type { Path } from '../../explorer/state/inputs.js';
import { fromOldNumbers } from '../../explorer/state/flat-numbers.js';
import { withValue } from '../../explorer/state/paths.js';
import { startingScenario, type Scenario } from '../../explorer/state/scenario.js';

export const short = {
  chargeVolume: 'charge.volume_m3',
  chargeStrength: 'charge.strength',
  plates: 'still.column.count',
  efficiency: 'still.column.efficiency',
  reflux: 'sheet[2].reflux',
  heat: 'still.kettle.power_W',
  pressure: 'still.air.pressure_Pa',
  doublerVolume: 'doublerCharges[0].charge.volume_m3',
  doublerStrength: 'doublerCharges[0].charge.strength',
  columnDiameter: 'still.column.diameter_m',
  plateSpacing: 'still.column.spacing_m',
  wantedStrength: 'asked.strength',
  ceilingPressure: 'asked.pressure_Pa',
} as const satisfies Readonly<Record<string, Path>>;

export type Short = keyof typeof short;

/** The starting settings with these numbers. */
export function settings(numbers: Partial<Record<Short, number>> = {}, start = startingScenario): Scenario {
  const read = Object.entries(numbers).map(([name, value]) => [short[name as Short], value] as const);
  return read.length === 0 ? start : fromOldNumbers(new Map<Path, number>(read), start);
}

/** The starting settings with one value at a path, and nothing else changed. */
export function setTo(path: Path, value: number, scenario = startingScenario): Scenario {
  return withValue(scenario, path, value);
}
