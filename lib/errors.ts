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
    super(describeFaults(faults));
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

/** So many faults are told in the message; `faults` has all of them. */
const MOST_TOLD = 10;
/** Longer values and expectations are cut. */
const LONGEST_VALUE = 80;
const LONGEST_EXPECTED = 300;
const LONGEST_PATH = 120;

function describeFault(fault: InputFault): string {
  return `${cut(fault.argument, LONGEST_PATH)} is ${cut(printed(fault.value), LONGEST_VALUE)}; expected ${cut(fault.expected, LONGEST_EXPECTED)}`;
}

function describeFaults(faults: readonly InputFault[]): string {
  const told = faults.slice(0, MOST_TOLD).map(describeFault);
  const more = faults.length - told.length;
  return [...told, ...(more > 0 ? [`and ${String(more)} more`] : [])].join('\n');
}

function cut(text: string, most: number): string {
  return text.length <= most ? text : `${text.slice(0, most)} …`;
}

/** A value as it would be written down, however deep, circular or odd it is; no more of it than is told. */
function printed(value: unknown): string {
  if (typeof value === 'string') return `'${value.slice(0, LONGEST_VALUE)}'`;
  if (typeof value === 'bigint') return `${value.toString().slice(0, LONGEST_VALUE)}n`;
  if (typeof value === 'function') return 'a function';
  if (typeof value !== 'object' || value === null) return String(value);
  let budget = LONGEST_VALUE;
  return nested(value, 0);

  function nested(inner: unknown, depth: number): string {
    if (typeof inner !== 'object' || inner === null) {
      const text = typeof inner === 'string' ? JSON.stringify(inner.slice(0, LONGEST_VALUE)) : printed(inner);
      budget -= text.length;
      return text;
    }
    const list = Array.isArray(inner);
    const parts: string[] = [];
    for (const key of depth < 4 ? Object.keys(inner) : []) {
      if (budget <= 0) break;
      const part = nested((inner as Readonly<Record<string, unknown>>)[key], depth + 1);
      parts.push(list ? part : `${JSON.stringify(key)}:${part}`);
      budget -= list ? 1 : key.length + 4;
    }
    if (depth >= 4) parts.push('…');
    return list ? `[${parts.join(',')}]` : `{${parts.join(',')}}`;
  }
}
