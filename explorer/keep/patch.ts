// What changed between two JSON values, small enough to be written at every keystroke, and applying it again. It
// knows nothing of a notebook's layout. Parts that are the very same object in both are not looked into, so a change in
// a large notebook costs no more than one in a small one.

import type { Json } from '../state/notebook-record.js';

type Path = readonly (string | number)[];
type Plain = Readonly<Record<string, Json | undefined>>;

/** One change: a value set or dropped, or a piece of a text or a list exchanged. */
export type Step =
  | { readonly at: Path; readonly set: Json }
  | { readonly at: Path; readonly drop: true }
  | (Piece & { readonly at: Path });

interface Piece {
  readonly from: number;
  readonly cut: number;
  readonly put: string | readonly Json[];
}

/** The changes that lead from one value to another. */
export function changesBetween(before: Json, after: Json): readonly Step[] {
  const steps: Step[] = [];
  compare(before, after, [], steps);
  return steps;
}

/** The value after the changes; an error where they do not fit it. `value` may be changed in place. */
export function withChanges(value: Json, steps: readonly Step[]): Json {
  const root: Record<string, Json> = { value };
  for (const step of steps) apply(root, ['value', ...step.at], step);
  return root.value!;
}

function compare(before: Json, after: Json, at: Path, steps: Step[]): void {
  if (before === after) return;
  if (typeof before === 'string' && typeof after === 'string') exchange(before, after, at, steps);
  else if (isList(before) && isList(after)) compareLists(before, after, at, steps);
  else if (isPlain(before) && isPlain(after)) compareFields(before, after, at, steps);
  else steps.push({ at, set: after });
}

function compareFields(before: Plain, after: Plain, at: Path, steps: Step[]): void {
  for (const name of Object.keys(before)) {
    if (before[name] !== undefined && !has(after, name)) steps.push({ at: [...at, name], drop: true });
  }
  for (const name of Object.keys(after)) {
    const value = after[name];
    if (value === undefined) continue;
    if (has(before, name)) compare(before[name]!, value, [...at, name], steps);
    else steps.push({ at: [...at, name], set: value });
  }
}

function compareLists(before: readonly Json[], after: readonly Json[], at: Path, steps: Step[]): void {
  if (before.length !== after.length) exchange(before, after, at, steps);
  else for (const [i, value] of after.entries()) compare(before[i]!, value, [...at, i], steps);
}

/** The middle of a text or a list, between what is the same at its beginning and at its end. */
function exchange<T extends string | readonly Json[]>(before: T, after: T, at: Path, steps: Step[]): void {
  const most = Math.min(before.length, after.length);
  let from = 0;
  while (from < most && same(before[from]!, after[from]!)) from += 1;
  let end = 0;
  while (end < most - from && same(before[before.length - 1 - end]!, after[after.length - 1 - end]!)) end += 1;
  const put = after.slice(from, after.length - end);
  steps.push({ at, from, cut: before.length - end - from, put });
}

function same(one: Json, other: Json): boolean {
  return (
    one === other || (typeof one === 'object' && typeof other === 'object' && changesBetween(one, other).length === 0)
  );
}

function apply(root: Record<string, Json>, path: Path, step: Step): void {
  let holder: Json = root;
  for (const name of path.slice(0, -1)) holder = inside(holder, name);
  const last = path.at(-1)!;
  if ('set' in step) setIn(holder, last, step.set);
  else if ('drop' in step) {
    inside(holder, last);
    if (!isPlain(holder)) throw new Error('A change takes a field away where there are none.');
    Reflect.deleteProperty(holder, last);
  } else setIn(holder, last, exchanged(inside(holder, last), step));
}

function exchanged(value: Json, { from, cut, put }: Piece): Json {
  const fits = (length: number): boolean => from >= 0 && cut >= 0 && from + cut <= length;
  if (typeof value === 'string' && typeof put === 'string' && fits(value.length))
    return value.slice(0, from) + put + value.slice(from + cut);
  if (isList(value) && isList(put) && fits(value.length)) return value.toSpliced(from, cut, ...put);
  throw new Error('A change does not fit what it changes.');
}

function inside(holder: Json, name: string | number): Json {
  const found = isList(holder) ? holder[Number(name)] : isPlain(holder) && has(holder, name) ? holder[name] : undefined;
  if (found === undefined) throw new Error(`A change is about ‘${String(name)}’, which is not there.`);
  return found;
}

function setIn(holder: Json, name: string | number, value: Json): void {
  if (isList(holder) ? typeof name !== 'number' || name >= holder.length || name < 0 : !isPlain(holder))
    throw new Error('A change is about a place that is not there.');
  // Not by assignment: '__proto__' is a name like any other here.
  Object.defineProperty(holder, name, { value, writable: true, enumerable: true, configurable: true });
}

function has(value: Plain, name: string | number): boolean {
  return Object.hasOwn(value, name) && value[name] !== undefined;
}

function isList(value: unknown): value is readonly Json[] {
  return Array.isArray(value);
}

function isPlain(value: Json): value is Plain & { readonly [key: string]: Json } {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
