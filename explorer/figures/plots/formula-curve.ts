// A formula against a variable: one curve in ink, with gaps where there is no value, and a dot where the page stands.

import type { FormulaColumn, FormulaCurveRows } from '../../rows/formula.js';
import { numberText } from '../../text/number-text.js';
import { joined } from '../../text/format.js';
import { extentOf, roundAxis } from '../axes.js';
import { valueAt } from '../columns.js';
import type { PlotName, Drawing, FigureSize } from '../figure.js';
import type { ShownQuantity } from '../../rows/shown.js';
import { nameOf } from '../names.js';
import { curve, dot, panelOf } from './theme.js';

const height = { wide: 300, narrow: 250 };

export function formulaCurve(rows: FormulaCurveRows, size: FigureSize): Drawing {
  const { now } = rows;
  const sorted = rising(rows);
  const pieces = piecesOf(sorted);
  const ys = [...rows.y.numbers, ...(now === null ? [] : [now.y])].filter(Number.isFinite);
  const x = roundAxis({ title: rows.x.name, unit: rows.x.unit }, extentOf([rows.x.numbers]), {
    steps: 10,
    ticks: size.width < 480 ? 4 : 6,
  });
  const y = roundAxis({ title: rows.y.name, unit: rows.y.unit }, extentOf([ys]), { steps: 5, ticks: 5 });
  const panelHeight = height[size.layout];
  const [low, high] = extentOf([sorted.x.numbers]);
  const at = (shown: number): number | null => {
    const piece = pieces.find((one) => shown >= one.x[0]! && shown <= one.x.at(-1)!);
    return piece === undefined ? null : valueAt(piece.x, piece.y, shown);
  };
  const seen = now !== null && now.x >= x.domain[0] && now.x <= x.domain[1];
  const look = { hand: 'ink', weight: 'result', shape: 'monotone' } as const;
  return {
    description: describe(rows, sorted),
    x,
    panels: [
      panelOf({
        key: 'formula',
        height: panelHeight,
        y,
        plotted: [
          ...pieces.map((piece, k) => curve(`piece ${String(k)}`, look, piece.x, piece.y)),
          ...(seen ? [dot('now', 'ink', now.x, now.y)] : []),
        ],
        names: seen ? [nameOfNow(rows, now)] : [],
        cursorSeries: [{ hand: 'ink', at }],
        rightScale: null,
      }),
    ],
    rightRoom: 0,
    cursor: {
      quantity: shownAs(rows.x, (high - low) / 100),
      start: seen ? now.x : (low + high) / 2,
      range: [low, high],
    },
    readOut: {
      at: (shown) => text(rows.x, shown),
      note: () => '',
      columns: [{ label: 'value', hand: 'ink' }],
      rows: [{ label: rows.y.name, texts: (shown) => [at(shown) === null ? '–' : text(rows.y, at(shown)!)] }],
    },
    table: () => ({
      caption: `${rows.y.name} against ${rows.x.name}`,
      columns: [rows.x, rows.y].map(({ name, unit }) => ({ title: name, unit })),
      rows: rows.x.numbers.flatMap((value, k) =>
        k % 5 === 0
          ? [[numberText(value), Number.isNaN(rows.y.numbers[k]!) ? '–' : numberText(rows.y.numbers[k]!)]]
          : [],
      ),
    }),
  };
}

/** The rows with x rising. */
function rising({ x, y }: FormulaCurveRows): { readonly x: FormulaColumn; readonly y: FormulaColumn } {
  if (!(x.numbers[0]! > x.numbers.at(-1)!)) return { x, y };
  return {
    x: { ...x, numbers: [...x.numbers].reverse() },
    y: { ...y, numbers: [...y.numbers].reverse() },
  };
}

/** Runs of rows that have a value; one alone is no curve. */
function piecesOf({ x, y }: ReturnType<typeof rising>): { readonly x: number[]; readonly y: number[] }[] {
  const pieces: { x: number[]; y: number[] }[] = [];
  let open = false;
  y.numbers.forEach((value, k) => {
    if (!Number.isFinite(value)) {
      open = false;
      return;
    }
    if (!open) pieces.push({ x: [], y: [] });
    open = true;
    pieces.at(-1)!.x.push(x.numbers[k]!);
    pieces.at(-1)!.y.push(value);
  });
  return pieces.filter((piece) => piece.x.length > 1);
}

function nameOfNow({ y }: FormulaCurveRows, now: { readonly x: number; readonly y: number }): PlotName {
  return nameOf('now', `now ${text(y, now.y)}`, 'ink', true, { kind: 'point', ...now, side: 'right' });
}

function shownAs({ unit }: FormulaColumn, step: number): ShownQuantity {
  const same = (value: number): number => value;
  const withUnit = (value: number): string => joined(numberText(value), unit);
  return { unit, words: unit, step, toShown: same, fromShown: same, text: numberText, withUnit };
}

function text({ unit }: FormulaColumn, value: number): string {
  return joined(numberText(value), unit);
}

function describe({ x, y, now }: FormulaCurveRows, sorted: ReturnType<typeof rising>): string {
  const rows = sorted.y.numbers.flatMap((value, k) => (Number.isFinite(value) ? [k] : []));
  const at = (k: number): string => `${text(y, sorted.y.numbers[k]!)} at ${text(x, sorted.x.numbers[k]!)}`;
  const ends = rows.length === 0 ? 'no value in that range' : `from ${at(rows[0]!)} to ${at(rows.at(-1)!)}`;
  const [low, high] = extentOf([y.numbers.filter(Number.isFinite)]);
  const between = rows.length === 0 ? '' : `; lowest ${text(y, low)}, highest ${text(y, high)}`;
  const here = now === null ? '' : `; now ${text(y, now.y)} at ${text(x, now.x)}`;
  return `${y.name} against ${x.name}, ${ends}${between}${here}.`;
}
