// Whether what comes from outside is a part of what a page runs on: a still as far as it is known, a charge, a sheet.
// Its shape and its numbers; whether the parts go together is the library's to say when they are run.

import {
  completeStill,
  InputError,
  descriptionFaults,
  stillFaults,
  type InputFault,
  type StillDescription,
} from '#lib/index.js';
import { mostDoublers } from './inputs-of-run.js';
import { stillAsRun } from './paths.js';
import { faultInRunSheet } from './run-sheet-check.js';
import type { Scenario } from './scenario.js';

/** Parts of what a page runs on, as an address may hold them. */
export const partsInAddress = ['still', 'charge', 'doublerCharges', 'sheet', 'jars', 'asked'] as const;
export type PartName = (typeof partsInAddress)[number];

type Fields = Readonly<Record<string, unknown>>;

const checks: Readonly<Record<PartName, (value: unknown) => string | undefined>> = {
  still: faultInStill,
  charge: (value) => faultInFilling('`charge`', value, 'more than 0'),
  doublerCharges: (value) => {
    if (!Array.isArray(value) || value.length > mostDoublers)
      return `\`doublerCharges\` is a list of at most ${String(mostDoublers)}`;
    return firstOf(value as readonly unknown[], (one, i) =>
      onlyFields(one, ['charge'])
        ? faultInFilling(`doublerCharges[${String(i)}].charge`, one.charge, '0 or more')
        : `\`doublerCharges[${String(i)}]\` is a record of a \`charge\``,
    );
  },
  sheet: (sheet) => faultInRunSheet({ sheet, jars: { kind: 'perStep' } }),
  jars: (jars) => faultInRunSheet({ sheet: [{ reflux: 'none', until: [{ kind: 'firstVapour' }] }], jars }),
  asked: (value) => {
    if (!onlyFields(value, ['strength', 'pressure_Pa'])) return '`asked` is a record of `strength` and `pressure_Pa`';
    if (!within(value.strength, 0, 1)) return '`asked.strength` is a number from 0 to 1';
    return within(value.pressure_Pa, 1e3, 1e6) ? undefined : '`asked.pressure_Pa` is a number from 1000 to 1 000 000';
  },
};

/** What is wrong with a part, and what would be right; undefined where nothing is. */
export function faultInPart(part: PartName, value: unknown): string | undefined {
  return checks[part](value);
}

/** What is wrong with a member of one of a notebook's lists. */
export function faultInNamed(list: 'stills' | 'charges' | 'sheets', what: unknown): string | undefined {
  if (list === 'stills') return faultInPart('still', what);
  const parts = list === 'charges' ? (['charge', 'doublerCharges'] as const) : (['sheet', 'jars'] as const);
  if (!onlyFields(what, parts)) return `one of the ${list} has the fields ${parts.join(' and ')} and no others`;
  return firstOf<PartName>(parts, (part) => faultInPart(part, (what as Fields)[part]));
}

/** What is wrong with settings as a whole: with a pencil line, for instance. */
export function faultInScenario(value: unknown): string | undefined {
  if (!onlyFields(value, partsInAddress))
    return `what was set has the fields ${partsInAddress.join(', ')} and no others`;
  return firstOf(partsInAddress, (part) =>
    faultInPart(part, (value as Readonly<Record<keyof Scenario, unknown>>)[part]),
  );
}

function faultInStill(value: unknown): string | undefined {
  const shape = descriptionFaults(counted(value));
  if (shape.length > 0) return said(shape[0]!);
  try {
    const faults = stillFaults(completeStill(stillAsRun(value as StillDescription)));
    return faults.length > 0 ? said(faults[0]!) : undefined;
  } catch (error) {
    if (error instanceof InputError) return said(error.faults[0]!);
    throw error;
  }
}

/** Plates counted down to none are a bare pot's, and checked as if there were one. */
function counted(value: unknown): unknown {
  const { column } = (value ?? {}) as { column?: Fields };
  return column?.['kind'] === 'plates' && column['count'] === 0
    ? { ...(value as Fields), column: { ...column, count: 1 } }
    : value;
}

function said({ argument, value, expected }: Pick<InputFault, 'argument' | 'value' | 'expected'>): string {
  const what =
    value === undefined ? 'missing' : typeof value === 'object' ? 'no such thing' : JSON.stringify(value).slice(0, 40);
  return `\`${argument}\` is ${what} and would have to be ${expected}`;
}

function faultInFilling(where: string, value: unknown, strengths: string): string | undefined {
  if (!onlyFields(value, ['kind', 'volume_m3', 'strength']) || value.kind !== 'volume')
    return `${where} is of the kind ‘volume’, with \`volume_m3\` and \`strength\``;
  if (!within(value.volume_m3, 0, 1e4) || value.volume_m3 === 0) return `\`volume_m3\` of ${where} is a number above 0`;
  const weakest = strengths === '0 or more' ? 0 : Number.MIN_VALUE;
  return within(value.strength, weakest, 1) ? undefined : `\`strength\` of ${where} is a number up to 1, ${strengths}`;
}

function within(value: unknown, low: number, high: number): value is number {
  return typeof value === 'number' && value >= low && value <= high;
}

/** A record with these fields and no others. */
function onlyFields<Name extends string>(value: unknown, names: readonly Name[]): value is Record<Name, unknown> {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return false;
  const has = Object.keys(value);
  return has.length === names.length && names.every((name) => has.includes(name));
}

function firstOf<One>(all: readonly One[], look: (one: One, at: number) => string | undefined): string | undefined {
  for (const [at, one] of all.entries()) {
    const found = look(one, at);
    if (found !== undefined) return found;
  }
  return undefined;
}
