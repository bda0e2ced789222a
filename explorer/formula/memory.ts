// What the engine remembers from one ask to the next, so that after a keystroke only the lines that depend on the
// changed one are worked on again. What a name means is one object; it is another as soon as anything behind it changed.

import type { ReadLine, Read } from './read-line.js';
import type { CurveAsk, FormulaCurve, FormulaFault, FormulaSheet, PageQuantity } from './sheet.js';
import { ofQuantity, type Value } from './values.js';

/** A line with what it was computed from and what it came to. */
export interface LineState {
  readonly line: ReadLine;
  /** What the names it uses meant, in their order. */
  readonly inputs: readonly object[];
  /** Null for a line that defines a function. */
  readonly came: { readonly value: Value } | { readonly fault: FormulaFault } | null;
}

/** Work done, for tests. */
export interface Counts {
  /** Lines and ends of ranges parsed. */
  read: number;
  /** Lines computed, those along a curve not counted. */
  computed: number;
  /** Curves computed. */
  drawn: number;
}

interface KnownCurve {
  readonly ask: CurveAsk;
  readonly behind: readonly object[];
  readonly curve: FormulaCurve;
}

export class Memory {
  readonly counts: Counts = { read: 0, computed: 0, drawn: 0 };
  #units: FormulaSheet['units'] | undefined;
  #quantities = new Map<string, { readonly of: PageQuantity; readonly value: Value }>();
  #reads = new Map<string, { readonly text: string; readonly read: Read }>();
  #ends = new Map<string, Partial<Record<'from' | 'to', { readonly text: string; readonly read: Read }>>>();
  #states = new Map<string, LineState>();
  #curves = new Map<string, KnownCurve>();
  #names = '';
  #unknown = new Map<string, FormulaFault>();

  /** Begins with a sheet: what belongs to lines it does not have is forgotten. */
  begin({ lines, units }: FormulaSheet): void {
    if (units !== this.#units) {
      this.#quantities = new Map();
      this.#states = new Map();
      this.#curves = new Map();
    }
    this.#units = units;
    const ids = new Set(lines.map(({ id }) => id));
    for (const known of [this.#reads, this.#ends, this.#states, this.#curves]) {
      for (const id of known.keys()) if (!ids.has(id)) known.delete(id);
    }
  }

  /** The very same value for the same number of the page. */
  quantity(of: PageQuantity): Value {
    const known = this.#quantities.get(of.name);
    if (known?.of.si === of.si && known.of.kind === of.kind) return known.value;
    const value = ofQuantity(of, this.#units!);
    this.#quantities.set(of.name, { of, value });
    return value;
  }

  /** A line as it was read before, or read now. */
  read(id: string, text: string, read: () => Read): Read {
    const known = this.#reads.get(id);
    if (known?.text === text) return known.read;
    this.counts.read += 1;
    const fresh = read();
    this.#reads.set(id, { text, read: fresh });
    return fresh;
  }

  /** An end of the range of a line's curve. */
  end(id: string, which: 'from' | 'to', text: string, read: () => Read): Read {
    const known = this.#ends.get(id) ?? {};
    this.#ends.set(id, known);
    if (known[which]?.text !== text) {
      this.counts.read += 1;
      known[which] = { text, read: read() };
    }
    return known[which].read;
  }

  /** What a line came to before, where nothing behind it has changed; else what it comes to now. */
  state(line: ReadLine, inputs: readonly object[], compute: () => LineState['came']): LineState {
    const known = this.#states.get(line.id);
    if (known?.line === line && same(known.inputs, inputs)) return known;
    if (line.params === null) this.counts.computed += 1;
    const state = { line, inputs, came: compute() };
    this.#states.set(line.id, state);
    return state;
  }

  /** The curve drawn before, where neither what was asked nor anything behind it has changed. */
  curve(ask: CurveAsk, behind: readonly object[]): FormulaCurve | undefined {
    const known = this.#curves.get(ask.id);
    const { against, from, to } = ask;
    const asked = known?.ask.against === against && known.ask.from === from && known.ask.to === to;
    return asked && same(known.behind, behind) ? known.curve : undefined;
  }

  drew(ask: CurveAsk, behind: readonly object[], curve: FormulaCurve): void {
    this.counts.drawn += 1;
    this.#curves.set(ask.id, { ask, behind, curve });
  }

  /** What is said of an unknown name, looked for once while the names of the page are the same. */
  unknown(line: ReadLine, name: string, names: readonly string[], look: () => FormulaFault): FormulaFault {
    const all = names.join(' ');
    if (all !== this.#names) this.#unknown = new Map();
    this.#names = all;
    const key = `${line.id} ${line.text} ${name}`;
    const found = this.#unknown.get(key) ?? look();
    this.#unknown.set(key, found);
    return found;
  }
}

function same(one: readonly object[], other: readonly object[]): boolean {
  return one.length === other.length && one.every((part, at) => part === other[at]);
}
