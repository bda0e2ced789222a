// One reader and one writer of what the reader has set, by path: 'still.column.count', 'charge.strength', 'sheet[2].reflux'.
// A path is spelled as the library's problem spells it in a fault.

import { completeStill, type Still, type StillDescription } from '#lib/index.js';
import { inputAt } from './inputs.js';
import { without } from './without.js';
import type { Scenario } from './scenario.js';

type Rec = Readonly<Record<string, unknown>>;
type Steps = readonly (string | number)[];

const known = new Map<string, Steps>();

/** 'sheet[2].reflux' as sheet, 2, reflux. */
function stepsOf(path: string): Steps {
  const before = known.get(path);
  if (before !== undefined) return before;
  const steps = path
    .split(/[.[\]]+/u)
    .filter((step) => step !== '')
    .map((step) => (/^\d+$/u.test(step) ? Number(step) : step));
  known.set(path, steps);
  return steps;
}

/** What stands at a path; undefined where nothing does. */
export function saidAt(from: unknown, path: string): unknown {
  return stepsOf(path).reduce<unknown>((at, step) => (isRecord(at) ? at[step] : undefined), from);
}

const runStills = new WeakMap<StillDescription, StillDescription>();
const completeStills = new WeakMap<StillDescription, Still>();

/** The still as the library takes it: plates counted down to none leave a bare pot, and come back as they were. */
export function stillAsRun(still: StillDescription): StillDescription {
  if (still.column?.kind !== 'plates' || still.column.count !== 0) return still;
  const bare = runStills.get(still) ?? { ...still, column: { kind: 'none' } };
  runStills.set(still, bare);
  return bare;
}

/** The still with everything that nobody set. */
export function stillOf({ still }: { readonly still: StillDescription }): Still {
  const complete = completeStills.get(still) ?? completeStill(stillAsRun(still));
  completeStills.set(still, complete);
  return complete;
}

/** The number at a path, as it is set or as the library completes it; undefined where the still has no such part. */
export function numberAt(scenario: Scenario, path: string): number | undefined {
  const said = saidAt(scenario, path);
  if (typeof said === 'number') return said;
  if (!path.startsWith('still.')) return undefined;
  const value = saidAt({ still: stillOf(scenario) }, path);
  return typeof value === 'number' ? value : undefined;
}

/** The settings with another value at a path; the same record where it stands there already. */
export function withValue(scenario: Scenario, path: string, value: unknown): Scenario {
  if (Object.is(saidAt(scenario, path), value)) return scenario;
  const kinds = inputAt(path)?.of;
  const part = (): Rec => ({ still: path.startsWith('still.') ? stillOf(scenario) : {} });
  return written(scenario, part, stepsOf(path), value, kinds) as Scenario;
}

/** The settings without what is said at a path; the same record where nothing is. What is held goes as a whole. */
export function withoutValue(scenario: Scenario, at: string): Scenario {
  const path = at.replace(/\.(holdUp|coolant)\.\w+$/u, '.$1');
  if (saidAt(scenario, path) === undefined) return scenario;
  return written(scenario, () => ({}), stepsOf(path), undefined, undefined) as Scenario;
}

/**
 * `to` with `value` at the end of the steps; undefined takes it away. A part that is not there yet is made of the kind that
 * the input names, or that the completed still has.
 */
function written(
  to: unknown,
  like: () => unknown,
  [step, ...rest]: Steps,
  value: unknown,
  kinds?: readonly string[],
): unknown {
  if (step === undefined) return value;
  const inside = (): unknown => {
    const whole = like();
    return isRecord(whole) ? whole[step] : undefined;
  };
  const below = rest.length === 0 ? value : written(isRecord(to) ? to[step] : undefined, inside, rest, value, kinds);
  if (typeof step === 'number') {
    const list = Array.isArray(to) ? [...(to as unknown[])] : [];
    while (list.length < step) list.push({});
    list[step] = below;
    return list;
  }
  if (below === undefined) {
    return isRecord(to) ? without(to, step) : {};
  }
  return { ...ofKind(to, like, rest.length === 0 ? kinds : undefined), [step]: below };
}

/** The record to write into: as it is, or begun with its kind. */
function ofKind(to: unknown, like: () => unknown, kinds: readonly string[] | undefined): Rec {
  const record = isRecord(to) ? to : {};
  if (kinds?.includes(record['kind'] as string) === true) return record;
  const whole = like();
  if (kinds !== undefined) {
    const own = isRecord(whole) ? kinds.find((kind) => kind === whole['kind']) : undefined;
    return { kind: own ?? kinds[0]! };
  }
  if (isRecord(to)) return record;
  return isRecord(whole) && typeof whole['kind'] === 'string' ? { kind: whole['kind'] } : {};
}

function isRecord(value: unknown): value is Rec {
  return typeof value === 'object' && value !== null;
}
