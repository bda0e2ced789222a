// What can go wrong, in two kinds. A caller's mistake (a negative volume, NaN) is an exception that
// names the argument, its value and what was expected. A failure that physics expects (a dry kettle,
// no azeotrope, a point outside the fitted range) is a value: see Outcome here and Ending in run/.

/** What is wrong with an argument, for a program that looks at it; the words are in `expected`. */
export type InputCode =
  /** It is not there. */
  | 'missing'
  /** It is of another type: a text for a number, a list for a record. */
  | 'wrongType'
  /** NaN or infinite. */
  | 'notFinite'
  /** A number outside what it may be, in the unit that is asked for. */
  | 'outOfRange'
  /** A name that is not one of the known ones. */
  | 'unknownChoice'
  /** A field nobody knows, such as a mistyped one. */
  | 'unknownField'
  /** Right by itself, and not with the rest. */
  | 'conflict';

/** One argument that cannot be used: which, what it was, what would be right. */
export interface InputFault {
  readonly code: InputCode;
  /** Path of the argument, for instance `charge.volume_m3`. */
  readonly argument: string;
  readonly value: unknown;
  /** What would be right, for instance `a volume above 0 m³`. */
  readonly expected: string;
}

/** A fault as it is found: its code follows from its value where none is said. */
export type Fault = Omit<InputFault, 'code'> & { readonly code?: InputCode };

/** An InputError as plain data, which can be sent from a worker or kept in a file. */
export interface PlainInputError {
  readonly name: 'InputError';
  readonly code: InputCode;
  readonly message: string;
  readonly faults: readonly InputFault[];
}

/**
 * Thrown when an argument cannot be used; nothing has been computed or changed. An error that is sent from a worker keeps its name
 * and message only: send `toPlain()`, and make it an error again with `inputErrorFromPlain`.
 *
 * @example new InputError({ argument: 'volume_m3', value: -1, expected: 'a volume above 0 m³' }).message // → 'volume_m3 is -1; expected a volume above 0 m³'
 * @example new InputError({ argument: 'volume_m3', value: -1, expected: 'a volume above 0 m³' }).code // → 'outOfRange'
 * Source: this project's error contract (DEVELOPERS.md).
 */
export class InputError extends Error {
  /** Of the first fault. */
  readonly code: InputCode;
  readonly faults: readonly InputFault[];
  constructor(...faults: readonly Fault[]) {
    super(describeFaults(faults));
    this.name = 'InputError';
    this.faults = faults.map(coded);
    this.code = this.faults[0]?.code ?? 'conflict';
  }

  /** The same as plain data; a value that cannot be sent is told in words. */
  toPlain(): PlainInputError {
    const { code, message, faults } = this;
    const plain = faults.map((fault) => (isBare(fault.value) ? fault : { ...fault, value: printed(fault.value) }));
    return { name: 'InputError', code, message, faults: plain };
  }
}

/** A fault with its code. */
export function coded(fault: Fault): InputFault {
  return { ...fault, code: fault.code ?? codeOf(fault.value) };
}

function codeOf(value: unknown): InputCode {
  if (value === undefined) return 'missing';
  if (typeof value !== 'number') return 'wrongType';
  return Number.isFinite(value) ? 'outOfRange' : 'notFinite';
}

function isBare(value: unknown): boolean {
  return value === null || !/^(object|function|symbol)$/u.test(typeof value);
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

function describeFault(fault: Fault): string {
  return `${cut(fault.argument, LONGEST_PATH)} is ${cut(printed(fault.value), LONGEST_VALUE)}; expected ${cut(fault.expected, LONGEST_EXPECTED)}`;
}

function describeFaults(faults: readonly Fault[]): string {
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
