// A fault while reading or computing a formula: thrown inside the engine, a plain record outside of it.

import type { MathNode } from 'mathjs';
import type { FaultKind, FormulaFault, Place } from './sheet.js';

/** What is wrong at one node; the place in the text is found when the fault leaves the engine. */
export class FormulaError extends Error {
  readonly kind: FaultKind;
  readonly wrong: string;
  readonly right: string;
  readonly node: MathNode | null;
  constructor(kind: FaultKind, node: MathNode | null, wrong: string, right = '') {
    super(wrong);
    this.name = 'FormulaError';
    this.kind = kind;
    this.wrong = wrong;
    this.right = right;
    this.node = node;
  }
}

export function fault(
  kind: FaultKind,
  wrong: string,
  right = '',
  at: Place | null = null,
  instead: string | null = null,
): FormulaFault {
  return { kind, wrong, right, at, instead };
}

/** A number in a message: at most five digits, a true minus sign. */
export function inWords(value: number): string {
  return String(Number(value.toPrecision(5))).replace('-', '−');
}

/** 'a, b and c'. */
export function listed(words: readonly string[], and = 'and'): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} ${and} ${words.at(-1)!}`;
}
