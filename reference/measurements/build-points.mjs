// Writes explorer/state/measured-points.ts: the published points that the explorer lays over its curves, in SI,
// typed, with the names of their sources from bibliography.bib. Run: npm run data

import { readFileSync, realpathSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { format } from 'prettier';
import { table } from '../regression/measurements.mjs';

const MODULE = new URL('../../explorer/state/measured-points.ts', import.meta.url);
/** Sets within 1.5 kPa of 1 atm, the oldest first; their keys in the bibliography. */
const NEAR_ONE_ATM = {
  'carey-lewis-1932-101kPa': 'careylewis1932',
  'rieder-thompson-1949-101kPa': 'riederthompson1949',
  'kamihama-2012-101kPa': 'kamihama2012',
  'liu-2012-101kPa': 'liu2012',
  'susial-2021-100kPa': 'susial2021',
};

/** The text of the module. */
export async function pointsModule() {
  const near = Object.entries(NEAR_ONE_ATM).map(([set, source]) => {
    const rows = table(set).filter((row) => row.y1 !== undefined && row.y1 !== '');
    const column = (name) => rows.map((row) => Number(row[name]));
    return {
      set,
      source: cited(source),
      pressure_Pa: pascal(rows[0].P_kPa),
      liquidMoleFraction: column('x1'),
      vapourMoleFraction: column('y1'),
      temperature_K: rows.map(kelvin),
    };
  });
  const azeotropes = table('azeotrope').map((row) => ({
    pressure_Pa: pascal(row.P_kPa),
    moleFraction: Number(row.x1),
    uncertainty: Number(row.uncertainty_x1),
    kind: row.kind,
    source: cited(row.source),
  }));
  const text = `// Written by reference/measurements/build-points.mjs from reference/measurements; edit those files, not this one.
// Published points for laying over the curves; loaded only when asked for.

/** Liquid and vapour of one published set near 1 atm. */
export interface MeasuredSet {
  /** Name of its file in reference/measurements. */
  readonly set: string;
  /** 'Carey and Lewis, 1932'. */
  readonly source: string;
  readonly pressure_Pa: number;
  readonly liquidMoleFraction: readonly number[];
  readonly vapourMoleFraction: readonly number[];
  readonly temperature_K: readonly number[];
}

/** One published azeotrope: stated there, read where x and y cross, at a maximum of pressure, or from memory. */
export interface MeasuredAzeotrope {
  readonly pressure_Pa: number;
  readonly moleFraction: number;
  /** Of the mole fraction, as estimated by this project. */
  readonly uncertainty: number;
  readonly kind: 'printed' | 'read' | 'maximum' | 'memory';
  readonly source: string;
}

export const measuredSets: readonly MeasuredSet[] = ${JSON.stringify(near)};

export const measuredAzeotropes: readonly MeasuredAzeotrope[] = ${JSON.stringify(azeotropes)};
`;
  return format(text, { parser: 'typescript', singleQuote: true, printWidth: 120 });
}

// Rounded so that 78.15 °C is 351.3 K and not a neighbour of it.
const kelvin = (row) => (row.T_K === undefined ? Number((Number(row.t_degC) + 273.15).toFixed(3)) : Number(row.T_K));
const pascal = (kPa) => Number((1000 * Number(kPa)).toPrecision(8));

/** 'Carey and Lewis, 1932', 'Kamihama et al., 2012' from a key of the bibliography. */
function cited(key) {
  const bibliography = readFileSync(new URL('../bibliography.bib', import.meta.url), 'utf8');
  const entry = bibliography.split(/^@/m).find((text) => text.includes(`{${key},`));
  const field = (name) => new RegExp(`^\\s*${name}\\s*=\\s*\\{(.*?)\\},?$`, 'm').exec(entry ?? '')?.[1];
  const names = (field('author') ?? field('editor') ?? '').split(' and ').map((name) => name.split(',')[0]);
  const year = field('year');
  if (names[0] === '' || year === undefined) throw new Error(`bibliography.bib: no author or year for ${key}`);
  return `${names.length > 2 ? `${names[0]} et al.` : names.join(' and ')}, ${year}`;
}

if (process.argv[1] && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url)) {
  writeFileSync(MODULE, await pointsModule());
  console.log('explorer/state/measured-points.ts');
}
