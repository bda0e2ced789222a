// One typed line -> what it defines, what it is made of and what it uses; or a fault with its place.

import type { MathNode } from 'mathjs';
import { checkNodes } from './check-nodes.js';
import { fault, FormulaError } from './faults.js';
import { constantNamed, isFunctionName } from './functions/registry.js';
import { grammarFault } from './grammar-fault.js';
import { limits } from './limits.js';
import { parseText } from './mathjs-instance.js';
import { childrenOf, isDefining, type FormulaNode } from './nodes.js';
import { placesIn, type Places } from './places.js';
import type { FormulaFault, FormulaLine, Place } from './sheet.js';
import { nameAtStart } from './stopped.js';
import { unitNamed } from './units.js';

export interface ReadLine {
  readonly id: string;
  readonly text: string;
  readonly name: string | null;
  /** Arguments, where the line defines a function. */
  readonly params: readonly string[] | null;
  readonly body: FormulaNode;
  readonly places: Places;
  /** Where its name stands; null for a bare expression. */
  readonly placeOfDefinition: Place | null;
  /** Names it uses that are neither units, functions, constants of ours nor its own arguments. */
  readonly uses: readonly string[];
}

export type Read =
  | { readonly line: ReadLine; readonly fault: null }
  | { readonly line: null; readonly fault: FormulaFault; readonly name: string | null };

export function readLine({ id, text }: FormulaLine): Read {
  const name = nameAtStart(text);
  const refuse = (refused: FormulaFault): Read => ({ line: null, fault: refused, name });
  if (text.length > limits.text) {
    return refuse(fault('tooMuch', `A formula has at most ${limits.text} characters`, 'split it over several lines'));
  }
  const typed = asTyped(text);
  if (typed.replace(/#.*/u, '').trim() === '') return refuse(fault('empty', 'Nothing is written here'));
  if (deepest(typed) > limits.brackets) {
    return refuse(fault('tooMuch', 'There are too many brackets inside brackets', 'split it over several lines'));
  }
  let root: MathNode;
  try {
    root = parseText(typed);
  } catch (error) {
    return refuse(grammarFault(typed, error));
  }
  const places = placesIn(typed, root);
  try {
    return { line: lineOf(id, text, root, places), fault: null };
  } catch (error) {
    if (error instanceof FormulaError) return refuse(placed(error, places));
    throw error;
  }
}

/** A fault with the place of its node. */
export function placed({ kind, wrong, right, node }: FormulaError, places: Places): FormulaFault {
  return fault(kind, wrong, right, node === null ? null : (places.get(node) ?? null));
}

function lineOf(id: string, text: string, root: MathNode, places: Places): ReadLine {
  const { name, params, body } = partsOf(root);
  checkNodes(body);
  if (name !== null) checkName(name, root);
  for (const param of params ?? []) checkName(param, root, 'argument');
  const uses = usedIn(body).filter((used) => !(params ?? []).includes(used));
  const placeOfDefinition = name === null ? null : (places.get(root) ?? null);
  return { id, text, name, params, body, places, placeOfDefinition, uses };
}

function partsOf(root: MathNode): { name: string | null; params: readonly string[] | null; body: MathNode } {
  if (!isDefining(root)) return { name: null, params: null, body: root };
  if (root.type === 'FunctionAssignmentNode') {
    if (root.params.length > limits.arguments || root.params.length === 0) {
      throw new FormulaError('tooMuch', root, `A function takes 1 to ${limits.arguments} arguments`);
    }
    return { name: root.name, params: root.params, body: root.expr };
  }
  if (root.object.type !== 'SymbolNode' || root.index !== null) {
    const right = 'write a name, an equals sign and a formula';
    throw new FormulaError('notOffered', root, 'Only a name can stand before the equals sign', right);
  }
  return { name: root.object.name, params: null, body: root.value };
}

/** A new name must not hide one that has a meaning. */
function checkName(name: string, node: MathNode, of: 'line' | 'argument' = 'line'): void {
  const unit = unitNamed(name);
  const right = 'choose another name';
  // A function may call its argument s or h, as in mathjs: it hides the unit there and nowhere else.
  if (unit !== undefined && (of === 'line' || unit.mathjs === null))
    throw new FormulaError('taken', node, `‘${name}’ is a unit (${unit.says})`, right);
  if (isFunctionName(name)) throw new FormulaError('taken', node, `‘${name}’ is a function`, right);
  if (constantNamed(name) !== undefined) throw new FormulaError('taken', node, `‘${name}’ is a constant`, right);
  if (name.length > limits.name) {
    throw new FormulaError('tooMuch', node, `A name has at most ${limits.name} characters`, right);
  }
}

function usedIn(body: FormulaNode): string[] {
  const used = new Set<string>();
  const visit = (node: MathNode): void => {
    const one = node as FormulaNode;
    if (one.type === 'FunctionNode' && !isFunctionName(one.fn.name)) used.add(one.fn.name);
    if (one.type === 'SymbolNode' && !isBuilt(one.name)) used.add(one.name);
    childrenOf(node).forEach(visit);
  };
  visit(body);
  return [...used];
}

function isBuilt(name: string): boolean {
  return unitNamed(name) !== undefined || constantNamed(name) !== undefined || isFunctionName(name);
}

/** The signs people and phones type for those of the grammar, one character for one. */
function asTyped(text: string): string {
  return text
    .replace(/[×·⋅∙]/gu, '*')
    .replace(/[÷∕]/gu, '/')
    .replace(/[−–]/gu, '-')
    .replace(/[\u00a0\u2009\u202f\t]/gu, ' ');
}

function deepest(text: string): number {
  let depth = 0;
  let most = 0;
  for (const character of text) {
    if ('([{'.includes(character)) most = Math.max(most, ++depth);
    if (')]}'.includes(character)) depth -= 1;
  }
  return most;
}
