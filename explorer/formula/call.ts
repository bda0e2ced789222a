// A function of the library, called from a formula: what it is given is checked against kind and range first, so that
// what is wrong is said in the names of the list.

import type { MathNode } from 'mathjs';
import { InputError } from '#lib/index.js';
import { FormulaError, inWords } from './faults.js';
import { type Argument, type OwnFunction } from './functions/own-function.js';
import { signatureOf } from './functions/registry.js';
import { isBare, kinds } from './kinds.js';
import type { ShownSystem } from './sheet.js';
import { shown } from './shown.js';
import { ofKind, siOf, type Value } from './values.js';

export function callOwn(own: OwnFunction, values: readonly Value[], node: MathNode, system: ShownSystem): Value {
  if (values.length !== own.takes.length) {
    const count = values.length === 1 ? 'one thing' : `${values.length} things`;
    throw new FormulaError('units', node, `${own.name}(…) is given ${count}`, `write ${signatureOf(own)}`);
  }
  const given = own.takes.map((argument, k) => checked(own, argument, values[k]!, node, system));
  const answer = answered(own, given, node);
  if (typeof answer !== 'number') throw new FormulaError('noValue', node, `${own.name}(…): ${answer.none}`);
  return ofKind(own.gives, answer, system);
}

function checked(own: OwnFunction, argument: Argument, value: Value, node: MathNode, system: ShownSystem): number {
  const what = `${argument.name} in ${own.name}(…)`;
  const si = siOf(value, argument.kind, capital(what), node);
  const slack = 1e-12 * Math.max(Math.abs(argument.low), Math.abs(argument.high));
  if (si >= argument.low - slack && si <= argument.high + slack) {
    return Math.min(argument.high, Math.max(argument.low, si));
  }
  const shares = argument.kind === 'strength' || argument.kind === 'massShare';
  const right = shares && si > 1 && si <= 100 ? `write ${inWords(si)}%` : `it may be ${argument.range}`;
  throw new FormulaError('outside', node, `${capital(what)} is ${printed(argument, si, system)}`, right);
}

function answered(own: OwnFunction, given: readonly number[], node: MathNode): ReturnType<OwnFunction['call']> {
  try {
    return own.call(...given);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const [first] = error.faults;
    throw new FormulaError('outside', node, `${own.name}(…) cannot take that`, `${first!.expected} was expected`);
  }
}

function printed(argument: Argument, si: number, system: ShownSystem): string {
  if (isBare(argument.kind)) return inWords(si);
  const value = shown(ofKind(argument.kind, si, system), system);
  return value.is === 'number' ? `${inWords(value.shown)} ${value.unit}` : kinds[argument.kind].words;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
