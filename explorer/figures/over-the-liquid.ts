// What rises from a boiling liquid above the temperature it boils at, both against its strength.

import { extentOf, roundAxis } from './axes.js';
import type { PlotName, Drawing, FigureSize, Mark } from './figure.js';
import { nameOf } from './names.js';
import { overLiquidTable, plainPanel, shownAll, vapourOverLiquid, wholeAxis } from './vapour-over-liquid.js';
import type { OverTheLiquidRows } from '../rows/course.js';

const height = { wide: 150, narrow: 130 };

/** Vapour over liquid, above the temperature of the boil. */
export function overTheLiquid(rows: OverTheLiquidRows, size: FigureSize): Drawing {
  const [upper, lower] = [vapourOverLiquid(rows, size), boil(rows, size)];
  return {
    ...upper,
    description: `${upper.description} ${lower.description}`,
    panels: [...upper.panels, ...lower.panels],
    table: () => overLiquidTable(rows, true),
  };
}

function boil(rows: OverTheLiquidRows, size: FigureSize): Drawing {
  const { strength, temperature } = rows.units;
  const x = wholeAxis('alcohol in the liquid', rows.units, size);
  const liquid = shownAll(rows.liquidStrength, strength.toShown);
  const degrees = shownAll(rows.temperature_K, temperature.toShown);
  const y = roundAxis({ title: 'The liquid boils at', unit: temperature.unit }, extentOf([degrees]), {
    steps: 3,
    ticks: 3,
  });
  const marks: Mark[] = [
    { kind: 'curve', key: 'boil', hand: 'print', weight: 'equilibrium', shape: 'monotone', x: liquid, y: degrees },
  ];
  const names: PlotName[] = [];
  if (rows.own !== null) {
    const [px, py] = [strength.toShown(rows.own.liquid), temperature.toShown(rows.own.temperature_K)];
    marks.push({ kind: 'dot', key: 'own', hand: 'ink', x: px, y: py });
    const of = { kind: 'point', x: px, y: py, side: 'right' } as const;
    names.push(nameOf('own', temperature.withUnit(rows.own.temperature_K), 'ink', true, of));
  }
  const own = rows.own === null ? '' : `; yours at ${temperature.withUnit(rows.own.temperature_K)}`;
  return {
    description: `Its boiling point falls from ${temperature.withUnit(rows.temperature_K[0]!)} for water${own}.`,
    x,
    panels: [plainPanel('boil', height[size.layout], y, marks, names)],
    rightRoom: 0,
    cursor: null,
    readOut: null,
    table: () => overLiquidTable(rows, true),
  };
}
