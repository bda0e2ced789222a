// mathjs for formulas: its parser and its units, and nothing else. Its own evaluation is never called; what a
// parsed formula may do is decided node by node in evaluate.ts.

import { create, createUnitDependencies, parseDependencies, unitDependencies, type MathNode, type Unit } from 'mathjs';
import { toSI } from '#lib/index.js';
import { madeUnits } from './units.js';

const math = create({ ...parseDependencies, ...unitDependencies, ...createUnitDependencies }, { predictable: true });

for (const [name, ours] of Object.entries(madeUnits)) {
  const [si, base] = ours === 'mmHg' ? [toSI(1, ours), 'Pa'] : [toSI(1, ours), 'm^3'];
  math.createUnit(name, math.unit(si, base));
}

// '20 °C' is how temperatures are written; mathjs lets a name begin with letters only.
const letters = math.parse.isAlpha.bind(math.parse);
math.parse.isAlpha = (character, before, after) => character === '°' || letters(character, before, after);

/** A formula as a tree; throws mathjs' SyntaxError, which counts characters from 1. */
export function parseText(text: string): MathNode {
  return math.parse(text);
}

/** So many of a unit, as mathjs spells it. */
export function unitOf(value: number, spelled: string): Unit {
  return math.unit(value, spelled);
}
