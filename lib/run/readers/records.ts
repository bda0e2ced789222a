// The rows of a run as records, and as text: one line a row, columns of numbers in SI, named with their units.

import { choiceFault, listFault, refuse } from '../../arguments.js';
import { checkRun } from '../check-run.js';
import { ENERGY_COLUMNS, RUN_COLUMNS } from '../solved.js';
import type { EnergyColumns, PlainSolution, RunColumns } from '../solution.js';

/** Columns with one number a row. */
export type SeriesName = Exclude<keyof RunColumns, `holder${string}` | `plate${string}`> | keyof EnergyColumns;

/** Names of the columns with one number a row. Source: this project, RunColumns. */
export const SERIES: readonly SeriesName[] = [...RUN_COLUMNS, ...ENERGY_COLUMNS].filter(
  (name): name is SeriesName => !name.startsWith('holder') && !name.startsWith('plate'),
);

/**
 * The rows of a run as records, one a row.
 *
 * Equation: row i of each column.
 * @param run A solution, or its plain copy.
 * @param names Columns wanted, default all with one number a row; those of the account of energy are left out where the run keeps none.
 * @returns Records with a number for each name, in SI.
 * @throws InputError when it is no run, or a name is no such column.
 * @example rowRecords(solve({ model: 'rayleigh', still: { kettle: { volume_m3: 0.1 } }, charge: { kind: 'amount', amount_mol: 100, moleFraction: 0.18 }, heat: { kind: 'power', power_W: 1000 }, sheet: [{ reflux: 'none', until: [{ kind: 'duration', seconds: 600 }] }] }), ['time_s']).length // → 11
 * Source: definition.
 */
export function rowRecords(
  run: PlainSolution & Partial<EnergyColumns>,
  names: readonly SeriesName[] = SERIES,
): readonly Readonly<Partial<Record<SeriesName, number>>>[] {
  checkRun(run);
  refuse(listFault('names', names, 'names of columns', 0, SERIES.length));
  const columns = names.flatMap((name) => {
    refuse(choiceFault('names', name, SERIES));
    const column = run[name];
    return column === undefined || Number.isNaN(column[0]) ? [] : [[name, column] as const];
  });
  return Array.from({ length: run.rows }, (_none, row) =>
    Object.fromEntries(columns.map(([name, column]) => [name, column[row]!])),
  );
}

/**
 * The rows of a run as comma-separated values, with a line of names and units first (RFC 4180).
 *
 * Equation: rowRecords, one line a row; numbers as JavaScript prints them, which reads back to the same bits.
 * @param run A solution, or its plain copy.
 * @param names Columns wanted, default all with one number a row.
 * @returns Text with lines ended by CRLF.
 * @throws InputError when it is no run, or a name is no such column.
 * @example rowsAsCsv(solve({ model: 'rayleigh', still: { kettle: { volume_m3: 0.1 } }, charge: { kind: 'amount', amount_mol: 100, moleFraction: 0.18 }, heat: { kind: 'power', power_W: 1000 }, sheet: [{ reflux: 'none', until: [{ kind: 'duration', seconds: 60 }] }] }), ['time_s']).split('\r\n').length // → 4
 * Source: RFC 4180, Common Format and MIME Type for CSV Files, 2005.
 */
export function rowsAsCsv(run: PlainSolution & Partial<EnergyColumns>, names: readonly SeriesName[] = SERIES): string {
  const records = rowRecords(run, names);
  const header = Object.keys(records[0] ?? {});
  const lines = records.map((record) => Object.values(record).map(String).join(','));
  return [header.join(','), ...lines].map((line) => `${line}\r\n`).join('');
}
