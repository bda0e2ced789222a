// The thirteen numbers that earlier versions kept for a whole notebook, by the names they had there: still read in old
// addresses and files.

import { inputAt, type Input, type Path } from './inputs.js';
import { withValue } from './paths.js';
import { startingScenario, type Scenario } from './scenario.js';

/** One of them. */
interface Flat {
  /** In a file of version 2, and in a sentence of one. */
  readonly key: string;
  /** With its unit, as a file of version 2 has it. */
  readonly inFile: string;
  readonly path: Path;
}

const flat = (key: string, path: Path, unit = ''): Flat => ({ key, inFile: `${key}${unit}`, path });

const all: readonly Flat[] = [
  flat('chargeVolume', 'charge.volume_m3', '_m3'),
  flat('chargeStrength', 'charge.strength'),
  flat('plates', 'still.column.count'),
  flat('efficiency', 'still.column.efficiency'),
  flat('reflux', 'sheet[2].reflux'),
  flat('heat', 'still.kettle.power_W', '_W'),
  flat('pressure', 'still.air.pressure_Pa', '_Pa'),
  flat('doublerVolume', 'doublerCharges[0].charge.volume_m3', '_m3'),
  flat('doublerStrength', 'doublerCharges[0].charge.strength'),
  flat('columnDiameter', 'still.column.diameter_m', '_m'),
  flat('plateSpacing', 'still.column.spacing_m', '_m'),
  flat('wantedStrength', 'asked.strength'),
  flat('ceilingPressure', 'asked.pressure_Pa', '_Pa'),
];

/** The input that a file of version 2 calls so. */
export function inputInOldFile(name: string): Input | undefined {
  const found = all.find(({ inFile }) => inFile === name);
  return found === undefined ? undefined : inputAt(found.path);
}

/** The path of a number that an old sentence calls so. */
export function pathOfOldKey(key: unknown): Path | undefined {
  return all.find((one) => one.key === key)?.path;
}

/** Earlier versions drew up vessels so much larger than their charges. */
const room = { kettle: 1.35, doubler: 2 };
/** A vessel runs on charges between these shares of it. */
const runsOn = { kettle: [0.25, 0.95], doubler: [0, 0.95] } as const;

/** The settings that old numbers come to: those left out are as they start, and vessels are such as take their charges. */
export function fromOldNumbers(numbers: ReadonlyMap<Path, number>, start: Scenario = startingScenario): Scenario {
  let scenario = start;
  for (const [path, value] of numbers) {
    // A page whose still has no column had no use for its numbers.
    if (!path.startsWith('still.column.') || start.still.column !== undefined)
      scenario = withValue(scenario, path, value);
  }
  const { still, charge, doublerCharges } = scenario;
  scenario = roomFor('kettle', scenario, 'still.kettle.volume_m3', still.kettle.volume_m3, charge.volume_m3);
  const own = still.doublers?.[0]?.volume_m3;
  const filled = doublerCharges[0]?.charge.volume_m3;
  if (own === undefined || filled === undefined) return scenario;
  return roomFor('doubler', scenario, 'still.doublers[0].volume_m3', own, filled);
}

function roomFor(
  vessel: keyof typeof room,
  scenario: Scenario,
  path: Path,
  volume_m3: number,
  filled_m3: number,
): Scenario {
  const [least, most] = runsOn[vessel];
  const takes = filled_m3 >= least * volume_m3 && filled_m3 <= most * volume_m3;
  return takes ? scenario : withValue(scenario, path, room[vessel] * filled_m3);
}
