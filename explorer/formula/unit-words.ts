// Units between the three ways they are written: as a formula does, as mathjs does, as they are printed.

import type { Unit } from 'mathjs';
import { formulaUnits, unitNamed } from './units.js';

/** 'US_gal/h' as mathjs spells it. */
export function spelled(unit: string): string {
  return unit.replace(/[A-Za-z_]+/gu, (name) => unitNamed(name)?.mathjs ?? name);
}

const printedBack = new Map(formulaUnits.map(({ mathjs, printed }) => [mathjs, printed]));

/** A factor of a unit as mathjs holds it; its published type calls the prefix a text. */
interface Factor {
  readonly prefix: { readonly name: string; readonly value: number };
  readonly unit: { readonly name: string; readonly value: number };
  readonly power: number;
}

const parts = (unit: Unit): readonly Factor[] => unit.units as unknown as readonly Factor[];

/** Factors of a unit by printed name, those that cancel left out. */
function factorsOf(unit: Unit): [string, number][] {
  const powers = new Map<string, number>();
  for (const { prefix, unit: base, power } of parts(unit)) {
    const full = `${prefix.name}${base.name}`;
    const name = printedBack.get(full) ?? full;
    powers.set(name, (powers.get(name) ?? 0) + power);
  }
  return [...powers].filter(([, power]) => Math.abs(power) > 1e-12);
}

/** 'kg/m³', 'L/h', 'kW h'. */
export function printedUnits(unit: Unit): string {
  const factors = factorsOf(unit);
  const above = factors.filter(([, power]) => power > 0).map(([name, power]) => raised(name, power));
  const below = factors.filter(([, power]) => power < 0);
  if (above.length === 0) return below.map(([name, power]) => raised(name, power)).join(' ');
  const under = below.map(([name, power]) => raised(name, -power)).join(' ');
  return under === '' ? above.join(' ') : `${above.join(' ')}/${below.length > 1 ? `(${under})` : under}`;
}

/** How many names a unit is made of, powers counted: 1 for L, 2 for L/h, 3 for m³. */
export function factorCount(unit: Unit): number {
  return factorsOf(unit).reduce((count, [, power]) => count + Math.abs(power), 0);
}

/** 'kg/m³' from 'kg/m^3', 'US gal' from 'US_gal'. */
export function printedFrom(unit: string): string {
  return unit
    .replace(/[A-Za-z_°]+/gu, (name) => unitNamed(name)?.printed ?? name)
    .replace(/\^(\d)/gu, (_, digit: string) => raised('', Number(digit)));
}

/** How many of its own units a quantity is. */
export function countOf(unit: Unit): number {
  return parts(unit).reduce((value, part) => value / (part.unit.value * part.prefix.value) ** part.power, unit.value);
}

function raised(name: string, power: number): string {
  if (power === 1) return name;
  const digits = String(Number(power.toPrecision(3)));
  if (!/^-?\d+$/u.test(digits)) return `${name}^${digits}`;
  return `${name}${digits.replace(/./gu, (digit) => (digit === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(digit)]!))}`;
}
