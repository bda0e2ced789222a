// How the answers of questions may be written: bare, or with a unit that fits.

import { toSI } from '#lib/index.js';
import type { Reading } from '../../components/number/number-spec.js';
import { numberSpecs } from '../../state/number-specs.js';
import { plainUnit, readText } from '../../text/parse.js';
import type { UnitSystem } from '../../text/unit-systems.js';

type Read = (text: string) => Reading;

/** A strength: '60', '60 % vol', '120 proof'; % vol / 100. */
export function strengthReadIn(units: UnitSystem): Read {
  return numberSpecs(units)('asked.strength').read;
}

/** Minutes, or hours when it says so; s. */
export const readMinutes: Read = reader((shown) => toSI(shown, 'min'), {
  min: (value) => toSI(value, 'min'),
  minutes: (value) => toSI(value, 'min'),
  h: (value) => toSI(value, 'h'),
  hours: (value) => toSI(value, 'h'),
});

/** A count of plates. */
export const readPlates: Read = reader(same, { plates: same, plate: same });

/** A reflux ratio: '4', '4 : 1'. */
export const readRatio: Read = (text) => plainRatio(withoutToOne(text));
/** 'four' of 'four : 1'. */
function withoutToOne(text: string): string {
  const at = text.lastIndexOf(':');
  return at >= 0 && text.slice(at + 1).trim() === '1' ? text.slice(0, at).trimEnd() : text;
}
const plainRatio: Read = reader(same, { 'to 1': same });

/** Litres or whatever the page's volume is shown in, as a bare number. */
export const readCount: Read = reader(same, {});

function reader(
  fromShown: (shown: number) => number,
  typed: Readonly<Record<string, (value: number) => number>>,
): Read {
  const units = new Map(Object.entries(typed).map(([unit, read]) => [plainUnit(unit), read]));
  return (text) => readText(text, { fromShown, units, engine: false });
}

function same(value: number): number {
  return value;
}
