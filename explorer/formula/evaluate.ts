// Computes a checked formula, node by node. Names mean what they are given here and nothing else; every node is
// counted, so that a formula ends after so many steps and so deep, whatever it says.

import type { MathNode } from 'mathjs';
import { add, compare, divide, equal, mod, multiply, negate, pow, subtract } from './arithmetic.js';
import { callOwn } from './call.js';
import { convert, onScale, scaleOf } from './convert.js';
import { FormulaError } from './faults.js';
import { constantNamed, mathsFunctionNamed, ownFunctionNamed } from './functions/registry.js';
import { limits } from './limits.js';
import { unitOf } from './mathjs-instance.js';
import type { FormulaNode } from './nodes.js';
import type { ReadLine } from './read-line.js';
import type { ShownSystem } from './sheet.js';
import { unitNamed } from './units.js';
import { measure, number, truth, type Value } from './values.js';

/** What names mean: values of the page and of lines computed before, and functions of the reader's own. */
export interface Names {
  readonly values: ReadonlyMap<string, Value>;
  readonly functions: ReadonlyMap<string, ReadLine>;
  /** Arguments of the function that is being computed. */
  readonly given: ReadonlyMap<string, Value>;
  readonly system: ShownSystem;
}

/** Work done so far for one line, and how much it may come to. */
export interface Budget {
  steps: number;
  depth: number;
  readonly allowed: Allowed;
}

/** Steps that may be taken, and how many a call of the library counts for. */
export interface Allowed {
  readonly steps: number;
  readonly ownCall: number;
}

export function evaluate(line: ReadLine, names: Names, allowed: Allowed = limits.line): Value {
  return compute(line.body, names, { steps: 0, depth: 0, allowed });
}

/** The value of a function of the reader's own, for one argument. */
export function evaluateAt(line: ReadLine, argument: Value, names: Names, allowed: Allowed = limits.line): Value {
  return callReaders(line, [argument], line.body, names, { steps: 0, depth: 0, allowed });
}

function compute(node: FormulaNode, names: Names, budget: Budget): Value {
  spend(1, budget);
  if (++budget.depth > limits.depth) {
    throw new FormulaError('tooMuch', null, 'Functions use functions too deeply here', 'use fewer');
  }
  const value = checked(valueOf(node, names, budget), node);
  budget.depth -= 1;
  return value;
}

function spend(steps: number, budget: Budget): void {
  budget.steps += steps;
  const { allowed } = budget;
  if (budget.steps <= allowed.steps) return;
  const wrong = `This takes more than ${allowed.steps / 1000} thousand steps`;
  throw new FormulaError('tooMuch', null, wrong, 'functions that use functions multiply: use fewer');
}

function valueOf(node: FormulaNode, names: Names, budget: Budget): Value {
  switch (node.type) {
    case 'ConstantNode':
      return typeof node.value === 'boolean' ? truth(node.value) : number(node.value);
    case 'SymbolNode':
      return named(node, names);
    case 'ParenthesisNode':
      return compute(node.content, names, budget);
    case 'OperatorNode':
      return operate(node, names, budget);
    case 'FunctionNode':
      return call(node, names, budget);
    case 'ConditionalNode':
      return truthOf(compute(node.condition, names, budget), node.condition)
        ? compute(node.trueExpr, names, budget)
        : compute(node.falseExpr, names, budget);
    case 'RelationalNode': {
      const values = node.params.map((part) => compute(part, names, budget));
      return truth(node.conditionals.every((fn, k) => compared(fn, values[k]!, values[k + 1]!, node)));
    }
  }
}

function named(node: FormulaNode & { type: 'SymbolNode' }, names: Names): Value {
  const { name } = node;
  // An argument may be called s or h: it hides the unit, as in mathjs' own functions.
  const given = names.given.get(name);
  if (given !== undefined) return given;
  const unit = unitNamed(name);
  if (unit !== undefined) {
    if (unit.mathjs !== null) return measure(unitOf(1, unit.mathjs));
    const right = `write it right after a number, as in 20 ${unit.printed}, or after ‘to’`;
    throw new FormulaError('units', node, `${unit.printed} is a scale, not a quantity`, right);
  }
  const constant = constantNamed(name);
  if (constant !== undefined) return number(constant);
  const value = names.values.get(name);
  if (value !== undefined) return value;
  const function_ = names.functions.get(name);
  if (function_ !== undefined || mathsFunctionNamed(name) !== undefined || ownFunctionNamed(name) !== undefined) {
    throw new FormulaError('units', node, `‘${name}’ is a function`, `write ${name}(…) with what it is given`);
  }
  throw unknown(name, node);
}

function operate(node: FormulaNode & { type: 'OperatorNode' }, names: Names, budget: Budget): Value {
  const [left, right] = node.args;
  const first = (): Value => compute(left!, names, budget);
  const second = (): Value => compute(right!, names, budget);
  switch (node.fn) {
    case 'to':
      return convert(first(), right!, node);
    case 'and':
      return truth(truthOf(first(), left!) && truthOf(second(), right!));
    case 'or':
      return truth(truthOf(first(), left!) || truthOf(second(), right!));
    case 'xor':
      return truth(truthOf(first(), left!) !== truthOf(second(), right!));
    case 'not':
      return truth(!truthOf(first(), left!));
    case 'unaryMinus':
      return negate(first(), node);
    case 'unaryPlus':
      return first();
    case 'add':
      return add(first(), second(), node);
    case 'subtract':
      return subtract(first(), second(), node);
    case 'multiply': {
      const scale = node.implicit ? scaleOf(right!) : undefined;
      return scale === undefined ? multiply(first(), second(), node) : onScale(first(), scale, node);
    }
    case 'divide':
      return divide(first(), second(), node);
    case 'pow':
      return pow(first(), second(), node);
    case 'mod':
      return mod(first(), second(), node);
    default:
      return truth(compared(node.fn, first(), second(), node));
  }
}

function call(node: FormulaNode & { type: 'FunctionNode' }, names: Names, budget: Budget): Value {
  const { name } = node.fn;
  const values = node.args.map((part) => compute(part, names, budget));
  const maths = mathsFunctionNamed(name);
  if (maths !== undefined) {
    if (values.length < maths.least || values.length > maths.most) {
      throw new FormulaError(
        'units',
        node,
        `${name}(…) is given ${countOf(values.length)}`,
        `write ${maths.signature}`,
      );
    }
    return maths.call(values, node);
  }
  const own = ownFunctionNamed(name);
  if (own !== undefined) {
    spend(budget.allowed.ownCall, budget);
    return callOwn(own, values, node, names.system);
  }
  const readers = names.functions.get(name);
  if (readers !== undefined) return callReaders(readers, values, node, names, budget);
  const known = valueNamed(name, names) ?? unitNamed(name) ?? constantNamed(name);
  if (known !== undefined) {
    const fn = node.fn as unknown as MathNode;
    throw new FormulaError('units', fn, `‘${name}’ is not a function`, `to multiply, write ${name} * (…)`);
  }
  throw unknown(name, node.fn as unknown as MathNode);
}

function callReaders(line: ReadLine, values: readonly Value[], node: MathNode, names: Names, budget: Budget): Value {
  const params = line.params ?? [];
  if (params.length !== values.length) {
    const right = `write ${line.name ?? ''}(${params.join(', ')})`;
    throw new FormulaError('units', node, `${line.name ?? ''}(…) is given ${countOf(values.length)}`, right);
  }
  const inside: Names = { ...names, given: new Map(params.map((param, k) => [param, values[k]!])) };
  try {
    return compute(line.body, inside, budget);
  } catch (error) {
    if (!(error instanceof FormulaError) || error.node === null || node === line.body) throw error;
    // The place is in another line: it is told here, at the call.
    throw new FormulaError(error.kind, node, `In ${line.name ?? ''}: ${error.wrong}`, error.right);
  }
}

function valueNamed(name: string, names: Names): Value | undefined {
  return names.given.get(name) ?? names.values.get(name);
}

/** The page has checked all names before; this stands guard. */
function unknown(name: string, node: MathNode): FormulaError {
  return new FormulaError('unknown', node, `Nothing here is called ‘${name}’`);
}

function compared(fn: string, a: Value, b: Value, node: MathNode): boolean {
  if (fn === 'equal' || fn === 'unequal') {
    const same = equal(a, b, node);
    return (same.is === 'truth' && same.truth) === (fn === 'equal');
  }
  const order = compare(a, b, node);
  if (fn === 'smaller') return order < 0;
  if (fn === 'smallerEq') return order <= 0;
  return fn === 'larger' ? order > 0 : order >= 0;
}

function truthOf(value: Value, node: MathNode): boolean {
  if (value.is === 'truth') return value.truth;
  const right = 'compare two values, for instance strength > 10%';
  throw new FormulaError('units', node, 'Something true or false was expected here', right);
}

function checked(value: Value, node: MathNode): Value {
  const size = value.is === 'number' ? value.number : value.is === 'measure' ? value.unit.value : 0;
  if (Number.isNaN(size)) {
    const right = 'a root or a logarithm of a negative number has none';
    throw new FormulaError('noValue', node, 'That has no value', right);
  }
  if (!Number.isFinite(size)) throw new FormulaError('tooMuch', node, 'That is too large to compute with');
  if (value.is === 'temperature' && !(value.kelvin >= 0)) {
    throw new FormulaError('outside', node, 'That is below absolute zero');
  }
  return value;
}

/** 'one thing', '3 things'. */
function countOf(count: number): string {
  return count === 1 ? 'one thing' : `${count === 0 ? 'no' : String(count)} things`;
}
