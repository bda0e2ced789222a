// What a formula computes with: numbers that may know what they are a share of, quantities with mathjs' units,
// temperatures on a scale with an offset, and truths. A temperature is kept in kelvin; its scale is how it is shown.

import type { MathNode, Unit } from 'mathjs';
import { FormulaError } from './faults.js';
import { kinds, type KindName } from './kinds.js';
import { unitOf } from './mathjs-instance.js';
import type { PageQuantity, ShownSystem } from './sheet.js';
import { printedUnits, spelled } from './unit-words.js';

export type Scale = '°C' | '°F';

export type Value =
  | { readonly is: 'number'; readonly number: number; readonly kind: KindName | null; readonly asked: boolean }
  | { readonly is: 'measure'; readonly unit: Unit; readonly asked: boolean }
  | { readonly is: 'temperature'; readonly kelvin: number; readonly scale: Scale }
  | { readonly is: 'truth'; readonly truth: boolean };

export function number(value: number, kind: KindName | null = null): Value {
  return { is: 'number', number: value, kind, asked: false };
}

export function truth(value: boolean): Value {
  return { is: 'truth', truth: value };
}

/** A quantity, or the bare number it comes to where its units cancel. */
export function measure(unit: Unit | number): Value {
  if (typeof unit === 'number') return number(unit);
  if (unit.dimensions.every((power) => Math.abs(power) < 1e-12)) return number(unit.value);
  return { is: 'measure', unit, asked: false };
}

/** A temperature as a plain quantity in kelvin; anything else as it is. */
export function inKelvin(value: Value): Value {
  return value.is === 'temperature' ? measure(unitOf(value.kelvin, 'K')) : value;
}

/** So many SI of a kind, in the unit it is shown in. */
export function ofKind(kind: KindName, si: number, system: ShownSystem): Value {
  if (kinds[kind].si === '') return number(si, kind);
  if (kind === 'temperature') return { is: 'temperature', kelvin: si, scale: kinds.temperature.shown[system] };
  return measure(unitOf(si, spelled(kinds[kind].si)).to(spelled(kinds[kind].shown[system])).clone());
}

export function ofQuantity({ kind, si }: PageQuantity, system: ShownSystem): Value {
  return ofKind(kind, si, system);
}

/** SI of a value that is to be of that kind; a FormulaError where it is of another. */
export function siOf(value: Value, kind: KindName, what: string, node: MathNode): number {
  const plain = inKelvin(value);
  if (plain.is === 'truth' || plain.is === 'temperature') {
    throw new FormulaError('units', node, `${what} is to be ${kinds[kind].words}, not true or false`);
  }
  if (kinds[kind].si === '') {
    if (plain.is === 'measure') {
      throw new FormulaError(
        'units',
        node,
        `${what} is to be ${kinds[kind].words}, without a unit`,
        cancelled(plain.unit),
      );
    }
    checkBasis(plain.kind, kind, what, node);
    return plain.number;
  }
  const wanted = unitOf(1, spelled(kinds[kind].si));
  if (plain.is === 'number') {
    const example = kinds[kind].shown.metric.replace('_', ' ');
    throw new FormulaError(
      'units',
      node,
      `${what} is to be ${kinds[kind].words}`,
      `give it a unit, for instance ${example}`,
    );
  }
  if (!plain.unit.equalBase(wanted)) {
    throw new FormulaError('units', node, `${what} is to be ${kinds[kind].words}, not in ${printedUnits(plain.unit)}`);
  }
  return plain.unit.value;
}

/** A share of one thing is not a share of another. */
function checkBasis(has: KindName | null, wanted: KindName, what: string, node: MathNode): void {
  const bases: readonly (KindName | null)[] = ['strength', 'massShare', 'moleShare', 'proof'];
  if (has === null || has === wanted || !bases.includes(has) || !bases.includes(wanted)) return;
  const ways: Readonly<Record<string, string>> = {
    'strength massShare': 'massFraction(…) converts',
    'strength moleShare': 'moleFraction(…) converts',
    'strength proof': 'proof(…) converts',
    'massShare strength': 'strengthFromMass(…) converts',
    'moleShare strength': 'strengthFromMole(…) converts',
    'proof strength': 'strengthFromProof(…) converts',
  };
  const right = ways[`${has} ${wanted}`] ?? 'convert it by way of the strength';
  throw new FormulaError('units', node, `${what} is to be ${kinds[wanted].words}, not ${kinds[has].words}`, right);
}

function cancelled(unit: Unit): string {
  return `divide it by its unit: / (1 ${printedUnits(unit)})`;
}
