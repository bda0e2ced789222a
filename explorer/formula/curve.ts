// A formula against a variable: the variable is set to points of a range, and the lines between it and the formula are
// computed again at each. The variable is a number of the page, another line, or the one argument of a function.

import type { Computed } from './compute.js';
import { attempt } from './compute.js';
import { evaluateAt, type Names } from './evaluate.js';
import { fault, FormulaError } from './faults.js';
import { limits } from './limits.js';
import type { Memory } from './memory.js';
import { placed, type ReadLine } from './read-line.js';
import { range, readEnd, type Range } from './range.js';
import type { CurveAsk, CurveColumn, FormulaCurve, FormulaFault, FormulaValue } from './sheet.js';
import { shown } from './shown.js';
import type { Value } from './values.js';

type Tried = { readonly value: Value } | { readonly fault: FormulaFault };

/** Work that can be laid down between two of its steps and taken up again. */
export type Steps<Result> = Generator<undefined, Result>;

/** A curve; where nothing behind it has changed, the one in `memory`. It may be laid down after each line of a point. */
export function* curveSteps(computed: Computed, ask: CurveAsk, memory: Memory): Steps<FormulaCurve> {
  const behind = meaningsBehind(computed, ask, memory);
  const known = behind && memory.curve(ask, behind);
  if (known !== undefined) return known;
  const outcome = yield* outcomeOf(computed, ask, memory);
  const curve: FormulaCurve = { id: ask.id, against: ask.against, outcome };
  if (behind !== undefined) memory.drew(ask, behind, curve);
  return curve;
}

function* outcomeOf(computed: Computed, ask: CurveAsk, memory: Memory): Steps<FormulaCurve['outcome']> {
  const line = computed.page.lines.get(ask.id);
  if (line === undefined) return { fault: fault('waits', 'The formula cannot be read') };
  const at = pointFunction(computed, line, ask.against);
  if ('fault' in at) return at;
  const over = range(computed, ask, at.now, memory);
  if ('fault' in over) return over;
  return yield* drawn(computed, over, at);
}

/** What the curve depends on: its line with all behind it, and the names in its range; undefined while it has no value. */
function meaningsBehind({ states, meanings }: Computed, ask: CurveAsk, memory: Memory): readonly object[] | undefined {
  const state = states.get(ask.id);
  const ends = [readEnd(ask, 'from', memory), readEnd(ask, 'to', memory)];
  const names = ends.flatMap(({ line }) => line?.uses ?? []);
  const found = names.map((name) => meanings.get(name));
  if (state === undefined || found.some((meaning) => meaning === undefined)) return undefined;
  return [state, ...(found as object[])];
}

interface PointFunction {
  readonly at: (x: Value) => Steps<Tried>;
  /** Where the variable stands; null for an argument. */
  readonly now: Value | null;
}

function pointFunction(computed: Computed, line: ReadLine, against: string): PointFunction | { fault: FormulaFault } {
  const { names, page } = computed;
  if (line.params !== null) {
    if (line.params.length !== 1) {
      const wrong = 'Only a function of one thing can be drawn';
      return { fault: fault('units', wrong, 'write another line that gives it the rest') };
    }
    if (line.params[0] !== against) return { fault: fault('unknown', `It does not depend on ‘${against}’`) };
    return { at: (x) => tried(line, x, names), now: null };
  }
  const now = names.values.get(against) ?? null;
  const between = dependents(computed, against);
  if (now === null || !between.includes(line.id)) {
    return { fault: fault('unknown', `It does not depend on ‘${against}’`, 'choose one of the names it uses') };
  }
  const needed = neededBy(computed, line);
  const steps = between.map((id) => page.lines.get(id)!).filter((one) => needed.has(one));
  return { at: (x) => along(steps, against, x, names), now };
}

/** Lines that depend on a name, in order of dependence. */
export function dependents({ page }: Computed, name: string): string[] {
  const reached = new Set([name]);
  const found: string[] = [];
  for (const id of page.order) {
    const line = page.lines.get(id)!;
    if (!line.uses.some((used) => reached.has(used)) || line.name === name) continue;
    if (line.name !== null) reached.add(line.name);
    found.push(id);
  }
  return found;
}

/** A line, and every line it needs. */
function neededBy({ page }: Computed, line: ReadLine): ReadonlySet<ReadLine> {
  const needed = new Set([line]);
  // A set may grow while it is walked.
  for (const one of needed) {
    for (const name of one.uses) {
      const owner = page.lines.get(page.owners.get(name) ?? '');
      if (owner !== undefined) needed.add(owner);
    }
  }
  return needed;
}

function* along(steps: readonly ReadLine[], against: string, x: Value, names: Names): Steps<Tried> {
  const values = new Map(names.values).set(against, x);
  let last: Tried = { fault: fault('waits', 'The formula has no value') };
  for (const line of steps) {
    if (line.params !== null) continue;
    yield;
    last = attempt(line, { ...names, values }, limits.point);
    if ('fault' in last && line.name !== null) values.delete(line.name);
    if ('value' in last && line.name !== null) values.set(line.name, last.value);
  }
  return last;
}

function* tried(line: ReadLine, x: Value, names: Names): Steps<Tried> {
  yield;
  try {
    return { value: evaluateAt(line, x, names, limits.point) };
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    return { fault: placed(error, line.places) };
  }
}

function* drawn({ sheet }: Computed, over: Range, { at, now }: PointFunction): Steps<FormulaCurve['outcome']> {
  const x: (FormulaValue & { is: 'number' })[] = [];
  const y: (FormulaValue & { is: 'number' })[] = [];
  const faults: FormulaFault[] = [];
  let unit: (FormulaValue & { is: 'number' }) | undefined;
  const point = function* (value: Value): Steps<FormulaValue & { is: 'number' }> {
    const found = yield* at(value);
    if ('fault' in found) {
      faults.push(found.fault);
      return nothing;
    }
    const as = shown(found.value, sheet.units);
    if (as.is === 'number') {
      unit ??= as;
      return as;
    }
    faults.push(fault('units', 'True or false has no curve'));
    return nothing;
  };
  for (let k = 0; k < limits.points; k++) {
    const value = over.at(k / (limits.points - 1));
    x.push(shown(value, sheet.units) as FormulaValue & { is: 'number' });
    y.push(yield* point(value));
  }
  if (unit === undefined) return { fault: faults[0]! };
  const missing = faults[0] === undefined ? null : faults[0].wrong;
  const here = now === null ? null : yield* point(now);
  const nowX = now === null ? null : shown(now, sheet.units);
  return {
    x: column(x, x[0]!),
    y: column(y, unit),
    now: here === null || nowX?.is !== 'number' || Number.isNaN(here.shown) ? null : { x: nowX.shown, y: here.shown },
    missing,
  };
}

const nothing = { is: 'number', si: NaN, kind: null, shown: NaN, unit: '' } as const;

function column(
  values: readonly (FormulaValue & { is: 'number' })[],
  like: FormulaValue & { is: 'number' },
): CurveColumn {
  return { unit: like.unit, kind: like.kind, numbers: values.map((value) => value.shown) };
}
