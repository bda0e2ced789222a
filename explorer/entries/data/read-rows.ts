// A table of text as columns of numbers: separated by commas, semicolons or tabs, the header with names and units. What
// cannot be read is said with its line, its value and what would be right; it leaves a gap, and the text stays as it is.

import { dsvFormat } from 'd3-dsv';
import { readText } from '../../text/parse.js';
import { headerUnit, unitNames, type HeaderUnit } from './units-in-header.js';

/** Rows that are read at most. */
export const mostRows = 5000;

export interface OwnColumn {
  readonly name: string;
  /** Null for bare numbers. */
  readonly unit: HeaderUnit | null;
  /** SI, or as written where there is no unit; NaN for a gap. */
  readonly values: readonly number[];
}

/** Something that could not be read. */
export interface RowFault {
  /** Of the text, counted from 1. */
  readonly line: number;
  readonly column: string;
  readonly value: string;
  /** What would be right. */
  readonly right: string;
}

export interface OwnRows {
  readonly columns: readonly OwnColumn[];
  readonly rows: number;
  readonly faults: readonly RowFault[];
}

const separators = ['\t', ';', ','] as const;

export function readRows(text: string): OwnRows {
  const faults: RowFault[] = [];
  const separator = separatorOf(text);
  const [head, ...body] = numbered(text, separator);
  if (head === undefined) return { columns: [], rows: 0, faults };
  const columns = head.cells.map((cell, i) => headOf(cell, i, head.line, separator, faults));
  const kept = body.slice(0, mostRows);
  const next = body[mostRows];
  if (next !== undefined) {
    const right = `at most ${String(mostRows)} rows; those from here on are kept in the text and not drawn`;
    faults.push({ line: next.line, column: '', value: `${String(body.length)} rows`, right });
  }
  const values = columns.map((): number[] => []);
  for (const { line, cells } of kept) {
    if (cells.length !== columns.length) {
      const right = `as many cells as the header has, ${String(columns.length)}`;
      faults.push({ line, column: '', value: `${String(cells.length)} cells`, right });
    }
    columns.forEach(({ name, unit }, i) => {
      values[i]!.push(cellValue(cells[i] ?? '', name, unit, line, separator, faults));
    });
  }
  return { columns: columns.map((column, i) => ({ ...column, values: values[i]! })), rows: kept.length, faults };
}

/** The separator that stands most often in the header. */
function separatorOf(text: string): string {
  const head = text.split(/\r?\n/u).find((line) => line.trim() !== '') ?? '';
  const bare = head.replace(/"[^"]*"/gu, '');
  return separators.find((one) => bare.includes(one)) ?? ',';
}

/** Rows with the line each begins on, empty ones left out. */
function numbered(text: string, separator: string): { readonly line: number; readonly cells: readonly string[] }[] {
  let line = 1;
  const rows: { line: number; cells: string[] }[] = [];
  for (const cells of dsvFormat(separator).parseRows(text.replace(/^\ufeff/u, ''))) {
    if (cells.some((cell) => cell.trim() !== '')) rows.push({ line, cells });
    line += 1 + cells.reduce((sum, cell) => sum + cell.split('\n').length - 1, 0);
  }
  return rows;
}

/** 'head [°C]', 'head (°C)'; 'head, °C' where commas do not separate. */
function headOf(
  cell: string,
  index: number,
  line: number,
  separator: string,
  faults: RowFault[],
): Pick<OwnColumn, 'name' | 'unit'> {
  const [before, written] = parted(cell.trim(), separator);
  const name = before === '' ? `column ${String(index + 1)}` : before;
  if (written === '') return { name, unit: null };
  const unit = headerUnit(written);
  if (unit === undefined)
    faults.push({ line, column: name, value: written, right: `one of these units: ${unitNames}` });
  return { name, unit: unit ?? null };
}

/** A name and its unit; '' for none. */
function parted(cell: string, separator: string): readonly [name: string, unit: string] {
  const opens = Math.max(cell.lastIndexOf('['), cell.lastIndexOf('('));
  if (opens >= 0 && (cell.endsWith(']') || cell.endsWith(')'))) {
    return [cell.slice(0, opens).trim(), cell.slice(opens + 1, -1).trim()];
  }
  const comma = separator === ',' ? -1 : cell.indexOf(',');
  return comma < 0 ? [cell, ''] : [cell.slice(0, comma).trim(), cell.slice(comma + 1).trim()];
}

function cellValue(
  cell: string,
  column: string,
  unit: HeaderUnit | null,
  line: number,
  separator: string,
  faults: RowFault[],
): number {
  const value = cell.trim();
  if (value === '') return NaN;
  const fault = (right: string): number => {
    faults.push({ line, column, value, right });
    return NaN;
  };
  const clock = unit?.quantity === 'time' ? /^(\d+):([0-5]\d)(?::([0-5]\d))?$/u.exec(value) : null;
  if (clock !== null) return Number(clock[1]) * 3600 + Number(clock[2]) * 60 + Number(clock[3] ?? 0);
  // Where commas separate, the decimal mark is a point.
  const mark = separator === ',' || !value.includes(',') ? '.' : ',';
  const read = readText(
    value,
    { fromShown: (shown) => unit?.toSI(shown) ?? shown, units: new Map(), engine: false },
    mark,
  );
  if (read.kind !== 'value') {
    const example = unit === null ? '12.5' : unit.quantity === 'time' ? '12.5 or 1:20' : '12.5';
    const why = unit === null ? `a number, such as ${example}` : `a number in ${unit.unit}, such as ${example}`;
    return fault(
      read.kind === 'refused' && read.reason === 'ambiguousComma' ? `${why}; thousands without a mark` : why,
    );
  }
  const range = unit?.range ?? null;
  if (range !== null && (read.si < range.from || read.si > range.to)) return fault(range.words);
  return read.si;
}
