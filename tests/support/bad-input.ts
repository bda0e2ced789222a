// Bad arguments for every public function, made from good ones: the good ones come from the example in its doc comment, or from a row
// of the table in tests/laws/bad-input.test.ts.

import ts from 'typescript';
import * as still from '#lib/index.js';
import * as numerics from '#lib/numerics/index.js';
import { examplesOf, publicNames } from './doc-comments.js';

export const lib: Readonly<Record<string, unknown>> = { ...still, ...numerics };

/** A public function with arguments that it takes. */
export interface Call {
  /** As it is written: `azeotrope`, `ethanol.liquidEnthalpy`. */
  readonly name: string;
  readonly parameters: readonly { readonly name: string; readonly optional: boolean }[];
  readonly good: readonly unknown[];
}

/** One way of calling it that cannot be right. */
export interface BadCall {
  /** Path of what is wrong, for instance `charge.volume_m3`. */
  readonly path: string;
  /** What is wrong with it. */
  readonly sort: Sort;
  readonly bad: unknown;
  readonly args: readonly unknown[];
}

export type Sort =
  | 'wrong type'
  | 'NaN'
  | 'infinite'
  | 'negative'
  | 'out of range'
  | 'wrong unit'
  | 'unknown'
  | 'unknown key'
  | 'empty'
  | 'absurdly long'
  | 'missing';

/** Every public function, with the arguments of its example unless the table has others. */
export function publicCalls(others: Readonly<Record<string, string>>): Call[] {
  const names = [...publicNames(), ...publicNames('lib/numerics/index.ts')];
  const functions = names.filter(({ kind }) => kind === 'function');
  const calls = functions.map(({ name, comment, parameters }) => {
    const example = others[name] ?? examplesOf(comment)[0]?.call ?? '';
    return { name, parameters, good: argumentsOf(example, name) };
  });
  // Records of functions: each example of a constant is a call of one of them.
  const records = names
    .filter(({ kind }) => kind === 'constant')
    .flatMap(({ name, comment }) =>
      examplesOf(comment).flatMap(({ call }) => {
        const method = new RegExp(`^${name}\\.(\\w+)\\(`, 'u').exec(call)?.[1];
        if (method === undefined) return [];
        const parameter = method === 'boilingTemperature' ? 'pressure_Pa' : 'temperature_K';
        const full = `${name}.${method}`;
        return [{ name: full, parameters: [{ name: parameter, optional: false }], good: argumentsOf(call, full) }];
      }),
    );
  return [...calls, ...records];
}

/** The arguments of the call of a function that stands somewhere in an expression. */
function argumentsOf(expression: string, name: string): readonly unknown[] {
  const file = ts.createSourceFile('example.ts', expression, ts.ScriptTarget.Latest, true);
  let found: readonly string[] | undefined;
  const look = (node: ts.Node): void => {
    if (found === undefined && ts.isCallExpression(node) && node.expression.getText() === name) {
      found = node.arguments.map((argument) => argument.getText());
    }
    ts.forEachChild(node, look);
  };
  look(file);
  if (found === undefined) throw new Error(`no call of ${name} in ${expression}`);
  // The expression stands in our own source.
  // eslint-disable-next-line @typescript-eslint/no-implied-eval
  const run = new Function(...Object.keys(lib), `return [${found.join(', ')}];`) as (...values: unknown[]) => unknown[];
  return run(...Object.values(lib));
}

/** The function that a call names. */
export function functionOf({ name }: Call): (...args: unknown[]) => unknown {
  const [first = '', method] = name.split('.');
  const value = lib[first] as Record<string, unknown>;
  return (method === undefined ? value : value[method]) as (...args: unknown[]) => unknown;
}

/** Every way in which one of the arguments, or a field at any depth of one, can be wrong. */
export function badCalls({ good, parameters }: Call): BadCall[] {
  return good.flatMap((value, i) => {
    const { name, optional } = parameters[i]!;
    const put = (bad: unknown): readonly unknown[] => good.map((other, k) => (k === i ? bad : other));
    const missing: BadCall[] = optional ? [] : [{ path: name, sort: 'missing', bad: undefined, args: put(undefined) }];
    return [...missing, ...badValues(name, value).map(({ root, ...rest }) => ({ ...rest, args: put(root) }))];
  });
}

type BadValue = Omit<BadCall, 'args'> & { readonly root: unknown };

const long = 'x'.repeat(100_000);
const anyType: readonly (readonly [Sort, unknown])[] = [
  ['wrong type', null],
  ['wrong type', true],
  ['wrong type', 12n],
  ['wrong type', Symbol('s')],
  ['wrong type', () => 1],
];

function badValues(path: string, value: unknown): BadValue[] {
  const here = (list: readonly (readonly [Sort, unknown])[]): BadValue[] =>
    list.map(([sort, bad]) => ({ path, sort, bad, root: bad }));
  const others = anyType.filter(([, bad]) => typeof bad !== typeof value);
  if (typeof value === 'number') return here([...others, ...numbers(path, value)]);
  if (typeof value === 'string') {
    return here([...others, ['wrong type', 3], ['unknown', 'nonsense'], ['empty', ''], ['absurdly long', long]]);
  }
  if (typeof value === 'boolean') return here([...others.filter(([, bad]) => bad !== true), ['wrong type', 'yes']]);
  if (Array.isArray(value)) {
    const list = value as readonly unknown[];
    return [
      ...here([...others, ['wrong type', 'text'], ['wrong type', {}]]),
      ...list.flatMap((one, i) =>
        badValues(`${path}[${String(i)}]`, one).map((inner) => ({
          ...inner,
          root: list.map((other, k) => (k === i ? inner.root : other)),
        })),
      ),
    ];
  }
  if (isPlain(value)) {
    const record = value as Readonly<Record<string, unknown>>;
    return [
      ...here([...others, ['wrong type', 3], ['wrong type', 'text'], ['wrong type', []]]),
      { path: `${path}.tolerence`, sort: 'unknown key', bad: 1e-9, root: { ...record, tolerence: 1e-9 } },
      ...Object.entries(record).flatMap(([name, field]) =>
        badValues(`${path}.${name}`, field).map((inner) => ({ ...inner, root: { ...record, [name]: inner.root } })),
      ),
    ];
  }
  // Slices, systems, models, solutions: known by what they have.
  return here([...others, ['wrong type', 3], ['wrong type', 'text'], ['wrong type', {}]]);
}

function numbers(path: string, value: number): (readonly [Sort, unknown])[] {
  return [
    ['wrong type', String(value)],
    ['wrong type', '0,4'],
    ['wrong type', {}],
    ['wrong type', [value]],
    ['NaN', NaN],
    ['infinite', Infinity],
    ['infinite', -Infinity],
    ['negative', -1],
    ['out of range', 1e300],
    ['out of range', -1e300],
    ...otherUnits(path),
  ];
}

/** The same number in the unit that is used most: degrees for kelvins, per cent for shares, kilopascals for pascals. */
function otherUnits(path: string): (readonly [Sort, unknown])[] {
  if (/(?<!_[WJ])_K$/u.test(path)) return [['wrong unit', 20]];
  if (/(strength|Fraction|Share|share)$/iu.test(path)) return [['wrong unit', 40]];
  if (/_Pa$/u.test(path)) return [['wrong unit', 101.325]];
  return [];
}

/** Data that could stand in a file: records of records, lists, numbers, texts. */
function isPlain(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return typeof value !== 'function';
  if (Array.isArray(value)) return value.every(isPlain);
  return Object.getPrototypeOf(value) === Object.prototype && Object.values(value).every(isPlain);
}
