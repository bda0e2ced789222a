// The range of a curve, from its two typed ends. An end without a unit takes the unit that the variable is shown in.

import { add, alike, multiply, plain, sizeOf, subtract } from './arithmetic.js';
import { attempt, type Computed } from './compute.js';
import { fault, FormulaError } from './faults.js';
import type { Memory } from './memory.js';
import { readLine, type Read } from './read-line.js';
import type { CurveAsk, FormulaFault } from './sheet.js';
import { inShownUnit } from './shown.js';
import { inKelvin, number, type Value } from './values.js';

export interface Range {
  /** The variable at a share of the range, 0..1. */
  readonly at: (share: number) => Value;
}

/** The range of a curve; `now` is the value of the variable, null for an argument that may be anything. */
export function range(
  computed: Computed,
  ask: CurveAsk,
  now: Value | null,
  memory: Memory,
): Range | { readonly fault: FormulaFault } {
  const from = endOf(computed, ask, 'from', now, memory);
  if ('fault' in from) return from;
  const to = endOf(computed, ask, 'to', now, memory);
  if ('fault' in to) return to;
  return between(from.value, to.value);
}

/** An end of the range as a formula. */
export function readEnd(ask: CurveAsk, which: 'from' | 'to', memory: Memory): Read {
  const id = `${which} of ${ask.id}`;
  return memory.end(ask.id, which, ask[which], () => readLine({ id, text: ask[which] }));
}

function endOf(
  { names, sheet }: Computed,
  ask: CurveAsk,
  which: 'from' | 'to',
  now: Value | null,
  memory: Memory,
): { readonly value: Value } | { readonly fault: FormulaFault } {
  const read = readEnd(ask, which, memory);
  const about = (found: FormulaFault): { fault: FormulaFault } => ({
    fault: { ...found, wrong: `The range, ‘${which}’: ${found.wrong}`, at: null, instead: null },
  });
  if (read.line === null) return about(read.fault);
  const unknown = read.line.uses.find((name) => !names.values.has(name));
  if (unknown !== undefined) return about(fault('unknown', `nothing with a value is called ‘${unknown}’`));
  const found = attempt(read.line, names);
  if ('fault' in found) return about(found.fault);
  if (now === null) return found;
  const { value } = found;
  if (value.is === 'number' && now.is === 'number') return share(value.number, now) ?? about(wrongShare);
  if (value.is === 'number') return { value: inShownUnit(value.number, now, sheet.units) };
  return alikeValues(value, now) ? found : about(fault('units', `it is to be of the same kind as ‘${ask.against}’`));
}

const wrongShare = fault('outside', 'a share goes from 0 to 1', 'write 40% or 0.4');

/** A number as the share that the variable is, if it is one. */
function share(count: number, now: Value & { is: 'number' }): { readonly value: Value } | null {
  const ofShare =
    now.kind === 'strength' || now.kind === 'massShare' || now.kind === 'moleShare' || now.kind === 'percent';
  return ofShare && (count < 0 || count > 1) ? null : { value: number(count, now.kind) };
}

function between(from: Value, to: Value): Range | { readonly fault: FormulaFault } {
  if (!alikeValues(from, to) || from.is === 'truth') {
    return { fault: fault('units', 'The ends of the range are not of the same kind', 'give both the same unit') };
  }
  try {
    const span = subtract(to, from, null);
    if (sizeOf(plain(span, null)) === 0) return { fault: fault('outside', 'The range has no length') };
    return { at: (share) => as(add(from, multiply(span, number(share), null), null), from) };
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    return { fault: fault(error.kind, error.wrong, error.right) };
  }
}

/** A share of what the first end is a share of. */
function as(value: Value, like: Value): Value {
  return value.is === 'number' && like.is === 'number' ? { ...value, kind: like.kind } : value;
}

function alikeValues(a: Value, b: Value): boolean {
  if (a.is === 'truth' || b.is === 'truth') return false;
  return alike(plain(inKelvin(a), null), plain(inKelvin(b), null));
}
