// What can go wrong, in two kinds. A caller's mistake (a negative volume, NaN) is an exception that
// names the argument, its value and what was expected. A failure that physics expects (a dry kettle,
// no azeotrope, a point outside the fitted range) is a value: see Outcome here and Ending in run/.

/** One argument that cannot be used: which, what it was, what would be right. */
export interface InputFault {
  /** Path of the argument, for instance `charge.volume_m3`. */
  readonly argument: string;
  readonly value: unknown;
  /** What would be right, for instance `a volume above 0 m³`. */
  readonly expected: string;
}

/**
 * Thrown when an argument cannot be used; nothing has been computed or changed.
 *
 * @example new InputError({ argument: 'volume_m3', value: -1, expected: 'a volume above 0 m³' }).message // → 'volume_m3 is -1; expected a volume above 0 m³'
 * Source: this project's error contract (DEVELOPERS.md).
 */
export class InputError extends Error {
  readonly faults: readonly InputFault[];
  constructor(...faults: readonly InputFault[]) {
    super(faults.map(describeFault).join('\n'));
    this.name = 'InputError';
    this.faults = faults;
  }
}

/** A result that physics may refuse to give: either the value or the reason there is none. */
export type Outcome<Value, Reason extends string> =
  ({ readonly found: true } & Value) | { readonly found: false; readonly reason: Reason; readonly message: string };

/** Throws an InputError unless `value` is a finite number in [low, high]. */
export function checkRange(argument: string, value: number, low: number, high: number, expected: string): void {
  if (!(Number.isFinite(value) && value >= low && value <= high)) {
    throw new InputError({ argument, value, expected });
  }
}

function describeFault(fault: InputFault): string {
  return `${fault.argument} is ${printed(fault.value)}; expected ${fault.expected}`;
}

function printed(value: unknown): string {
  if (typeof value === 'string') return `'${value}'`;
  if (typeof value === 'object' && value !== null) return JSON.stringify(value);
  return String(value);
}
