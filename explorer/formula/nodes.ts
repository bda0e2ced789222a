// The kinds of node a formula may be made of, as narrow types of their own, and what each holds.

import type { MathNode } from 'mathjs';

/** A node that passed check-nodes.ts. */
export type FormulaNode = MathNode &
  (
    | { readonly type: 'ConstantNode'; readonly value: number | boolean }
    | { readonly type: 'SymbolNode'; readonly name: string }
    | { readonly type: 'ParenthesisNode'; readonly content: FormulaNode }
    | {
        readonly type: 'OperatorNode';
        readonly op: string;
        readonly fn: string;
        readonly args: readonly FormulaNode[];
        readonly implicit: boolean;
      }
    | { readonly type: 'FunctionNode'; readonly fn: { readonly name: string }; readonly args: readonly FormulaNode[] }
    | {
        readonly type: 'ConditionalNode';
        readonly condition: FormulaNode;
        readonly trueExpr: FormulaNode;
        readonly falseExpr: FormulaNode;
      }
    | { readonly type: 'RelationalNode'; readonly conditionals: readonly string[]; readonly params: FormulaNode[] }
  );

/** A line that gives a name to something. */
export type DefiningNode = MathNode &
  (
    | {
        readonly type: 'AssignmentNode';
        readonly object: MathNode & { readonly name: string };
        readonly index: MathNode | null;
        readonly value: MathNode;
      }
    | {
        readonly type: 'FunctionAssignmentNode';
        readonly name: string;
        readonly params: readonly string[];
        readonly expr: MathNode;
      }
  );

export function isDefining(node: MathNode): node is DefiningNode {
  return node.type === 'AssignmentNode' || node.type === 'FunctionAssignmentNode';
}

/** Names a node defines, in the order they are typed. */
export function definedBy(node: MathNode): readonly string[] {
  if (!isDefining(node)) return [];
  if (node.type === 'FunctionAssignmentNode') return [node.name, ...node.params];
  return node.object.type === 'SymbolNode' ? [node.object.name] : [];
}

/** Parts of a node in the order they are typed. */
export function childrenOf(node: MathNode): readonly MathNode[] {
  if (isDefining(node)) return [node.type === 'AssignmentNode' ? node.value : node.expr];
  const one = node as FormulaNode;
  switch (one.type) {
    case 'ParenthesisNode':
      return [one.content];
    case 'OperatorNode':
    case 'FunctionNode':
      return one.args;
    case 'ConditionalNode':
      return [one.condition, one.trueExpr, one.falseExpr];
    case 'RelationalNode':
      return one.params;
    default:
      return [];
  }
}
