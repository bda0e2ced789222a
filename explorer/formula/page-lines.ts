// The lines of a page, read and put in order of dependence: which name belongs to which line, which names nothing
// goes by, which lines need each other. Nothing is computed here.

import { fault, listed } from './faults.js';
import { limits } from './limits.js';
import { orderOf } from './order.js';
import type { Memory } from './memory.js';
import { placeOfName } from './places.js';
import { readLine, type Read, type ReadLine } from './read-line.js';
import type { FormulaFault, FormulaSheet } from './sheet.js';
import { stoppedFault } from './stopped.js';
import { unknownFault } from './unknown.js';

export interface PageLines {
  /** Those that can be read, by id. */
  readonly lines: ReadonlyMap<string, ReadLine>;
  /** Names that lines define, faulty lines included. */
  readonly names: ReadonlyMap<string, string | null>;
  /** The line that owns a name, by name. */
  readonly owners: ReadonlyMap<string, string>;
  readonly faults: ReadonlyMap<string, FormulaFault>;
  /** Lines that can be computed if those before them can, in that order. */
  readonly order: readonly string[];
}

/** Reads a page, lines that have not changed from memory; `began` is told before each other. */
export function readPage(sheet: FormulaSheet, memory: Memory, began: (id: string) => void): PageLines {
  const quantities = new Set(sheet.quantities.map(({ name }) => name));
  const stopped = new Set(sheet.stopped);
  const lines = new Map<string, ReadLine>();
  const names = new Map<string, string | null>();
  const owners = new Map<string, string>();
  const faults = new Map<string, FormulaFault>();

  for (const [index, typed] of sheet.lines.entries()) {
    const { id } = typed;
    const fresh = (): Read => {
      began(id);
      return readLine(typed);
    };
    const read = index < limits.lines ? memory.read(id, typed.text, fresh) : tooMany;
    const name = read.line === null ? read.name : read.line.name;
    names.set(id, name);
    if (read.line !== null) lines.set(id, read.line);
    if (read.fault !== null) faults.set(id, read.fault);
    if (stopped.has(id)) faults.set(id, stoppedFault);
    if (name === null) continue;
    const taken = owners.has(name) || quantities.has(name);
    if (taken) faults.set(id, takenFault(name, quantities.has(name), read.line));
    else owners.set(name, id);
  }

  const stated = [...quantities, ...owners.keys()];
  const able = [...lines.values()].filter(({ id }) => !faults.has(id));
  for (const line of able) {
    const unknown = line.uses.find((name) => !quantities.has(name) && !owners.has(name));
    if (unknown === undefined) continue;
    const look = (): FormulaFault =>
      unknownFault(unknown, [...stated, ...(line.params ?? [])], placeOfName(unknown, line.body, line.places));
    faults.set(line.id, memory.unknown(line, unknown, stated, look));
  }
  const needs = (line: ReadLine): string[] => line.uses.flatMap((name) => owners.get(name) ?? []);
  const { order, circles } = orderOf(able.map((line) => ({ id: line.id, needs: needs(line) })));
  for (const [id, circle] of circles) {
    if (!faults.has(id)) faults.set(id, circleFault(circle.map((member) => lines.get(member)!)));
  }
  return { lines, names, owners, faults, order: order.filter((id) => !faults.has(id)) };
}

const tooMany: Read = {
  line: null,
  name: null,
  fault: fault('tooMuch', `A page computes at most ${limits.lines} formulas`, 'take some out'),
};

function takenFault(name: string, byPage: boolean, line: ReadLine | null): FormulaFault {
  const at = line === null ? null : line.placeOfDefinition;
  const right = 'choose another name';
  if (byPage) return fault('taken', `‘${name}’ is a number of the page`, right, at);
  return fault('taken', `‘${name}’ is defined above as well`, `${right} for one of them`, at);
}

/** The circle begins with the line at fault. */
function circleFault(circle: readonly ReadLine[]): FormulaFault {
  const names = circle.map(({ name }) => name ?? '');
  const [line] = circle;
  const next = names[1] ?? names[0]!;
  const at = placeOfName(next, line!.body, line!.places);
  if (names.length === 1) return fault('circle', `‘${next}’ needs itself`, 'use another name inside it', at);
  const round = names.map((name, k) => `${name} needs ${names[(k + 1) % names.length]!}`);
  return fault('circle', `This goes in a circle: ${listed(round)}`, 'give one of them a value of its own', at);
}
