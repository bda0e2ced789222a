// The three ways quantities are shown, and the symbols a reader may type. Factors are the library's;
// proof is the library's alcoholometry: it is physics and no factor.

import { fromSI, proofFromStrength, strengthFromProof, toSI, type UnitSymbol } from '#lib/index.js';
import type { FigureUnits, ShownQuantity } from '../rows/shown.js';
import { fixed, joined } from './format.js';

export type UnitSystemName = 'metric' | 'us' | 'imperial';

/** How every quantity of the notebook is shown. */
export interface UnitSystem extends FigureUnits {
  readonly name: UnitSystemName;
  /** As the switch says it. */
  readonly label: string;
  readonly power: ShownQuantity;
  readonly pressure: ShownQuantity;
  readonly length: ShownQuantity;
  /** Lengths across: diameters, spacings, heights of weirs. */
  readonly across: ShownQuantity;
}

const volume = {
  L: shown('L', 'litres', 'L', 0.1, 1),
  usGallon: shown('US gal', 'US gallons', 'US gal', 0.02, 2),
  imperialGallon: shown('imp gal', 'imperial gallons', 'imp gal', 0.02, 2),
};
const temperature = {
  celsius: shown('°C', 'degrees Celsius', '°C', 0.1, 1),
  fahrenheit: shown('°F', 'degrees Fahrenheit', '°F', 0.1, 1),
};
const strength = {
  volume: quantity(
    '% vol',
    'per cent by volume',
    0.1,
    1,
    (share) => 100 * share,
    (percent) => percent / 100,
  ),
  proof: quantity('proof', 'US proof', 0.1, 1, proofFromStrength, strengthFromProof),
};
const power = {
  kW: shown('kW', 'kilowatts', 'kW', 0.1, 1),
  btu: shown('BTU/h', 'BTU an hour', 'BTU/h', 100, 0),
};
const pressure = {
  kPa: shown('kPa', 'kilopascals', 'kPa', 0.1, 1),
  psi: shown('psi', 'pounds a square inch', 'psi', 0.01, 2),
};
const length = { m: shown('m', 'metres', 'm', 0.05, 2), ft: shown('ft', 'feet', 'ft', 0.1, 1) };
const across = { mm: shown('mm', 'millimetres', 'mm', 1, 0), inch: shown('in', 'inches', 'in', 0.05, 2) };
const time = shown('h', 'hours', 'h', 0.02, 2);

export const unitSystems: Readonly<Record<UnitSystemName, UnitSystem>> = {
  metric: {
    name: 'metric',
    label: 'L, °C, % vol, kW',
    volume: volume.L,
    temperature: temperature.celsius,
    strength: strength.volume,
    power: power.kW,
    pressure: pressure.kPa,
    length: length.m,
    across: across.mm,
    time,
  },
  us: {
    name: 'us',
    label: 'US gal, °F, proof, BTU/h',
    volume: volume.usGallon,
    temperature: temperature.fahrenheit,
    strength: strength.proof,
    power: power.btu,
    pressure: pressure.psi,
    length: length.ft,
    across: across.inch,
    time,
  },
  imperial: {
    name: 'imperial',
    label: 'imp gal, °C, % vol, kW',
    volume: volume.imperialGallon,
    temperature: temperature.celsius,
    strength: strength.volume,
    power: power.kW,
    pressure: pressure.kPa,
    length: length.ft,
    across: across.inch,
    time,
  },
};

function shown(unit: string, words: string, symbol: UnitSymbol, step: number, decimals: number): ShownQuantity {
  return quantity(
    unit,
    words,
    step,
    decimals,
    (si) => fromSI(si, symbol),
    (value) => toSI(value, symbol),
  );
}

function quantity(
  unit: string,
  words: string,
  step: number,
  decimals: number,
  toShown: (si: number) => number,
  fromShown: (shown: number) => number,
): ShownQuantity {
  const text = (si: number): string => fixed(toShown(si), decimals);
  return { unit, words, step, toShown, fromShown, text, withUnit: (si) => joined(text(si), unit) };
}
