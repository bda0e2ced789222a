// Where the azeotrope stands at each pressure: the model's line with its band, where it ends, and the
// published points beside it, over pressure on a log axis.

import { fixedAxis } from '../axes.js';
import { nameOf, printedName } from '../names.js';
import { valueAt } from '../columns.js';
import type { Axis, DataTable, Drawing, FigureSize, PlotName } from '../figure.js';
import { band, curve, dot, dots, panelOf, type Plotted } from './theme.js';
import type { ShownQuantity } from '../../rows/shown.js';
import type { DriftRow, DriftRows, MeasuredAzeotropeRow } from '../../rows/drift.js';
import { fixed } from '../../text/format.js';

/** Height of the plot rectangle, px. */
const height = { wide: 330, narrow: 300 };
/** Pressures drawn, Pa. */
const drawn = [3000, 3e6] as const;
const lowest = 0.84;
/** Half the band, in standard errors. */
const halfBand = 2;
/** Px kept free between labels of the right-hand scale. */
const scaleGap = 18;

export function azeotropeDrift(rows: DriftRows, size: FigureSize): Drawing {
  const { pressure, units } = rows;
  const panelHeight = height[size.layout];
  const px = rows.line.map((row) => pressure.toShown(row.pressure_Pa));
  const py = rows.line.map(({ moleFraction }) => moleFraction);
  return {
    description: describe(rows),
    x: pressureAxis(pressure),
    panels: [
      panelOf({
        key: 'drift',
        height: panelHeight,
        y: fixedAxis({ title: 'Alcohol in the azeotrope', unit: 'mole fraction' }, [lowest, 1], 0.04, 2),
        plotted: [
          ...bandAndLine(rows.line, px, py),
          ...(rows.end_Pa === null ? [] : [dot('end', 'print', pressure.toShown(rows.end_Pa), 1)]),
          ...measuredDots(rows.measured, pressure),
          ...readerMarks(pressure.toShown(rows.at), px, py),
        ],
        names: namesOf(rows, size.layout),
        cursorSeries: [],
        rightScale: {
          title: units.strength.unit,
          ticks: rows.strengthScale
            .filter(({ moleFraction }) => moleFraction > lowest)
            .map(({ moleFraction, strength }) => ({
              y: moleFraction,
              text: String(Math.round(units.strength.toShown(strength) * 10) / 10),
              bold: false,
            }))
            .filter((tick, i, all) => i === 0 || (tick.y - all[i - 1]!.y) * panelHeight > scaleGap * (1 - lowest)),
        },
      }),
    ],
    rightRoom: size.layout === 'narrow' ? 38 : 0,
    cursor: null,
    readOut: null,
    table: () => table(rows),
  };
}

/** A log axis with ticks at 1 and 3 times powers of ten. */
function pressureAxis(pressure: ShownQuantity): Axis {
  const [from, to] = [pressure.toShown(drawn[0]), pressure.toShown(drawn[1])];
  const ticks: number[] = [];
  for (let power = Math.floor(Math.log10(from)); 10 ** power <= to; power++) {
    for (const digit of [1, 3]) ticks.push(digit * 10 ** power);
  }
  const slack = 1e-9;
  return {
    title: 'pressure',
    unit: pressure.unit,
    domain: [from, to],
    ticks: ticks.filter((tick) => tick >= from * (1 - slack) && tick <= to * (1 + slack)),
    tickText: (shown) => String(Number(shown.toPrecision(1))),
    scale: 'log',
  };
}

/** The band; the line whole where the model was fitted, dashed where it was not. */
function bandAndLine(line: readonly DriftRow[], px: readonly number[], py: readonly number[]): Plotted[] {
  const low = line.map((row) => row.moleFraction - halfBand * row.error);
  const high = line.map((row) => Math.min(1, row.moleFraction + halfBand * row.error));
  const parts = [false, true].flatMap((extrapolated): Plotted[] => {
    // A dashed part begins at the last row of the whole one, so that no gap opens.
    const rows = line.flatMap((row, i) =>
      row.extrapolated === extrapolated || (extrapolated && line[i + 1]?.extrapolated === true) ? [i] : [],
    );
    if (rows.length < 2) return [];
    const look = { hand: 'print', weight: extrapolated ? 'extrapolated' : 'equilibrium', shape: 'monotone' } as const;
    const of = (column: readonly number[]): number[] => rows.map((i) => column[i]!);
    return [curve(extrapolated ? 'extrapolated' : 'line', look, of(px), of(py))];
  });
  return [band('band', px, low, high, [lowest, 1]), ...parts];
}

/** The reader's pressure, and the azeotrope there if there is one. */
function readerMarks(x: number, px: readonly number[], py: readonly number[]): Plotted[] {
  const line = curve('reader', { hand: 'ink', weight: 'operating', shape: 'straight' }, [x, x], [lowest, 1]);
  return px.length === 0 || x < px[0]! ? [line] : [line, dot('reader', 'ink', x, valueAt(px, py, x))];
}

/** One mark for each kind. */
function measuredDots(measured: readonly MeasuredAzeotropeRow[], pressure: ShownQuantity): Plotted[] {
  return [...new Set(measured.map(({ kind }) => kind))].map((kind) => {
    const points = measured.filter((point) => point.kind === kind);
    const { form, filled } = points[0]!;
    const x = points.map((point) => pressure.toShown(point.pressure_Pa));
    const y = points.map((point) => point.moleFraction);
    return dots(kind, { form, filled, hand: 'print' }, x, y);
  });
}

function namesOf({ line, end_Pa, pressure, at: reader }: DriftRows, layout: FigureSize['layout']): PlotName[] {
  const atReader = { kind: 'point', x: pressure.toShown(reader), y: lowest, side: 'left' } as const;
  const names = [nameOf('reader', pressure.withUnit(reader), 'ink', true, atReader)];
  if (end_Pa !== null) {
    const text = layout === 'wide' ? `ends at ${pressure.withUnit(end_Pa)}` : pressure.withUnit(end_Pa);
    const end = { kind: 'point', x: pressure.toShown(end_Pa), y: 1 } as const;
    names.push(
      nameOf('end', text, 'print', false, { ...end, side: 'right' }),
      nameOf('none', layout === 'wide' ? 'no azeotrope' : 'none', 'print', false, { ...end, side: 'left' }),
    );
  }
  names.push(printedName('line', 'the model', 0.45, 'right'));
  if (line.some((row) => row.extrapolated)) names.push(printedName('extrapolated', 'extrapolated', 0.9, 'above'));
  return names;
}

function table({ line, measured, pressure, units }: DriftRows): DataTable {
  const { temperature, strength } = units;
  return {
    caption: 'The azeotrope at each pressure in numbers',
    columns: [
      { title: 'pressure', unit: pressure.unit },
      { title: 'alcohol', unit: 'mole fraction' },
      { title: 'standard error', unit: 'mole fraction' },
      { title: 'alcohol', unit: strength.unit },
      { title: 'boils at', unit: temperature.unit },
      { title: 'from', unit: '' },
    ],
    rows: [
      ...line.map((row) => [
        pressure.text(row.pressure_Pa),
        fixed(row.moleFraction, 4),
        fixed(row.error, 4),
        fixed(strength.toShown(row.strength), 2),
        fixed(temperature.toShown(row.temperature_K), 2),
        row.extrapolated ? 'the model, extrapolated' : 'the model',
      ]),
      ...measured.map((point) => [
        pressure.text(point.pressure_Pa),
        fixed(point.moleFraction, 4),
        '',
        '',
        '',
        `${point.source}, ${point.kind}`,
      ]),
    ],
  };
}

function describe({ line, end_Pa, measured, pressure, at }: DriftRows): string {
  const first = line[0];
  const last = line.at(-1);
  const from = (row: DriftRow): string =>
    `${fixed(row.moleFraction, 3)} at ${pressure.withUnit(row.pressure_Pa)}${row.extrapolated ? ', extrapolated' : ''}`;
  const ends = first === undefined || last === undefined ? 'no azeotrope' : `from ${from(first)} to ${from(last)}`;
  const gone = end_Pa === null ? '' : `; below ${pressure.withUnit(end_Pa)} there is none`;
  return `Mole fraction of alcohol in the azeotrope against pressure, ${ends}${gone}; beside the line ${measured.length} published points; yours is ${pressure.withUnit(at)}.`;
}
