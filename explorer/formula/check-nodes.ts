// What a formula may be made of. Everything mathjs can read beyond this list is refused before anything is
// computed: texts, lists, ranges, objects, what is behind a dot or in square brackets, and several lines in one.

import type { MathNode } from 'mathjs';
import { FormulaError } from './faults.js';
import { limits } from './limits.js';
import { childrenOf, isDefining, type FormulaNode } from './nodes.js';

/** Operators by mathjs' name for their function. */
const operators = new Set([
  'add',
  'subtract',
  'multiply',
  'divide',
  'pow',
  'mod',
  'unaryMinus',
  'unaryPlus',
  'to',
  'equal',
  'unequal',
  'smaller',
  'smallerEq',
  'larger',
  'largerEq',
  'and',
  'or',
  'xor',
  'not',
]);

const refusals: Readonly<Record<string, readonly [wrong: string, right: string]>> = {
  ArrayNode: ['Lists in square brackets have no place here', 'sum, mean, min and max take numbers one after the other'],
  AccessorNode: ['Nothing here has parts behind a dot or in square brackets', 'use names and functions of the list'],
  IndexNode: ['Square brackets have no place here', 'use round brackets'],
  RangeNode: ['A range has no place in a formula', 'to draw a formula over a range, plot it'],
  ObjectNode: ['Curly brackets have no place here', 'use round brackets'],
  BlockNode: ['That is more than one formula', 'write each on a line of its own'],
};

/** Throws a FormulaError unless the expression, below a possible definition, is made of what is allowed. */
export function checkNodes(root: MathNode): asserts root is FormulaNode {
  let parts = 0;
  const visit = (node: MathNode, depth: number): void => {
    parts += 1;
    if (parts > limits.parts) {
      throw new FormulaError('tooMuch', null, 'The formula has too many parts', 'split it over several lines');
    }
    checkNode(node, depth);
    for (const child of childrenOf(node)) visit(child, depth + 1);
  };
  visit(root, 0);
}

function checkNode(node: MathNode, depth: number): void {
  const one = node as FormulaNode;
  switch (one.type) {
    case 'ConstantNode':
      checkConstant(one);
      return;
    case 'SymbolNode':
    case 'ParenthesisNode':
    case 'ConditionalNode':
    case 'RelationalNode':
      return;
    case 'OperatorNode':
      if (!operators.has(one.fn)) {
        throw new FormulaError('notOffered', node, `‘${one.op}’ is not offered in formulas`, rightOf(one.fn));
      }
      return;
    case 'FunctionNode':
      if ((one.fn as unknown as MathNode).type !== 'SymbolNode') {
        throw new FormulaError('notOffered', node, 'Only functions of the list and your own can be used');
      }
      if (one.args.length > limits.arguments) {
        throw new FormulaError('tooMuch', node, `A function takes at most ${limits.arguments} arguments`);
      }
      return;
    default:
      refuse(node, depth);
  }
}

function checkConstant(node: FormulaNode & { type: 'ConstantNode' }): void {
  const value: unknown = node.value;
  if (typeof value === 'boolean') return;
  if (typeof value !== 'number') {
    throw new FormulaError('notOffered', node, 'Text in quotes has no place in a formula', 'write numbers and names');
  }
  if (!Number.isFinite(value)) throw new FormulaError('tooMuch', node, 'That number is too large to compute with');
}

function refuse(node: MathNode, depth: number): never {
  if (isDefining(node)) {
    const where = depth > 0 ? 'inside a formula' : 'there';
    throw new FormulaError('notOffered', node, `A name cannot be given ${where}`, 'write name = formula, one a line');
  }
  const [wrong, right] = refusals[node.type] ?? ['That has no place in a formula', ''];
  throw new FormulaError('notOffered', node, wrong, right);
}

function rightOf(fn: string): string {
  if (fn === 'factorial' || fn.endsWith('ranspose')) return '';
  if (fn.startsWith('dot')) return 'write it without the dot';
  return fn.startsWith('bit') ? 'and, or, not are written as words' : '';
}
