// Whether a value from outside is a run sheet: everything the pages and the library take from it is there and is a
// number they can compute with. What a still can do is the library's to say.

import type { Reflux, StopRule, RunStep } from '#lib/index.js';
import { mostSteps } from './inputs-of-run.js';

export const mostRules = 3;

const stepFields = ['reflux', 'heat', 'until'];

type Fields = Readonly<Record<string, unknown>>;

/** The number each rule goes by; null for none. */
const ruleNumbers: Readonly<Record<StopRule['kind'], string | null>> = {
  firstVapour: null,
  duration: 'seconds',
  collectedVolume: 'volume_m3',
  spoutStrengthBelow: 'strength',
  kettleStrengthBelow: 'strength',
  kettleTemperatureAbove: 'temperature_K',
  headTemperatureAbove: 'temperature_K',
  alcoholLeftBelow: 'share',
  refluxAbove: 'ratio',
};

/** The numbers of each reflux that is a record. */
const refluxNumbers: Readonly<Record<Extract<Reflux, object>['kind'], readonly string[]>> = {
  hold: ['strength', 'leastShare', 'mostShare'],
  duty: ['power_W'],
  water: ['flow_kg_s'],
};
const refluxWords = ['total', 'none', 'asSet'];

/** What is wrong with a run sheet, and what would be right; undefined where nothing is. */
export function faultInRunSheet(value: unknown): string | undefined {
  const both = fields(value);
  if (both === undefined) return 'a run sheet needs `sheet` and `jars`';
  const { sheet, jars } = both;
  if (!isJars(jars)) return '`jars` of a run sheet are of the kind ‘perStep’, or of the kind ‘size’ with a `volume_m3`';
  if (!Array.isArray(sheet) || sheet.length < 1 || sheet.length > mostSteps) {
    return `a run sheet needs \`sheet\`, a list of 1 to ${String(mostSteps)} steps`;
  }
  return firstFault(sheet, (step, at) => within(`step ${String(at + 1)}`, faultInStep(step)));
}

function isJars(value: unknown): boolean {
  const { kind, volume_m3 } = fields(value) ?? {};
  return kind === 'perStep' || (kind === 'size' && isNumber(volume_m3) && volume_m3 > 0);
}

function faultInStep(value: unknown): string | undefined {
  const step = (fields(value) ?? {}) as Partial<Record<keyof RunStep, unknown>>;
  const { reflux, heat, until } = step;
  const unknown = Object.keys(step).find((name) => !stepFields.includes(name));
  if (unknown !== undefined) return `it has \`${unknown}\`, which no step has`;
  if (heat !== undefined && !isPower(heat))
    return '`heat` is of the kind ‘power’ with a `power_W`, a number of watts, or left out';
  if (!Array.isArray(until) || until.length < 1 || until.length > mostRules) {
    return `\`until\` is a list of 1 to ${String(mostRules)} rules`;
  }
  return faultInReflux(reflux) ?? firstFault(until, faultInRule);
}

function faultInReflux(value: unknown): string | undefined {
  if (isNumber(value) || refluxWords.includes(value as string)) return undefined;
  const reflux = fields(value) ?? {};
  const numbers = named(refluxNumbers, reflux.kind);
  if (numbers === undefined) {
    return `\`reflux\` is a number, ${list(refluxWords)}, or of the kind ${list(Object.keys(refluxNumbers))}`;
  }
  const missing = numbers.find((name) => !isNumber(reflux[name]));
  return missing === undefined ? undefined : `its reflux needs \`${missing}\`, a number`;
}

function faultInRule(value: unknown): string | undefined {
  const rule = fields(value) ?? {};
  const number = named(ruleNumbers, rule.kind);
  if (number === undefined) return `a rule is of the kind ${list(Object.keys(ruleNumbers))}`;
  return number === null || isNumber(rule[number])
    ? undefined
    : `a rule ‘${String(rule.kind)}’ needs \`${number}\`, a number`;
}

function fields(value: unknown): Fields | undefined {
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Fields) : undefined;
}

function isPower(value: unknown): boolean {
  const heat = fields(value) ?? {};
  return heat.kind === 'power' && isNumber(heat['power_W']);
}

function isNumber(value: unknown): value is number {
  return typeof value === 'number' && Number.isFinite(value);
}

function named<Entry>(table: Readonly<Record<string, Entry>>, name: unknown): Entry | undefined {
  return typeof name === 'string' && Object.hasOwn(table, name) ? table[name] : undefined;
}

function firstFault(
  all: readonly unknown[],
  look: (one: unknown, at: number) => string | undefined,
): string | undefined {
  for (const [at, one] of all.entries()) {
    const fault = look(one, at);
    if (fault !== undefined) return fault;
  }
  return undefined;
}

function within(what: string, fault: string | undefined): string | undefined {
  return fault === undefined ? undefined : `${what}: ${fault}`;
}

/** 'total, none or asSet' */
function list(names: readonly string[]): string {
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} or ${names.at(-1)!}`;
}
