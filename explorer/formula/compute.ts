// A page of formulas -> what each comes to. Each line is computed after those it uses. A fault stays with its line;
// lines that use it say that they wait for it.

import { evaluate, type Names } from './evaluate.js';
import { fault, FormulaError } from './faults.js';
import { readPage, type PageLines } from './page-lines.js';
import { placeOfName } from './places.js';
import { placed, type ReadLine } from './read-line.js';
import type { FormulaFault, FormulaResult, FormulaSheet } from './sheet.js';
import { shown } from './shown.js';
import { ofKind, type Value } from './values.js';

/** A page read and computed, for curves that compute parts of it again. */
export interface Computed {
  readonly results: readonly FormulaResult[];
  readonly page: PageLines;
  readonly sheet: FormulaSheet;
  /** Values by the id of their line. */
  readonly values: ReadonlyMap<string, Value>;
  /** What names mean once all is computed. */
  readonly names: Names;
}

/** Results in the order of the lines. `began` is told before each line is read and before it is computed. */
export function computeSheet(sheet: FormulaSheet, began: (id: string) => void = () => undefined): Computed {
  const page = readPage(sheet, began);
  const faults = new Map(page.faults);
  const values = new Map<string, Value>();
  const byName = new Map(sheet.quantities.map(({ name, kind, si }) => [name, ofKind(kind, si, sheet.units)]));
  const functions = new Map<string, ReadLine>();
  const names: Names = { values: byName, functions, given: new Map(), system: sheet.units };
  const missing = (line: ReadLine): string | undefined =>
    line.uses.find((name) => !byName.has(name) && !functions.has(name));

  for (const id of page.order) {
    const line = page.lines.get(id)!;
    if (missing(line) !== undefined) continue;
    if (line.params !== null) {
      functions.set(line.name!, line);
      continue;
    }
    began(id);
    const value = attempt(line, names);
    if ('fault' in value) faults.set(id, value.fault);
    else {
      values.set(id, value.value);
      if (line.name !== null) byName.set(line.name, value.value);
    }
  }
  const results = sheet.lines.map(({ id }): FormulaResult => {
    const line = page.lines.get(id);
    const head = { id, name: page.names.get(id) ?? null, uses: line?.uses ?? [] };
    const known = faults.get(id);
    if (known !== undefined || line === undefined) return { ...head, outcome: { fault: known! } };
    const value = values.get(id);
    if (value !== undefined) return { ...head, outcome: { value: shown(value, sheet.units) } };
    const waits = missing(line);
    if (waits !== undefined) return { ...head, outcome: { fault: waitsFault(waits, line) } };
    return { ...head, outcome: { value: { is: 'function', of: line.params ?? [] } } };
  });
  return { results, page, sheet, values, names };
}

/** The value of a line, or its fault with its place. */
export function attempt(line: ReadLine, names: Names): { readonly value: Value } | { readonly fault: FormulaFault } {
  try {
    return { value: evaluate(line, names) };
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    return { fault: placed(error, line.places) };
  }
}

function waitsFault(name: string, line: ReadLine): FormulaFault {
  const at = placeOfName(name, line.body, line.places);
  return fault('waits', `It waits for ‘${name}’, which has no value`, '', at);
}
