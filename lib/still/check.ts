// Whether a record can be a still: shape first, then every number within what a still can be.

import { HOLD_UPS, SECTIONS, unknownFieldFaults } from './check-description.js';
import { choiceFault, isRecord, kindFault, type Rec, recordFault } from '../arguments.js';
import { coded, type Fault, type InputFault } from '../errors.js';
import {
  AIR,
  DOUBLER,
  HEAD,
  KETTLE,
  kind,
  MOST_DOUBLERS,
  numberOf,
  numbers,
  PACKING,
  PLATES,
  TOTAL,
  volume,
  WATER,
} from './fields.js';

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
export function stillFaults(still: unknown, where = 'still'): readonly InputFault[] {
  return faultsOfStill(still, where).map(coded);
}

/** The same, as it is found. */
export function faultsOfStill(still: unknown, where: string): Fault[] {
  if (!isRecord(still)) return recordFault(where, still);
  return [
    ...unknownFieldFaults(where, still),
    ...numbers(`${where}.kettle`, still['kettle'], KETTLE),
    ...surfaceFaults(`${where}.kettle`, still['kettle']),
    ...doublerFaults(`${where}.doublers`, still['doublers']),
    ...columnFaults(`${where}.column`, still['column']),
    ...numbers(`${where}.head`, still['head'], HEAD),
    ...condenserFaults(`${where}.refluxCondenser`, still['refluxCondenser']),
    ...numbers(`${where}.productCondenser`, still['productCondenser'], WATER),
    ...heldFaults(`${where}.productCondenser`, still['productCondenser']),
    ...numbers(`${where}.air`, still['air'], AIR),
  ];
}

function doublerFaults(where: string, doublers: unknown): Fault[] {
  if (!Array.isArray(doublers) || doublers.length > MOST_DOUBLERS) {
    return [{ argument: where, value: doublers, expected: `a list of up to ${String(MOST_DOUBLERS)} doublers` }];
  }
  return Array.from(doublers).flatMap((doubler: unknown, i) => {
    const at = `${where}[${String(i)}]`;
    const faults = numbers(at, doubler, DOUBLER);
    return isRecord(doubler)
      ? [...faults, ...choiceFault(`${at}.overflow`, doubler['overflow'], ['back', 'over'])]
      : faults;
  });
}

/** Whatever is wrong with a section: fields nobody knows, then numbers. */
export function columnFaults(where: string, column: unknown): Fault[] {
  const faults = kindFault(where, column, SECTIONS);
  if (faults.length > 0 || !isRecord(column) || column['kind'] === 'none') return faults;
  if (column['kind'] === 'packing') {
    const packing = numbers(where, column, PACKING);
    const stages = numberOf(column['height_m']) / numberOf(column['hetp_m']);
    if (packing.length > 0 || stages <= MOST_STAGES) return packing;
    const expected = `a height of at most ${String(MOST_STAGES)} times the HETP`;
    return [{ argument: `${where}.height_m`, value: column['height_m'], expected }];
  }
  const { count } = column;
  return [
    ...numbers(where, column, PLATES),
    ...weirFaults(where, column),
    ...(Number.isInteger(count) ? [] : [{ argument: `${where}.count`, value: count, expected: 'a whole number' }]),
    ...choiceFault(`${where}.plateKind`, column['plateKind'], ['sieve', 'bubbleCap', 'valve']),
    ...choiceFault(`${where}.efficiencyFalls`, column['efficiencyFalls'], [true, false]),
    ...heldFaults(where, column),
  ];
}

/** What stays on a plate or in a condenser. */
function heldFaults(where: string, holder: unknown): Fault[] {
  if (!isRecord(holder)) return [];
  const { holdUp } = holder;
  const at = `${where}.holdUp`;
  const faults = kindFault(at, holdUp, HOLD_UPS);
  if (faults.length > 0 || !isRecord(holdUp)) return faults;
  return numbers(at, holdUp, [
    holdUp['kind'] === 'amount' ? ['amount_mol', 1e-6, 1e6, 'an amount above 0 mol'] : volume('volume_m3'),
  ]);
}

/** A heating surface cannot stand higher than its kettle. */
function surfaceFaults(where: string, kettle: unknown): Fault[] {
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
function weirFaults(where: string, column: Rec): Fault[] {
  if (!(numberOf(column['weirHeight_m']) >= numberOf(column['spacing_m']))) return [];
  const expected = 'a weir lower than the plates are apart';
  return [{ argument: `${where}.weirHeight_m`, value: column['weirHeight_m'], expected }];
}

function condenserFaults(where: string, condenser: unknown): Fault[] {
  const faults = kind(where, condenser, ['none', 'total', 'partial']);
  if (faults.length > 0 || !isRecord(condenser) || condenser['kind'] === 'none') return faults;
  if (condenser['kind'] === 'total') return [...numbers(where, condenser, TOTAL), ...heldFaults(where, condenser)];
  const { coolant } = condenser;
  const at = `${where}.coolant`;
  return [
    ...heldFaults(where, condenser),
    ...kind(at, coolant, ['duty', 'water']),
    ...(isRecord(coolant)
      ? numbers(at, coolant, coolant['kind'] === 'water' ? WATER : [['power_W', 0, 1e9, 'a duty of 0 W or more']])
      : []),
  ];
}
