// Whether a description can be a still: shape first, then every number within what a still can be.

import type { InputFault } from '../errors.js';

type Rec = Readonly<Record<string, unknown>>;
/** A number's name, least, most, and what it would have to be. */
type Field = readonly [name: string, low: number, high: number, expected: string];

const TINY = 1e-9;
const volume = (name: string, low = TINY): Field => [
  name,
  low,
  1e4,
  low > 0 ? 'a volume above 0 m³' : 'a volume of 0 m³ or more',
];
const length = (name: string): Field => [name, 1e-4, 100, 'a length from 0.1 mm to 100 m'];
const loss: Field = ['heatLoss_W_K', 0, 1e6, 'a heat loss of 0 W/K or more'];
const metal: Field = ['metal_J_K', 0, 1e10, 'a heat capacity of 0 J/K or more'];
const kelvin = (name: string): Field => [name, 223, 373, 'a temperature from 223 to 373 K'];
const shareOf = (name: string, low: number): Field => [name, low, 1, `a share from ${String(low)} to 1`];

const KETTLE: readonly Field[] = [
  volume('volume_m3'),
  length('diameter_m'),
  ['heatingSurfaceHeight_m', 0, 100, 'a height of 0 m or more'],
  ['power_W', 0, 1e9, 'a power of 0 W or more'],
  loss,
  metal,
];
const DOUBLER: readonly Field[] = [
  volume('volume_m3'),
  length('diameter_m'),
  ['dipDepth_m', 0, 10, 'a depth of 0 m or more'],
  loss,
  metal,
];
const PLATES: readonly Field[] = [
  ['count', 1, 60, 'a whole number of plates from 1 to 60'],
  length('diameter_m'),
  length('spacing_m'),
  ['weirHeight_m', 0, 1, 'a weir of 0 to 1 m'],
  shareOf('openArea', 1e-3),
  length('holeDiameter_m'),
  ['efficiency', 0.01, 1, 'an efficiency from 0.01 to 1 (1 is an ideal plate)'],
  loss,
  metal,
  ['drop_Pa', 0, 1e5, 'a pressure drop of 0 Pa or more'],
];
const PACKING: readonly Field[] = [
  length('height_m'),
  length('hetp_m'),
  length('diameter_m'),
  shareOf('voidShare', 0.01),
  ['surface_m2_m3', 1, 1e4, 'a surface from 1 to 10 000 m²/m³'],
  shareOf('liquidShare', 1e-3),
  loss,
  metal,
  ['drop_Pa_m', 0, 1e5, 'a pressure drop of 0 Pa/m or more'],
];
const HEAD: readonly Field[] = [loss, metal, volume('film_m3')];
const PRODUCT: readonly Field[] = [
  volume('holdUp_m3'),
  ['flow_kg_s', 0, 1e4, 'a flow of 0 kg/s or more'],
  kelvin('inlet_K'),
  ['transfer_W_K', 0, 1e8, 'a transfer of 0 W/K or more'],
];
const WATER: readonly Field[] = PRODUCT.slice(1);
const AIR: readonly Field[] = [['pressure_Pa', 1e3, 1e6, 'a pressure from 1 kPa to 1 MPa'], kelvin('temperature_K')];
const TOTAL: readonly Field[] = [volume('holdUp_m3'), ['subcooling_K', 0, 70, 'a subcooling from 0 to 70 K']];
const MOST_DOUBLERS = 3;
/** A packing counts as so many stages at most. */
const MOST_STAGES = 60;

/**
 * Everything that keeps a record from being a still.
 *
 * Equation: shape first, then each number within its range.
 * @param still A Still, or data that should be one.
 * @param where Path of the record in what is checked, for the faults' arguments.
 * @returns Faults, each with argument, value and what would be right; an empty list when it can be a still.
 * @example stillFaults({ ...completeStill({ kettle: { volume_m3: 0.1 } }), doublers: 3 }).length // → 1
 * Source: this project's error contract (DEVELOPERS.md).
 */
export function stillFaults(still: unknown, where = 'still'): InputFault[] {
  if (!isRecord(still)) return [{ argument: where, value: still, expected: 'a record' }];
  return [
    ...numbers(`${where}.kettle`, still['kettle'], KETTLE),
    ...surfaceFaults(`${where}.kettle`, still['kettle']),
    ...doublerFaults(`${where}.doublers`, still['doublers']),
    ...columnFaults(`${where}.column`, still['column']),
    ...numbers(`${where}.head`, still['head'], HEAD),
    ...condenserFaults(`${where}.refluxCondenser`, still['refluxCondenser']),
    ...numbers(`${where}.productCondenser`, still['productCondenser'], PRODUCT),
    ...numbers(`${where}.air`, still['air'], AIR),
  ];
}

function doublerFaults(where: string, doublers: unknown): InputFault[] {
  if (!Array.isArray(doublers) || doublers.length > MOST_DOUBLERS) {
    return [{ argument: where, value: doublers, expected: `a list of up to ${String(MOST_DOUBLERS)} doublers` }];
  }
  return Array.from(doublers).flatMap((doubler: unknown, i) => {
    const at = `${where}[${String(i)}]`;
    const faults = numbers(at, doubler, DOUBLER);
    return isRecord(doubler) ? [...faults, ...oneOf(`${at}.overflow`, doubler['overflow'], ['back', 'over'])] : faults;
  });
}

function columnFaults(where: string, column: unknown): InputFault[] {
  const faults = kind(where, column, ['none', 'plates', 'packing']);
  if (faults.length > 0 || !isRecord(column) || column['kind'] === 'none') return faults;
  if (column['kind'] === 'packing') {
    const packing = numbers(where, column, PACKING);
    const stages = numberOf(column['height_m']) / numberOf(column['hetp_m']);
    if (packing.length > 0 || stages <= MOST_STAGES) return packing;
    const expected = `a height of at most ${String(MOST_STAGES)} times the HETP`;
    return [{ argument: `${where}.height_m`, value: column['height_m'], expected }];
  }
  const { count, holdUp } = column;
  return [
    ...numbers(where, column, PLATES),
    ...weirFaults(where, column),
    ...(Number.isInteger(count) ? [] : [{ argument: `${where}.count`, value: count, expected: 'a whole number' }]),
    ...oneOf(`${where}.plateKind`, column['plateKind'], ['sieve', 'bubbleCap', 'valve']),
    ...oneOf(`${where}.efficiencyFalls`, column['efficiencyFalls'], [true, false]),
    ...kind(`${where}.holdUp`, holdUp, ['volume', 'amount']),
    ...(isRecord(holdUp)
      ? numbers(`${where}.holdUp`, holdUp, [
          holdUp['kind'] === 'amount' ? ['amount_mol', 1e-6, 1e6, 'an amount above 0 mol'] : volume('volume_m3'),
        ])
      : []),
  ];
}

/** A heating surface cannot stand higher than its kettle. */
function surfaceFaults(where: string, kettle: unknown): InputFault[] {
  if (!isRecord(kettle)) return [];
  const [volume_m3, diameter_m, surface_m] = ['volume_m3', 'diameter_m', 'heatingSurfaceHeight_m'].map((name) =>
    numberOf(kettle[name]),
  );
  const height_m = (4 * volume_m3!) / (Math.PI * diameter_m! ** 2);
  if (!(height_m > 0 && height_m < Infinity && surface_m! > height_m)) return [];
  const expected = `a height within the kettle's ${height_m.toPrecision(3)} m`;
  return [{ argument: `${where}.heatingSurfaceHeight_m`, value: kettle['heatingSurfaceHeight_m'], expected }];
}

/** A weir cannot stand higher than the next plate. */
function weirFaults(where: string, column: Rec): InputFault[] {
  if (!(numberOf(column['weirHeight_m']) >= numberOf(column['spacing_m']))) return [];
  const expected = 'a weir lower than the plates are apart';
  return [{ argument: `${where}.weirHeight_m`, value: column['weirHeight_m'], expected }];
}

function condenserFaults(where: string, condenser: unknown): InputFault[] {
  const faults = kind(where, condenser, ['none', 'total', 'partial']);
  if (faults.length > 0 || !isRecord(condenser) || condenser['kind'] === 'none') return faults;
  if (condenser['kind'] === 'total') return numbers(where, condenser, TOTAL);
  const { coolant } = condenser;
  const at = `${where}.coolant`;
  return [
    ...numbers(where, condenser, [volume('holdUp_m3')]),
    ...kind(at, coolant, ['duty', 'water']),
    ...(isRecord(coolant)
      ? numbers(at, coolant, coolant['kind'] === 'water' ? WATER : [['power_W', 0, 1e9, 'a duty of 0 W or more']])
      : []),
  ];
}

function kind(where: string, value: unknown, kinds: readonly string[]): InputFault[] {
  if (!isRecord(value)) return [{ argument: where, value, expected: 'a record' }];
  return oneOf(`${where}.kind`, value['kind'], kinds);
}

function oneOf(argument: string, value: unknown, known: readonly unknown[]): InputFault[] {
  return known.includes(value) ? [] : [{ argument, value, expected: `one of ${known.map(String).join(', ')}` }];
}

function numbers(where: string, value: unknown, fields: readonly Field[]): InputFault[] {
  if (!isRecord(value)) return [{ argument: where, value, expected: 'a record' }];
  return fields.flatMap(([name, low, high, expected]) => {
    const number = value[name];
    const fits = typeof number === 'number' && number >= low && number <= high;
    return fits ? [] : [{ argument: `${where}.${name}`, value: number, expected }];
  });
}

/** A number as it is; NaN for all else. */
function numberOf(value: unknown): number {
  return typeof value === 'number' ? value : NaN;
}

function isRecord(value: unknown): value is Rec {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
