// What is said of a name that nothing here goes by.

import { fault } from './faults.js';
import { builtNames } from './functions/registry.js';
import { nearestName } from './names.js';
import type { FormulaFault, Place } from './sheet.js';
import { formulaUnits } from './units.js';

const ofStrength = 'a strength is written 40% or 0.4';
const ofGallons = 'write US_gal or imp_gal: a gallon may be either';

/** What people type for things that are written otherwise here: words, and the name to put instead if there is one. */
const otherwise: Readonly<Record<string, readonly [right: string, instead: string | null]>> = {
  vol: [ofStrength, null],
  abv: [ofStrength, null],
  ABV: [ofStrength, null],
  percent: [ofStrength, null],
  gal: [ofGallons, null],
  gallon: [ofGallons, null],
  gallons: [ofGallons, null],
  C: ['degrees Celsius are written °C or degC', '°C'],
  F: ['degrees Fahrenheit are written °F or degF', '°F'],
  Celsius: ['degrees Celsius are written °C or degC', '°C'],
  Fahrenheit: ['degrees Fahrenheit are written °F or degF', '°F'],
  litre: ['a litre is written L', 'L'],
  litres: ['litres are written L', 'L'],
  liter: ['a litre is written L', 'L'],
  liters: ['litres are written L', 'L'],
  hr: ['an hour is written h', 'h'],
  hour: ['an hour is written h', 'h'],
  hours: ['hours are written h', 'h'],
  minute: ['a minute is written min', 'min'],
  minutes: ['minutes are written min', 'min'],
  in: ['an inch is written inch', 'inch'],
  ln: ['the natural logarithm is written log', 'log'],
  average: ['a mean is written mean', 'mean'],
};

/** The fault of an unknown name, among the names the page knows. */
export function unknownFault(name: string, known: Iterable<string>, at: Place | null): FormulaFault {
  const wrong = `Nothing here is called ‘${name}’`;
  const usual = Object.hasOwn(otherwise, name) ? otherwise[name] : undefined;
  if (usual !== undefined) return fault('unknown', wrong, usual[0], at, usual[1]);
  const nearest = nearestName(name, [...known, ...builtNames, ...formulaUnits.map((unit) => unit.name)]);
  if (nearest === null) return fault('unknown', wrong, 'the list has all names', at);
  return fault('unknown', wrong, `did you mean ${nearest}?`, at, nearest);
}
