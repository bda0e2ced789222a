// Every unit a formula may name, with the way mathjs spells it. Nothing else that mathjs knows as a unit is known
// here, so that short names stay free for the reader.

export interface FormulaUnit {
  /** As a formula writes it. */
  readonly name: string;
  /** As mathjs writes it; null for a temperature scale, which is no factor. */
  readonly mathjs: string | null;
  /** As it is printed. */
  readonly printed: string;
  readonly says: string;
}

const unit = (name: string, says: string, mathjs = name, printed = name): FormulaUnit => ({
  name,
  mathjs,
  printed,
  says,
});

/** Names of units that mathjs does not have, or has with rounded factors: made from the table of lib/units. */
export const madeUnits = { impgal: 'imp gal', mercury: 'mmHg' } as const;

export const formulaUnits: readonly FormulaUnit[] = [
  unit('L', 'litre'),
  unit('l', 'litre', 'L', 'L'),
  unit('mL', 'millilitre'),
  unit('cL', 'centilitre'),
  unit('hL', 'hectolitre'),
  unit('US_gal', 'US gallon, 3.785 L', 'gal', 'US gal'),
  unit('imp_gal', 'imperial gallon, 4.546 L', 'impgal', 'imp gal'),
  unit('m', 'metre; m^2 and m^3 are written so'),
  unit('mm', 'millimetre'),
  unit('cm', 'centimetre'),
  unit('km', 'kilometre'),
  unit('ft', 'foot'),
  unit('inch', 'inch'),
  unit('kg', 'kilogram'),
  unit('g', 'gram'),
  unit('lb', 'pound', 'lbm', 'lb'),
  unit('s', 'second'),
  unit('min', 'minute'),
  unit('h', 'hour'),
  unit('day', 'day'),
  { name: '°C', mathjs: null, printed: '°C', says: 'degree Celsius; also written degC' },
  { name: '°F', mathjs: null, printed: '°F', says: 'degree Fahrenheit; also written degF' },
  { name: 'degC', mathjs: null, printed: '°C', says: 'degree Celsius' },
  { name: 'degF', mathjs: null, printed: '°F', says: 'degree Fahrenheit' },
  unit('K', 'kelvin: a difference, or counted from absolute zero'),
  unit('Pa', 'pascal'),
  unit('hPa', 'hectopascal'),
  unit('kPa', 'kilopascal'),
  unit('mbar', 'millibar'),
  unit('bar', 'bar'),
  unit('atm', 'standard atmosphere, 101.325 kPa'),
  unit('mmHg', 'millimetre of mercury', 'mercury', 'mmHg'),
  unit('psi', 'pound per square inch'),
  unit('J', 'joule'),
  unit('kJ', 'kilojoule'),
  unit('MJ', 'megajoule'),
  unit('kWh', 'kilowatt hour'),
  unit('BTU', 'British thermal unit, 1055 J'),
  unit('W', 'watt'),
  unit('kW', 'kilowatt'),
  unit('mol', 'mole'),
  unit('kmol', 'kilomole'),
];

const byName = new Map(formulaUnits.map((one) => [one.name, one]));

/** The unit of that name. */
export function unitNamed(name: string): FormulaUnit | undefined {
  return byName.get(name);
}
