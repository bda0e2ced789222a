// Writes lib/data/<key>.ts from every reference/parameters/<key>.json: numbers converted to SI, typed
// and frozen, so that lib/ builds and ships without this folder. The format is in reference/README.md.
// Run: node reference/parameters/build-data.mjs

import { readFileSync, readdirSync, realpathSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { format } from 'prettier';

const HERE = new URL('./', import.meta.url);
const DATA = new URL('../../lib/data/', import.meta.url);
const REQUIRED = 'key title equation substances coefficients constants range error source place checked'.split(' ');

/** SI value of each unit symbol as numerator / denominator (so that decimal steps stay exact), with its dimension. */
const SYMBOLS = {
  kg: [1, 1],
  g: [1, 1000],
  m: [1, 1],
  dm: [1, 10],
  cm: [1, 100],
  L: [1, 1000],
  K: [1, 1],
  s: [1, 1],
  mol: [1, 1],
  kmol: [1000, 1],
  Pa: [1, 1],
  kPa: [1000, 1],
  MPa: [1000000, 1],
  bar: [100000, 1],
  J: [1, 1],
  kJ: [1000, 1],
  cal: [4184, 1000], // thermochemical calorie, 4.184 J exactly
  1: [1, 1],
};

/** Every parameter file: [{ name: 'oiml-r22.ts', text }], in alphabetical order, in memory. */
export async function dataModules() {
  const names = readdirSync(HERE)
    .filter((name) => name.endsWith('.json'))
    .sort();
  const sets = names.map((name) => [name, JSON.parse(readFileSync(new URL(name, HERE), 'utf8'))]);
  const modules = await Promise.all(sets.map(([name, set]) => moduleOf(name, set)));
  const apart = await Promise.all(
    sets.filter(([, set]) => set.apart !== undefined).map(([, set]) => seriesModule(set)),
  );
  return [...modules, ...apart].sort((one, other) => (one.name < other.name ? -1 : 1));
}

/** The text of one module, from the parsed parameter file. */
export async function moduleOf(file, set) {
  for (const field of REQUIRED) {
    if (set[field] === undefined || set[field] === '') throw new Error(`${file}: no ${field}`);
  }
  if (file !== `${set.key}.json`) throw new Error(`${file}: its key is ${set.key}`);
  const record = {
    key: set.key,
    title: set.title,
    equation: set.equation,
    substances: set.substances,
    coefficients: numbers(file, set.coefficients),
    constants: numbers(file, set.constants),
    range: Object.fromEntries(
      set.range.map((r) => [r.quantity, [toSI(file, r.low, r.unit), toSI(file, r.high, r.unit)]]),
    ),
    source: set.source,
  };
  const constant = set.key.toUpperCase().replaceAll('-', '_');
  // A series that stands in a file of its own is named from there: who needs it alone is not given the rest.
  const own = set.apart === undefined ? '' : `import { ${constant}_${set.apart} } from './${seriesName(set)}.js';\n`;
  const written = JSON.stringify(record).replace(
    new RegExp(`"(${set.apart ?? '(?!)'})(\\d+)":[^,}]+`, 'g'),
    (_all, prefix, index) => `"${prefix}${index}":${constant}_${prefix}[${index - 1}]`,
  );
  const text = `// Written by reference/parameters/build-data.mjs from reference/parameters/${file}; edit that file, not this one.
${own}import { parameterSet } from './parameter-set.js';

/** ${set.title}; SI units. Source: ${set.source} in reference/bibliography.bib, ${set.place}. */
export const ${constant} = parameterSet(${written});
`;
  return {
    name: `${set.key}.ts`,
    text: await format(text, { parser: 'typescript', singleQuote: true, printWidth: 120 }),
  };
}

/** The module of a series of coefficients that some need alone (`apart` in the parameter file). */
async function seriesModule(set) {
  const values = Object.entries(numbers(set.key, set.coefficients))
    .filter(([name]) => new RegExp(`^${set.apart}\\d+$`).test(name))
    .map(([, value]) => value);
  const text = `// Written by reference/parameters/build-data.mjs from reference/parameters/${set.key}.json; edit that file, not this one.

/** ${set.apart}1, ${set.apart}2 ... of: ${set.title}; SI units. Source: ${set.source} in reference/bibliography.bib, ${set.place}. */
export const ${set.key.toUpperCase().replaceAll('-', '_')}_${set.apart} = Object.freeze(${JSON.stringify(values)} as const);
`;
  return {
    name: `${seriesName(set)}.ts`,
    text: await format(text, { parser: 'typescript', singleQuote: true, printWidth: 120 }),
  };
}

function seriesName(set) {
  return `${set.key}-${set.apart.toLowerCase()}`;
}

function numbers(file, rows) {
  const out = {};
  for (const { name, value, unit } of rows) {
    if (!/^[A-Za-z][A-Za-z0-9_]*$/.test(name) || name in out) throw new Error(`${file}: name ${name} is bad or twice`);
    out[name] = toSI(file, value, unit);
  }
  return out;
}

/** A published number, a string of digits, in its published unit, as an SI number. */
export function toSI(file, digits, unit) {
  if (typeof digits !== 'string' || !/^-?\d+(\.\d+)?(e-?\d+)?$/.test(digits)) {
    throw new Error(`${file}: '${digits}' is not a plain number in a string`);
  }
  const value = Number(digits);
  // Rounded so that 15 °C is 288.15 K and not a neighbour of it.
  if (unit === 'degC') return Number((value + 273.15).toPrecision(12));
  if (typeof unit !== 'string' || unit === '') throw new Error(`${file}: a number without unit`);
  let [over, under] = [1, 1];
  for (const token of unit.split(' ')) {
    const [, symbol, power = '1'] = /^([A-Za-z]+|1)(-?\d+)?$/.exec(token) ?? [];
    if (!(symbol in SYMBOLS)) throw new Error(`${file}: unknown unit '${unit}'`);
    const [up, down] = SYMBOLS[symbol];
    const exponent = Number(power);
    over *= (exponent > 0 ? up : down) ** Math.abs(exponent);
    under *= (exponent > 0 ? down : up) ** Math.abs(exponent);
  }
  return (value * over) / under;
}

if (process.argv[1] && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url)) {
  for (const { name, text } of await dataModules()) {
    writeFileSync(new URL(name, DATA), text);
    console.log(`lib/data/${name}`);
  }
}
