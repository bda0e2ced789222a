// A value as it is shown: in the unit the reader asked for with 'to', in the one unit they used, else in the unit its
// kind has in the system chosen. A share of volume is shown as % vol or proof, other shares as per cent.

import { fromSI, proofFromStrength, toSI } from '#lib/index.js';
import { kinds, type KindName } from './kinds.js';
import { unitOf } from './mathjs-instance.js';
import type { FormulaValue, ShownSystem } from './sheet.js';
import { countOf, factorCount, printedFrom, printedUnits, spelled } from './unit-words.js';
import type { Value } from './values.js';

/** How a value is shown. */
export function shown(value: Value, system: ShownSystem): FormulaValue {
  switch (value.is) {
    case 'truth':
      return { is: 'truth', truth: value.truth };
    case 'temperature': {
      const { kelvin: si, scale } = value;
      return { is: 'number', si, kind: 'temperature', shown: fromSI(si, scale), unit: scale };
    }
    case 'number':
      return bare(value.number, value.kind, system);
    case 'measure': {
      const { unit } = value;
      const kind = kindOf(value);
      const own = { is: 'number', si: unit.value, kind, shown: countOf(unit), unit: printedUnits(unit) } as const;
      // A difference of temperatures would be wrong by the offset in degrees of a scale.
      if (value.asked || kind === null || kind === 'temperature') return own;
      // 'L/min' stays as the reader made it; 'kW h' has a shorter name.
      const usual = kinds[kind].shown[system];
      if (factorCount(unit) <= usual.split(/[*/ ]/u).length) return own;
      const count = countOf(inUnit(unit.value, usual));
      return { ...own, shown: count, unit: printedFrom(usual) };
    }
  }
}

/** The kind of a quantity with that dimension; null where it has no name. */
export function kindOf(value: Value & { is: 'measure' }): KindName | null {
  const names = Object.keys(kinds) as KindName[];
  return names.find((name) => kinds[name].si !== '' && value.unit.equalBase(baseOf(name))) ?? null;
}

const bases = new Map<KindName, ReturnType<typeof unitOf>>();

function baseOf(kind: KindName): ReturnType<typeof unitOf> {
  const known = bases.get(kind) ?? unitOf(1, spelled(kinds[kind].si));
  bases.set(kind, known);
  return known;
}

function inUnit(si: number, usual: string): ReturnType<typeof unitOf> {
  const unit = unitOf(1, spelled(usual));
  unit.value = si;
  return unit;
}

function bare(value: number, kind: KindName | null, system: ShownSystem): FormulaValue {
  const as = (shownAs: number, unit: string): FormulaValue => ({ is: 'number', si: value, kind, shown: shownAs, unit });
  switch (kind) {
    case 'strength':
      if (kinds.strength.shown[system] === 'proof' && value >= 0 && value <= 1)
        return as(proofFromStrength(value), 'proof');
      return as(100 * value, '% vol');
    case 'massShare':
      return as(100 * value, '% mass');
    case 'percent':
      return as(100 * value, '%');
    case 'proof':
      return as(value, 'proof');
    default:
      return as(value, '');
  }
}

/** So many of the unit that `like` is shown in. */
export function inShownUnit(count: number, like: Value, system: ShownSystem): Value {
  if (like.is === 'temperature') return { ...like, kelvin: toSI(count, like.scale) };
  if (like.is !== 'measure') return { is: 'number', number: count, kind: null, asked: false };
  const one = like.unit.clone();
  one.value = 1;
  const as = shown({ ...like, unit: one }, system);
  const unit = like.unit.clone();
  unit.value = as.is === 'number' ? count / as.shown : NaN;
  return { ...like, unit };
}
