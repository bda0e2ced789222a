// The derivative of what was read, shaped like it: numbers, and numbers in lists and records.

/** Derivatives of what was read: a number for each number. */
export type Slopes<Read> = Read extends number
  ? number
  : Read extends Float64Array
    ? Float64Array
    : Read extends readonly (infer One)[]
      ? readonly Slopes<One>[]
      : Read extends object
        ? { readonly [Key in keyof Read]: Slopes<Read[Key]> }
        : null;

/** (more − less)/change of every number; null for what is none. Of lists that differ in length as much as both have. */
export function differenceOf<Read>(more: Read, less: Read, change: number): Slopes<Read> {
  return difference(more, less, change) as Slopes<Read>;
}

function difference(more: unknown, less: unknown, change: number): unknown {
  if (typeof more === 'number' && typeof less === 'number') return (more - less) / change;
  if (more instanceof Float64Array && less instanceof Float64Array) {
    return Float64Array.from(
      { length: Math.min(more.length, less.length) },
      (_none, i) => (more[i]! - less[i]!) / change,
    );
  }
  if (Array.isArray(more) && Array.isArray(less)) {
    return Array.from({ length: Math.min(more.length, less.length) }, (_none, i) =>
      difference(more[i], less[i], change),
    );
  }
  if (typeof more !== 'object' || typeof less !== 'object' || more === null || less === null) return null;
  const other = less as Readonly<Record<string, unknown>>;
  return Object.fromEntries(Object.entries(more).map(([key, value]) => [key, difference(value, other[key], change)]));
}
