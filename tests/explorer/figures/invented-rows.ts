// Rows for looking at figures and testing them: an invented mixture and an invented still, near enough
// to the real ones in shape and made without the library. Nothing here is a result.

import type { AzeotropeRow, CurveRows, StaircaseRows } from '../../../explorer/rows/equilibrium.js';
import type { NamedRun, RunRows } from '../../../explorer/rows/run.js';
import { unitSystems } from '../../../explorer/text/unit-systems.js';

export const units = unitSystems.metric;

export const azeotrope: AzeotropeRow = {
  moleFraction: 0.894,
  strength: 0.972,
  temperature_K: 351.3,
  pressure: '1 atm',
};

/** An invented curve in the shape of van Laar that crosses the diagonal at 0.894. */
export function inventedVapour(x: number): number {
  const alpha = preference(x) / preference(0.894);
  return (alpha * x) / (1 + (alpha - 1) * x);
}

// How much more ethanol than water wants to leave, with invented constants.
function preference(x: number): number {
  const share = (0.92 * (1 - x)) / (1.68 * x + 0.92 * (1 - x));
  return Math.exp(1.68 * share ** 2 - 0.92 * (1 - share) ** 2);
}

export const curve: CurveRows = (() => {
  const x = Array.from({ length: 121 }, (_, i) => (i / 120) ** 1.6);
  const y = x.map(inventedVapour);
  const temperature = x.map(inventedBoiling);
  return { liquidMoleFraction: x, vapourMoleFraction: y, temperature_K: temperature };
})();

export const raoult: CurveRows = {
  ...curve,
  vapourMoleFraction: Array.from(curve.liquidMoleFraction, (x) => (2.3 * x) / (1 + 1.3 * x)),
};

/** Invented boiling point of a liquid, K: lowest at the azeotrope. */
export function inventedBoiling(x: number): number {
  return 351.3 + 21.8 * Math.abs(1 - (inventedVapour(x) + x) / 1.788) ** 1.8;
}

/** Invented strength of a mole fraction, % vol / 100. */
export function inventedStrength(x: number): number {
  return (3.25 * x) / (1 + 2.25 * x);
}

/** Steps from a liquid along the diagonal, or along a line of slope and intercept. */
export function staircase(from: number, steps: number, line = { slope: 1, intercept: 0 }): StaircaseRows {
  const liquid: number[] = [];
  const vapour: number[] = [];
  for (let x = from, k = 0; k < steps; k++) {
    const y = inventedVapour(x);
    liquid.push(x);
    vapour.push(y);
    x = (y - line.intercept) / line.slope;
  }
  return { liquidMoleFraction: liquid, vapourMoleFraction: vapour, strength: vapour.map(inventedStrength) };
}

/** A run of 12 L whose strength starts at `first` and bends down at `bend` litres. */
export function inventedRun(first: number, bend: number, litres = 12): RunRows {
  const share = Array.from({ length: 201 }, (_, i) => i / 200);
  const volume = share.map((s) => (s * litres) / 1000);
  const strength = share.map((s) => {
    const past = Math.max(0, s * litres - bend);
    return first - 0.004 * s * litres - 0.014 * past ** 1.75 + 0.004 * past ** 2;
  });
  return {
    rows: share.length,
    time_s: share.map((s) => s * 11_000),
    collectedVolume_m3: volume,
    spoutStrength: strength,
    kettleStrength: share.map((s) => 0.095 * (1 - s) ** 1.2),
    headTemperature_K: strength.map((a) => 351.3 + 40 * (0.972 - a) ** 1.4),
    kettleTemperature_K: share.map((s) => 366.8 + 5 * s),
    pureAlcoholCollected_m3: volume.map((v, i) => (v * (first + strength[i]!)) / 2),
  };
}

export const inkRun: NamedRun = {
  label: '12 plates',
  shortLabel: '12 plates',
  hand: 'ink',
  weight: 'result',
  run: inventedRun(0.956, 4.6),
};
export const pencilRun: NamedRun = {
  label: '4 plates, before',
  shortLabel: '4 before',
  hand: 'pencil',
  weight: 'pencil',
  run: inventedRun(0.885, 4),
};
