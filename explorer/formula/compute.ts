// A page of formulas -> what each comes to. Each line is computed after those it uses. A fault stays with its line;
// lines that use it say that they wait for it.

import { evaluate, type Allowed, type Names } from './evaluate.js';
import { fault, FormulaError } from './faults.js';
import { Memory, type LineState } from './memory.js';
import { readPage, type PageLines } from './page-lines.js';
import { placeOfName } from './places.js';
import { placed, type ReadLine } from './read-line.js';
import type { FormulaFault, FormulaResult, FormulaSheet } from './sheet.js';
import { shown } from './shown.js';
import type { Value } from './values.js';

/** A page read and computed, for curves that compute parts of it again. */
export interface Computed {
  readonly results: readonly FormulaResult[];
  readonly page: PageLines;
  readonly sheet: FormulaSheet;
  /** Values by the id of their line. */
  readonly values: ReadonlyMap<string, Value>;
  /** What names mean once all is computed. */
  readonly names: Names;
  /** Lines that were computed or define a function, by id. */
  readonly states: ReadonlyMap<string, LineState>;
  /** What a name means, as one object that is another once anything behind it changed. */
  readonly meanings: ReadonlyMap<string, object>;
}

/**
 * Results in the order of the lines. `began` is told before each line is read and before it is computed; those that
 * stand as they stood in `memory` are neither.
 */
export function computeSheet(
  sheet: FormulaSheet,
  began: (id: string) => void = () => undefined,
  memory: Memory = new Memory(),
): Computed {
  memory.begin(sheet);
  const page = readPage(sheet, memory, began);
  const faults = new Map(page.faults);
  const values = new Map<string, Value>();
  const byName = new Map(sheet.quantities.map((quantity) => [quantity.name, memory.quantity(quantity)]));
  const functions = new Map<string, ReadLine>();
  const states = new Map<string, LineState>();
  const meanings = new Map<string, object>(byName);
  const names: Names = { values: byName, functions, given: new Map(), system: sheet.units };
  const missing = (line: ReadLine): string | undefined => line.uses.find((name) => !meanings.has(name));

  for (const id of page.order) {
    const line = page.lines.get(id)!;
    if (missing(line) !== undefined) continue;
    const inputs = line.uses.map((name) => meanings.get(name)!);
    const state = memory.state(line, inputs, () => {
      if (line.params !== null) return null;
      began(id);
      return attempt(line, names);
    });
    states.set(id, state);
    const { came } = state;
    if (came === null) {
      functions.set(line.name!, line);
      meanings.set(line.name!, state);
    } else if ('fault' in came) faults.set(id, came.fault);
    else {
      values.set(id, came.value);
      if (line.name === null) continue;
      byName.set(line.name, came.value);
      meanings.set(line.name, came.value);
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
  return { results, page, sheet, values, names, states, meanings };
}

/** The value of a line, or its fault with its place. */
export function attempt(
  line: ReadLine,
  names: Names,
  allowed?: Allowed,
): { readonly value: Value } | { readonly fault: FormulaFault } {
  try {
    return { value: evaluate(line, names, allowed) };
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    return { fault: placed(error, line.places) };
  }
}

function waitsFault(name: string, line: ReadLine): FormulaFault {
  const at = placeOfName(name, line.body, line.places);
  return fault('waits', `It waits for ‘${name}’, which has no value`, '', at);
}
