// Reads reference/measurements as weights.json describes it: every set in SI, ends of composition left out.

import { readFileSync } from 'node:fs';

const FOLDER = new URL('../measurements/', import.meta.url);
const read = (name) => readFileSync(new URL(name, FOLDER), 'utf8');
const CALORIE = 4.184;
const MOLAR_MASS = { ethanol: 46.06844, water: 18.015268 };

export const WEIGHTS = JSON.parse(read('weights.json'));

/** Rows of a CSV file; numbers stay strings of digits. */
export function table(set) {
  const lines = read(`${set}.csv`)
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'));
  const names = lines[0].split(',');
  return lines.slice(1).map((line) => Object.fromEntries(line.split(',').map((cell, i) => [names[i], cell])));
}

const kelvin = (row) => (row.T_K === undefined ? Number(row.t_degC) + 273.15 : Number(row.T_K));

const READERS = {
  isothermal(entry, rows) {
    const points = rows.map((row) => ({
      x: Number(row.x1),
      temperature: kelvin(row),
      pressure: 1000 * Number(row.P_kPa),
      y: row.y1 === undefined ? undefined : Number(row.y1),
    }));
    const at = (x) => points.find((point) => point.x === x)?.pressure;
    const pure = at(0) !== undefined && at(1) !== undefined ? { water_Pa: at(0), ethanol_Pa: at(1) } : undefined;
    return { points: points.filter(({ x }) => x > 0 && x < 1), pure };
  },
  isobaric: (entry, rows) => READERS.isothermal(entry, rows),
  'heat of mixing': (_, rows) => ({
    points: rows.map((row) => ({ x: Number(row.x1), temperature: kelvin(row), heat: Number(row.hE_J_mol) })),
  }),
  'heat capacity': (_, rows) => ({
    points: rows
      .map((row) => {
        const x = Number((Number(row.x1_percent) / 100).toFixed(6));
        const molarMass = x * MOLAR_MASS.ethanol + (1 - x) * MOLAR_MASS.water;
        return { x, temperature: kelvin(row), heatCapacity: Number(row.cp_cal_gK) * CALORIE * molarMass };
      })
      .filter(({ x }) => x < 1),
  }),
  'limiting activity': (entry, rows) => ({
    points: entry.bands_degC.map(([low, high]) => {
      const inside = rows.filter((row) => Number(row.t_degC) >= low && Number(row.t_degC) <= high);
      return {
        count: inside.length,
        temperature: median(inside.map(kelvin)),
        gamma: median(inside.map((row) => Number(row.gamma1))),
      };
    }),
  }),
  azeotrope: (entry, rows) => {
    const all = rows.map((row) => ({
      x: Number(row.x1),
      pressure: 1000 * Number(row.P_kPa),
      uncertainty: Number(row.uncertainty_x1),
      kind: row.kind,
      source: row.source,
      fitted:
        Number(row.P_kPa) <= entry.largest_kPa &&
        (entry.fitted.includes(row.kind) || entry.fitted.includes(`${row.kind}@${row.P_kPa}`)),
    }));
    const fitted = all.filter((row) => row.fitted);
    for (const row of fitted) {
      const together = fitted.filter(({ pressure }) => Math.abs(pressure / row.pressure - 1) < 0.01).length;
      row.sigma = row.uncertainty * Math.sqrt(together);
    }
    return { points: all };
  },
};

/** Every set: { set, kind, role, sigma, use, points, pure }. */
export const SETS = WEIGHTS.sets.map((entry) => ({ ...entry, ...READERS[entry.kind](entry, table(entry.set)) }));

export function median(values) {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length / 2;
  return Number.isInteger(half) ? (sorted[half - 1] + sorted[half]) / 2 : sorted[Math.floor(half)];
}

/** Standard errors of a point: T, y, P (relative), as the set's sigma says. */
export function sigmas(entry, point) {
  const { sigma } = entry;
  const weak = point.x < 0.1;
  return {
    temperature: (weak && sigma['T_K_below_x0.1']) || sigma.T_K,
    y: (weak && sigma['y_below_x0.1']) || sigma.y,
    pressure: sigma.P_relative,
  };
}
