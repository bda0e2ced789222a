// The table of inputs in one system of units, as the blanks and the ruler want it.

import { InputError, pressureAtAltitude, strengthFromProof, toSI } from '#lib/index.js';
import type { NumberSpec } from '../components/number/number-spec.js';
import type { EngineDimension } from '../formula/engine.js';
import { wanted } from '../offline/wanted.js';
import { joined, trimmed } from '../text/format.js';
import { plainUnit, readText } from '../text/parse.js';
import type { UnitSystem } from '../text/unit-systems.js';
import { inputAt, type Measured, type Path } from './inputs.js';

/** What the elements need to know of the number at a path. */
export type NumberSpecs = (path: Path) => NumberSpec;

/** A number's way between SI and the unit shown, its unit in the blank, and what else it may be typed in. */
interface Shown {
  readonly toShown: (si: number) => number;
  readonly fromShown: (shown: number) => number;
  readonly suffix: (shown: number) => string;
  readonly typed: Readonly<Record<string, (value: number) => number>>;
}

const made = new Map<string, NumberSpecs>();

/** The same function, and for a path the same spec, for the same units. */
export function numberSpecs(units: UnitSystem): NumberSpecs {
  const known = made.get(units.name);
  if (known !== undefined) return known;
  const specs = new Map<Path, NumberSpec>();
  const of: NumberSpecs = (path) => {
    const spec = specs.get(path) ?? specOf(inputAt(path)!, units);
    specs.set(path, spec);
    return spec;
  };
  made.set(units.name, of);
  return of;
}

/** The spec of any number that can be set. */
export function specOf(row: Measured, units: UnitSystem): NumberSpec {
  const { toShown, fromShown, suffix, typed } = shownAs(row.quantity, units);
  const { from, to, step, decimals } = row.grain[units.name];
  const unitsTyped = new Map(Object.entries(typed).map(([unit, read]) => [plainUnit(unit), read]));
  unitsTyped.set(plainUnit(suffix(2)), fromShown);
  const dimensions = dimensionsOf(row.quantity);
  return {
    key: row.key,
    label: row.label,
    low: from,
    high: to,
    step,
    toShown,
    fromShown,
    digits: (shown) => trimmed(shown, decimals),
    suffix,
    read: (text) => readText(text, { fromShown, units: unitsTyped, engine: dimensions.length > 0 }),
    readWithEngine: async (number, unit) => {
      const says = `The unit ‘${unit}’ cannot be read: the part that knows it could not be loaded.`;
      const { siFromUnit } = await wanted(says, () => import('../formula/engine.js'));
      for (const { dimension, toParameter } of dimensions) {
        const si = siFromUnit(number, unit, dimension);
        if (si !== undefined) return toParameter(si);
      }
      return undefined;
    },
    tooHigh: row.tooHigh,
    tooLow: row.tooLow,
  };
}

function shownAs(quantity: Measured['quantity'], units: UnitSystem): Shown {
  const same = (value: number): number => value;
  if (typeof quantity === 'object') {
    const { unit, si } = quantity;
    const fromShown = by(si);
    return { toShown: (value) => value / si, fromShown, suffix: () => joined('', unit), typed: { [unit]: fromShown } };
  }
  switch (quantity) {
    case 'plates':
      return {
        toShown: same,
        fromShown: Math.round,
        suffix: (shown) => (shown === 1 ? '\u00a0plate' : '\u00a0plates'),
        typed: { plate: Math.round },
      };
    case 'ratio':
      return {
        toShown: same,
        fromShown: same,
        suffix: () => '\u00a0:\u00a01',
        typed: { 'to 1': same },
      };
    case 'minutes':
      return {
        toShown: (seconds) => seconds / 60,
        fromShown: (shown) => 60 * shown,
        suffix: () => '\u00a0min',
        typed: { min: as('min'), h: as('h'), hours: as('h'), s: same },
      };
    case 'count':
      return { toShown: same, fromShown: Math.round, suffix: () => '', typed: {} };
    case 'concentration':
      return { toShown: same, fromShown: same, suffix: () => '\u00a0g/L', typed: { 'g/L': same, 'kg/m3': same } };
    case 'difference': {
      const { unit } = units.temperature;
      const perKelvin = unit === '°F' ? 1.8 : 1;
      return {
        toShown: (kelvins) => kelvins * perKelvin,
        fromShown: (shown) => shown / perKelvin,
        suffix: () => joined('', unit),
        typed: { K: same, C: same, '°C': same, F: (degrees) => degrees / 1.8, '°F': (degrees) => degrees / 1.8 },
      };
    }
    case 'strengthDifference': {
      const { unit } = units.strength;
      const whole = unit === 'proof' ? 200 : 100;
      return {
        toShown: (share) => share * whole,
        fromShown: (shown) => shown / whole,
        suffix: () => joined('', unit),
        typed: { '%': percent, '% vol': percent, ABV: percent, proof: (proof) => proof / 200 },
      };
    }
    case 'percent':
      return {
        toShown: (share) => 100 * share,
        fromShown: (shown) => shown / 100,
        suffix: () => '\u00a0%',
        typed: { 'per cent': (value) => value / 100 },
      };
    default: {
      const { toShown, unit } = units[quantity];
      const fromShown = orBeyond(units[quantity].fromShown);
      return { toShown, fromShown, suffix: () => joined('', unit), typed: typedUnits[quantity] };
    }
  }
}

/** A conversion that is physics has a range; a number beyond it is beyond every limit here. */
function orBeyond(convert: (value: number) => number, rises = true): (value: number) => number {
  return (value) => {
    try {
      return convert(value);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      return value > 0 === rises ? Infinity : -Infinity;
    }
  };
}

const atAltitude = orBeyond(pressureAtAltitude, false);
const ofProof = orBeyond(strengthFromProof);
const percent = (value: number): number => value / 100;
const as =
  (symbol: Parameters<typeof toSI>[1]) =>
  (value: number): number =>
    toSI(value, symbol);
const by =
  (si: number) =>
  (value: number): number =>
    si * value;

/** Units the small table knows, as people write them. */
const typedUnits = {
  volume: {
    L: as('L'),
    litre: as('L'),
    litres: as('L'),
    liters: as('L'),
    'US gal': as('US gal'),
    'imp gal': as('imp gal'),
    'UK gal': as('imp gal'),
  },
  strength: {
    '%': percent,
    '% vol': percent,
    ABV: percent,
    '% ABV': percent,
    proof: ofProof,
    'US proof': ofProof,
  },
  temperature: { C: as('°C'), '°C': as('°C'), F: as('°F'), '°F': as('°F') },
  across: { mm: as('mm'), cm: (value: number) => value / 100, m: as('m'), in: as('in'), inch: as('in') },
  power: { W: as('W'), kW: as('kW'), 'BTU/h': as('BTU/h') },
  pressure: {
    kPa: as('kPa'),
    mmHg: as('mmHg'),
    bar: as('bar'),
    psi: as('psi'),
    m: atAltitude,
    metres: atAltitude,
  },
} as const;

/** What the formula engine may be asked for, and how its answer becomes the parameter. */
function dimensionsOf(quantity: Measured['quantity']): readonly {
  readonly dimension: EngineDimension;
  readonly toParameter: (si: number) => number;
}[] {
  const same = (si: number): number => si;
  if (typeof quantity === 'object') return [];
  if (quantity === 'volume') return [{ dimension: 'm^3', toParameter: same }];
  if (quantity === 'power') return [{ dimension: 'W', toParameter: same }];
  if (quantity === 'across') return [{ dimension: 'm', toParameter: same }];
  if (quantity !== 'pressure') return [];
  return [
    { dimension: 'Pa', toParameter: same },
    { dimension: 'm', toParameter: atAltitude },
  ];
}
