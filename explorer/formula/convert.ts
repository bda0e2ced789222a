// 'x to unit', and a number before a temperature scale.

import type { MathNode, Unit } from 'mathjs';
import { toSI } from '#lib/index.js';
import { FormulaError } from './faults.js';
import { unitOf } from './mathjs-instance.js';
import type { FormulaNode } from './nodes.js';
import { printedUnits } from './unit-words.js';
import { unitNamed } from './units.js';
import { inKelvin, type Scale, type Value } from './values.js';

/** A value in the unit that the node names. */
export function convert(value: Value, wanted: FormulaNode, node: MathNode): Value {
  const scale = scaleOf(wanted);
  if (scale !== undefined) return inScale(value, scale, node);
  const unit = unitFrom(wanted);
  const plain = inKelvin(value);
  if (plain.is !== 'measure') {
    const right = plain.is === 'number' ? `give it one: multiply it by 1 ${printedUnits(unit)}` : '';
    throw new FormulaError('units', node, 'What has no unit cannot be shown in one', right);
  }
  if (!plain.unit.equalBase(unit)) {
    const wrong = `${printedUnits(plain.unit)} cannot be turned into ${printedUnits(unit)}`;
    throw new FormulaError('units', node, wrong, 'both measure different things');
  }
  const shown = unit.clone();
  shown.value = plain.unit.value;
  return { is: 'measure', unit: shown, asked: true };
}

/** The scale a node names. */
export function scaleOf(node: FormulaNode): Scale | undefined {
  if (node.type !== 'SymbolNode') return undefined;
  const unit = unitNamed(node.name);
  return unit?.mathjs === null ? (unit.printed as Scale) : undefined;
}

/** '20 °C': so many degrees of a scale. */
export function onScale(value: Value, scale: Scale, node: MathNode): Value {
  if (value.is === 'number') return { is: 'temperature', kelvin: toSI(value.number, scale), scale };
  throw new FormulaError('units', node, `A bare number is to stand before ${scale}`);
}

function inScale(value: Value, scale: Scale, node: MathNode): Value {
  if (value.is === 'temperature') return { ...value, scale };
  if (value.is === 'measure' && value.unit.equalBase(unitOf(1, 'K'))) {
    return { is: 'temperature', kelvin: value.unit.value, scale };
  }
  throw new FormulaError('units', node, `Only a temperature can be turned into ${scale}`);
}

/** Units, multiplied, divided and raised. */
function unitFrom(node: FormulaNode): Unit {
  switch (node.type) {
    case 'ParenthesisNode':
      return unitFrom(node.content);
    case 'SymbolNode': {
      const spelled = unitNamed(node.name)?.mathjs;
      if (spelled !== undefined && spelled !== null) return unitOf(1, spelled);
      break;
    }
    case 'OperatorNode': {
      const [left, right] = node.args;
      if (node.fn === 'multiply') return unitFrom(left!).multiply(unitFrom(right!));
      if (node.fn === 'divide') {
        const quotient = unitFrom(left!).divide(unitFrom(right!));
        if (typeof quotient !== 'number') return quotient;
      }
      if (node.fn === 'pow' && right?.type === 'ConstantNode' && typeof right.value === 'number') {
        if (right.value <= 12) return raised(unitFrom(left!), right.value);
      }
      break;
    }
    default:
  }
  throw new FormulaError('units', node, 'After ‘to’ stands a unit', 'for instance L, kW or kg/m^3');
}

/** mathjs' pow is typed for another unit, though it takes a number. */
export function raised(unit: Unit, exponent: number): Unit {
  return (unit as unknown as { pow: (exponent: number) => Unit }).pow(exponent);
}
