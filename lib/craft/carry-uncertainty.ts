// One rule by which every answer of this folder carries the uncertainty of what was measured: each input is moved by its
// own standard uncertainty, up and down, and half the difference of the answers is what it contributes. Independent
// inputs add in quadrature:
//
//   c_i = (f(x_i + u_i) − f(x_i − u_i))/2,  u² = Σ c_i²
//
// Source: JCGM 100:2008 (GUM), 5.1.3 with its note 2 (changes by ± u taken numerically), independent inputs.

import { recordFault, refuse, typeCode } from '../arguments.js';
import { checkRange, InputError } from '../errors.js';

/** A number of an answer with what is uncertain of it. */
export interface Carried {
  readonly value: number;
  /** Standard uncertainty u, in the unit of the value. */
  readonly uncertainty: number;
  /** What each input contributes: the change of the value when the input is one standard uncertainty higher. */
  readonly from: Readonly<Record<string, number>>;
}

/**
 * The uncertainty of every number in an answer, from the standard uncertainties of the inputs.
 *
 * Equation: c_i = (f(x_i + u_i) − f(x_i − u_i))/2, u² = Σ c_i²; one-sided where one of the two cannot be asked or answered.
 * @param compute What is asked: any function from plain data to plain data.
 * @param input What it is asked with.
 * @param uncertainties Standard uncertainty of inputs by path, for instance `{ 'spirit.strength': 0.002 }`, each in the unit of its input, 0 or more. Paths as in JavaScript: `charged[0].volume_m3`.
 * @returns By path of the answer, each of its numbers with its uncertainty and where it comes from.
 * @throws InputError when a path leads to no number, an uncertainty is below 0, or an input can be moved neither up nor down.
 * @example carryUncertainty(dilute, { spirit: { volume_m3: 0.1, strength: 0.7 }, strength: 0.4 }, { 'spirit.strength': 0.002 }).water_kg.uncertainty // → 0.5237
 * Source: JCGM 100:2008, Guide to the expression of uncertainty in measurement, 5.1.3 and 5.1.2.
 */
export function carryUncertainty<Input>(
  compute: (input: Input) => unknown,
  input: Input,
  uncertainties: Readonly<Record<string, number>>,
): Readonly<Record<string, Carried>> {
  if (typeof compute !== 'function') {
    const expected = 'a function of the input';
    throw new InputError({ code: typeCode(compute), argument: 'compute', value: compute, expected });
  }
  refuse([...recordFault('input', input), ...recordFault('uncertainties', uncertainties)]);
  const at = numbersOf(compute(input));
  const from = new Map<string, Record<string, number>>([...at.keys()].map((path) => [path, {}]));
  for (const [path, uncertainty] of Object.entries(uncertainties)) {
    checkRange(`uncertainties['${path}']`, uncertainty, 0, Number.MAX_VALUE, 'a standard uncertainty of 0 or more');
    if (uncertainty === 0) continue;
    const up = moved(compute, input, path, uncertainty);
    const down = moved(compute, input, path, -uncertainty);
    if (up instanceof InputError && down instanceof InputError) throw up;
    for (const [result, value] of at) {
      const above = up instanceof InputError ? undefined : up.get(result);
      const below = down instanceof InputError ? undefined : down.get(result);
      if (above === undefined && below === undefined) continue;
      const change = above === undefined ? value - below! : below === undefined ? above - value : (above - below) / 2;
      from.get(result)![path] = change;
    }
  }
  return Object.fromEntries(
    [...at].map(([path, value]) => {
      const parts = from.get(path)!;
      return [path, { value, uncertainty: Math.hypot(...Object.values(parts)), from: parts }];
    }),
  );
}

/** The numbers of an answer with one input moved; the InputError where it cannot be asked so. */
function moved<Input>(
  compute: (input: Input) => unknown,
  input: Input,
  path: string,
  by: number,
): Map<string, number> | InputError {
  const changed = withNumberAt(input, path, by);
  try {
    return numbersOf(compute(changed));
  } catch (error) {
    if (error instanceof InputError) return error;
    throw error;
  }
}

/** Every finite number in plain data, by path. */
function numbersOf(data: unknown, path = '', into = new Map<string, number>()): Map<string, number> {
  if (typeof data === 'number') {
    if (Number.isFinite(data)) into.set(path, data);
  } else if (Array.isArray(data)) {
    data.forEach((part, i) => numbersOf(part, `${path}[${String(i)}]`, into));
  } else if (typeof data === 'object' && data !== null) {
    for (const [key, part] of Object.entries(data)) numbersOf(part, path === '' ? key : `${path}.${key}`, into);
  }
  return into;
}

/** A copy of plain data in which the number at a path is higher by so much. */
function withNumberAt<Data>(data: Data, path: string, by: number): Data {
  const keys = path.split(/[.[\]]+/).filter((key) => key !== '');
  const change = (part: unknown, depth: number): unknown => {
    if (depth === keys.length && typeof part === 'number') return part + by;
    const key = keys[depth];
    if (key === undefined || typeof part !== 'object' || part === null || !Object.hasOwn(part, key)) {
      throw new InputError({ argument: 'uncertainties', value: path, expected: 'paths to numbers of the input' });
    }
    const inner = change((part as Record<string, unknown>)[key], depth + 1);
    return Array.isArray(part)
      ? part.map((item: unknown, i) => (String(i) === key ? inner : item))
      : { ...part, [key]: inner };
  };
  return change(data, 0) as Data;
}
