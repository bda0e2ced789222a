// What the reader typed into the workings of a page: numbers, which clauses stand, and rows of lists. Shared by the page's
// entries, and kept as they are; a number nobody typed is the one it starts with.

import { isRecord } from './plain-record.js';
import type { Common, Json } from './notebook-record.js';
import { workingNumbers, type WorkingNumberName, type WorkingValues } from './working-numbers.js';

/** Where a page keeps them among what its entries share. */
export const workingsName = 'workings';

/** A row of a list: its numbers, and what it was chosen to be. */
export interface WorkingRow {
  readonly numbers: Readonly<Record<string, number>>;
  readonly choice?: string;
}

export interface Workings {
  readonly numbers: Readonly<Record<string, number>>;
  /** Clauses that were put into a sentence or left out of it, by name. */
  readonly said: Readonly<Record<string, boolean>>;
  /** Rows of lists, by the list's name; a list nobody touched is not here. */
  readonly rows: Readonly<Record<string, readonly WorkingRow[]>>;
}

const none: Workings = { numbers: {}, said: {}, rows: {} };
/** Rows a list holds at most. */
export const mostRows = 40;
const mostNames = 200;

/** What stands on the page; a value that cannot be used counts as not there. */
export function workingsIn(common: Common): Workings {
  const value = common[workingsName];
  if (value === undefined || faultInWorkings(value) !== undefined) return none;
  return { ...none, ...(value as unknown as Partial<Workings>) };
}

/** All numbers, as typed or as they start. */
export function valuesOf({ numbers }: Workings): WorkingValues {
  const names = Object.keys(workingNumbers) as WorkingNumberName[];
  return Object.fromEntries(
    names.map((name) => [name, Object.hasOwn(numbers, name) ? numbers[name]! : workingNumbers[name].start]),
  ) as WorkingValues;
}

/** What is wrong with a value from outside that should be workings, and what would be right. */
export function faultInWorkings(value: Json): string | undefined {
  if (!isRecord(value)) return 'workings are a record of `numbers`, `said` and `rows`';
  const { numbers = {}, said = {}, rows = {} } = value as Readonly<Record<string, unknown>>;
  if (!isRecord(said) || Object.values(said).some((one) => typeof one !== 'boolean') || tooMany(said)) {
    return '`said` of workings is a record of true and false';
  }
  const wrongNumbers = faultInNumbers(numbers, '`numbers` of workings');
  if (wrongNumbers !== undefined) return wrongNumbers;
  if (!isRecord(rows) || tooMany(rows)) return '`rows` of workings is a record of lists';
  for (const [name, list] of Object.entries(rows)) {
    if (!Array.isArray(list) || list.length > mostRows) {
      return `rows ‘${name.slice(0, 40)}’ of workings are a list of at most ${String(mostRows)}`;
    }
    for (const row of list as readonly unknown[]) {
      if (!isRecord(row)) return 'a row of workings has `numbers`';
      const { choice } = row;
      if (choice !== undefined && (typeof choice !== 'string' || choice.length > 40)) {
        return '`choice` of a row of workings is a short word';
      }
      const wrongRow = faultInNumbers(row.numbers, '`numbers` of a row of workings');
      if (wrongRow !== undefined) return wrongRow;
    }
  }
  return undefined;
}

function faultInNumbers(numbers: unknown, what: string): string | undefined {
  if (!isRecord(numbers) || tooMany(numbers)) return `${what} is a record of numbers`;
  for (const [name, number] of Object.entries(numbers)) {
    const row = Object.hasOwn(workingNumbers, name) ? workingNumbers[name as WorkingNumberName] : undefined;
    if (typeof number !== 'number' || !Number.isFinite(number)) return `${what} is a record of numbers`;
    if (row !== undefined && !(number >= row.low && number <= row.high)) {
      return `‘${name}’ of workings is ${String(number)}, and not from ${String(row.low)} to ${String(row.high)}`;
    }
  }
  return undefined;
}

function tooMany(record: object): boolean {
  return Object.keys(record).length > mostNames;
}
