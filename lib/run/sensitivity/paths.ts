// The numbers of a problem by their paths, as the problem itself is written: 'charge.strength', 'still.column.efficiency', 'sheet[1].reflux',
// 'sheet[0].until[0].seconds', 'heat.power_W', 'still.air.pressure_Pa', 'activity.parameters[2]'. What a problem leaves out has the value the library
// gives it; what the library derives from a number that is set moves with it, as it would in another problem.

import type { EthanolWater } from '../../equilibrium/ethanol-water.js';
import { InputError } from '../../errors.js';
import type { ActivityModel } from '../../mixture/activity/activity-model.js';
import { type CompleteProblem, completeProblem } from '../complete.js';
import type { RunProblem } from '../problem.js';

/** A number of a problem: its value, what is a large change of it, and the problem with another value in its place. */
export interface NumberOfProblem {
  readonly path: string;
  readonly value: number;
  readonly size: number;
  at(value: number): CompleteProblem;
}

type Key = string | number;

/** A number counts as no smaller than a hundredth of this, by the end of its name. */
const SIZES: readonly (readonly [RegExp, number])[] = [
  [/W_K$/, 0.1],
  [/J_K$/, 100],
  [/_W$/, 1000],
  [/_Pa(_m)?$/, 100],
  [/_K$/, 1],
  [/_m3$/, 1e-4],
  [/_m$/, 0.01],
];
const USUAL_SIZE = 0.1;
const LEAST_SIZE = 0.01;
/** What steers the solver and the report is no number of the still or the run. */
const NOT_OF_THE_RUN = ['tolerance', 'outputs', 'jars', 'model', 'start'];
/** Counts have no derivative. */
const COUNTS = ['count'];

/** The number at a path; an InputError where there is none, or none that a derivative can be taken by. */
export function numberAt(path: string, problem: RunProblem, system: EthanolWater): NumberOfProblem {
  const keys = keysOf(path);
  if (keys[0] === 'activity') return parameterAt(path, keys, problem, system);
  const complete = completeProblem(problem);
  const value = valueAt(complete, keys);
  const expected = `the path of a number of the problem, such as 'charge.strength' or 'sheet[0].reflux'`;
  if (NOT_OF_THE_RUN.includes(String(keys[0])) || COUNTS.includes(String(keys.at(-1)))) {
    throw new InputError({ argument: 'to', value: path, expected: `${expected} that may be any number` });
  }
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    throw new InputError({ argument: 'to', value: path, expected });
  }
  const usual = SIZES.find(([ending]) => ending.test(path))?.[1] ?? USUAL_SIZE;
  const size = Math.max(Math.abs(value), LEAST_SIZE * usual);
  return {
    path,
    value,
    size,
    at: (other) => completeProblem(replaced(problem, complete, keys, other) as RunProblem),
  };
}

/** A parameter of the activity model: 'activity.parameters[k]'. */
function parameterAt(path: string, keys: readonly Key[], problem: RunProblem, system: EthanolWater): NumberOfProblem {
  const model: ActivityModel = system.model(problem.activity);
  const { parameters } = model;
  const k = keys[2];
  if (parameters === undefined || model.withParameters === undefined) {
    const expected = 'no parameter of an activity model that has no parameters and withParameters';
    throw new InputError({ argument: 'to', value: path, expected });
  }
  if (keys.length !== 3 || keys[1] !== 'parameters' || typeof k !== 'number' || parameters[k] === undefined) {
    const expected = `'activity.parameters[k]' with k from 0 to ${String(parameters.length - 1)}`;
    throw new InputError({ argument: 'to', value: path, expected });
  }
  const value = parameters[k];
  const size = Math.max(Math.abs(value), 0.1);
  return {
    path,
    value,
    size,
    at: (other) =>
      completeProblem({
        ...problem,
        activity: model.withParameters!(parameters.map((own, i) => (i === k ? other : own))),
      }),
  };
}

function keysOf(path: string): readonly Key[] {
  const keys: Key[] = [];
  for (const part of typeof path === 'string' ? path.split('.') : []) {
    const [name, ...indices] = part.split('[');
    keys.push(name!);
    for (const index of indices) keys.push(index.endsWith(']') ? Number(index.slice(0, -1)) : NaN);
  }
  return keys;
}

function valueAt(record: unknown, keys: readonly Key[]): unknown {
  let value = record;
  for (const key of keys) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Readonly<Record<Key, unknown>>)[key];
  }
  return value;
}

/** The record with another number at a place; parts it leaves out are made of what kind the complete one has there. */
function replaced(record: unknown, complete: unknown, keys: readonly Key[], value: number): unknown {
  const [key, ...rest] = keys;
  if (key === undefined) return value;
  const whole = complete as Readonly<Record<Key, unknown>>;
  const own = (record ?? kindOf(whole)) as Readonly<Record<Key, unknown>>;
  const inner = replaced(own[key], whole[key], rest, value);
  if (Array.isArray(own)) return own.map((other: unknown, i) => (i === key ? inner : other));
  return { ...own, [key]: inner };
}

function kindOf(whole: Readonly<Record<Key, unknown>>): object {
  return typeof whole['kind'] === 'string' ? { kind: whole['kind'] } : {};
}
