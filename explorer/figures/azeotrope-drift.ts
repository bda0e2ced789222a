// Where the azeotrope stands at each pressure: the model's line with its band, where it ends, and the
// published points beside it. Pressure on a log axis: a position along it is the logarithm of what is shown.

import { fixedAxis } from './axes.js';
import { nameOf, printedName } from './names.js';
import { valueAt } from './columns.js';
import type { Axis, PlotName, DataTable, Drawing, FigureSize, Mark } from './figure.js';
import type { ShownQuantity } from '../rows/shown.js';
import type { DriftRow, DriftRows, MeasuredAzeotropeRow } from '../rows/drift.js';
import { fixed } from '../text/format.js';

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
  const along = logarithmic(rows.pressure);
  const room = size.layout === 'narrow' ? 38 : 0;
  const x = logAxis(rows.pressure, along);
  const y = fixedAxis({ title: 'Alcohol in the azeotrope', unit: 'mole fraction' }, [lowest, 1], 0.04, 2);
  const px = rows.line.map((row) => along.toShown(row.pressure_Pa));
  const py = rows.line.map(({ moleFraction }) => moleFraction);
  const panelHeight = height[size.layout];
  return {
    description: describe(rows),
    x,
    panels: [
      {
        key: 'drift',
        height: panelHeight,
        y,
        marks: [
          ...bandAndLine(rows.line, px, py),
          ...endMark(rows, along),
          ...measuredMarks(rows.measured, along),
          ...readerMarks(along.toShown(rows.at), px, py),
        ],
        names: namesOf(rows, along, size.layout),
        cursorSeries: [],
        framed: false,
        rightScale: {
          title: rows.units.strength.unit,
          ticks: rows.strengthScale
            .filter(({ moleFraction }) => moleFraction > lowest)
            .map(({ moleFraction, strength }) => ({
              y: moleFraction,
              text: String(Math.round(rows.units.strength.toShown(strength) * 10) / 10),
              bold: false,
            }))
            .filter((tick, i, all) => i === 0 || (tick.y - all[i - 1]!.y) * panelHeight > scaleGap * (1 - lowest)),
        },
      },
    ],
    rightRoom: room,
    cursor: null,
    readOut: null,
    table: () => table(rows),
  };
}

/** A quantity whose shown number is the decimal logarithm of what `pressure` shows. */
function logarithmic(pressure: ShownQuantity): ShownQuantity {
  return {
    ...pressure,
    toShown: (si) => Math.log10(pressure.toShown(si)),
    fromShown: (shown) => pressure.fromShown(10 ** shown),
  };
}

/** Ticks at 1 and 3 times powers of ten. */
function logAxis(pressure: ShownQuantity, along: ShownQuantity): Axis {
  const [from, to] = [along.toShown(drawn[0]), along.toShown(drawn[1])];
  const ticks: number[] = [];
  for (let power = Math.floor(from); power <= to; power++) {
    for (const digit of [1, 3]) ticks.push(power + Math.log10(digit));
  }
  const slack = 1e-9;
  return {
    title: 'pressure',
    unit: pressure.unit,
    domain: [from, to],
    ticks: ticks.filter((tick) => tick >= from - slack && tick <= to + slack),
    tickText: (shown) => String(Number((10 ** shown).toPrecision(1))),
  };
}

/** The band; the line whole where the model was fitted, dashed where it was not. */
function bandAndLine(line: readonly DriftRow[], px: readonly number[], py: readonly number[]): Mark[] {
  const low = line.map((row) => row.moleFraction - halfBand * row.error);
  const high = line.map((row) => Math.min(1, row.moleFraction + halfBand * row.error));
  const parts = [false, true].map((extrapolated): Mark => {
    // A dashed part begins at the last row of the whole one, so that no gap opens.
    const rows = line.flatMap((row, i) =>
      row.extrapolated === extrapolated || (extrapolated && line[i + 1]?.extrapolated === true) ? [i] : [],
    );
    return {
      kind: 'curve',
      key: extrapolated ? 'extrapolated' : 'line',
      hand: 'print',
      weight: extrapolated ? 'extrapolated' : 'equilibrium',
      shape: 'monotone',
      x: rows.map((i) => px[i]!),
      y: rows.map((i) => py[i]!),
    };
  });
  const band: Mark = { kind: 'band', key: 'band', x: px, low, high };
  return [band, ...parts.filter((part) => part.kind === 'curve' && part.x.length > 1)];
}

function endMark({ end_Pa }: DriftRows, along: ShownQuantity): Mark[] {
  return end_Pa === null ? [] : [{ kind: 'dot', key: 'end', hand: 'print', x: along.toShown(end_Pa), y: 1 }];
}

/** The reader's pressure, and the azeotrope there if there is one. */
function readerMarks(x: number, px: readonly number[], py: readonly number[]): Mark[] {
  const line: Mark = {
    kind: 'curve',
    key: 'reader',
    hand: 'ink',
    weight: 'operating',
    shape: 'straight',
    x: [x, x],
    y: [lowest, 1],
  };
  if (px.length === 0 || x < px[0]!) return [line];
  return [line, { kind: 'dot', key: 'reader', hand: 'ink', x, y: valueAt(px, py, x) }];
}

/** One mark for each kind, so that a hundred points are three elements. */
function measuredMarks(measured: readonly MeasuredAzeotropeRow[], along: ShownQuantity): Mark[] {
  return [...new Set(measured.map(({ kind }) => kind))].map((kind): Mark => {
    const points = measured.filter((point) => point.kind === kind);
    const { form, filled } = points[0]!;
    return {
      kind: 'points',
      key: kind,
      form,
      filled,
      x: points.map((point) => along.toShown(point.pressure_Pa)),
      y: points.map((point) => point.moleFraction),
    };
  });
}

function namesOf(
  { line, end_Pa, pressure, at: reader }: DriftRows,
  along: ShownQuantity,
  layout: FigureSize['layout'],
): PlotName[] {
  const atReader = { kind: 'point', x: along.toShown(reader), y: lowest, side: 'left' } as const;
  const names = [nameOf('reader', pressure.withUnit(reader), 'ink', true, atReader)];
  if (end_Pa !== null) {
    const text = layout === 'wide' ? `ends at ${pressure.withUnit(end_Pa)}` : pressure.withUnit(end_Pa);
    const end = { kind: 'point', x: along.toShown(end_Pa), y: 1 } as const;
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
