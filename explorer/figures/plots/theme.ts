// The house's look for Observable Plot: its axes, its type and the three hands, and the sheet that holds them. A figure
// that does not follow the hand is a specification in these words; names, cursor, table and export are those of every
// figure. Plot is loaded with the first such figure, never before.

import {
  areaY,
  axisX,
  axisY,
  dot as plotDot,
  gridY,
  line as plotLine,
  plot,
  ruleY,
  type Markish,
} from '@observablehq/plot';
import '../../styles/plot.css';
import type { Column, CurveWeight, Hand, PointForm } from '../../rows/shown.js';
import type { Axis, CursorSeries, Mark, Panel, PlotName, RightScale } from '../figure.js';

/** What Plot draws, and its outline: what names keep clear of and belong to. */
export interface Plotted {
  readonly marks: readonly Markish[];
  readonly outline: readonly Mark[];
}

/** One plot rectangle; the marks back to front. */
export interface PlotPanel {
  readonly key: string;
  readonly height: number;
  readonly y: Axis;
  readonly plotted: readonly Plotted[];
  readonly names: readonly PlotName[];
  readonly cursorSeries: readonly CursorSeries[];
  readonly rightScale: RightScale | null;
}

/** Radius that makes the forms look equally large, px. */
const radius: Readonly<Record<PointForm, number>> = { disc: 3.5, square: 3.5, diamond: 4 };
const symbol = { disc: 'circle', square: 'square', diamond: 'diamond' } as const;
/** Px between the plot and the labels beside it, and ticks and labels under it. */
const beside = 7.5;
const tickLength = 5;

/** A line through points; NaN breaks it. */
export function curve(
  key: string,
  look: { readonly hand: Hand; readonly weight: CurveWeight; readonly shape: 'monotone' | 'straight' },
  x: Column,
  y: Column,
): Plotted {
  const { hand, weight, shape } = look;
  const mark = plotLine(points(x, y), {
    x: 'x',
    y: 'y',
    curve: shape === 'monotone' ? 'monotone-x' : 'linear',
    className: `kp-curve ${hand} ${weight}`,
  });
  return { marks: [mark], outline: [{ kind: 'curve', key, hand, weight, shape, x, y }] };
}

/** Points told apart by form and by filled or open, in print or in the reader's ink. */
export function dots(
  key: string,
  look: { readonly form: PointForm; readonly filled: boolean; readonly hand: Hand },
  x: Column,
  y: Column,
): Plotted {
  const { form, filled, hand } = look;
  const mark = plotDot(points(x, y), {
    x: 'x',
    y: 'y',
    symbol: symbol[form],
    r: radius[form],
    className: `kp-points ${hand}${filled ? '' : ' open'}`,
  });
  return { marks: [mark], outline: [{ kind: 'points', key, form, filled, x, y }] };
}

/** One place that matters. */
export function dot(key: string, hand: Hand, x: number, y: number): Plotted {
  const mark = plotDot([{ x, y }], { x: 'x', y: 'y', r: 4.5, className: `kp-dot ${hand}` });
  return { marks: [mark], outline: [{ kind: 'dot', key, hand, x, y }] };
}

/** Uncertainty between two columns, drawn as far as the axis goes. */
export function band(key: string, x: Column, low: Column, high: Column, [from, to]: Axis['domain']): Plotted {
  const kept = (shown: number): number => Math.min(to, Math.max(from, shown));
  const rows = Array.from(x, (at, i) => ({ x: at, low: kept(low[i]!), high: kept(high[i]!) }));
  return {
    marks: [areaY(rows, { x: 'x', y1: 'low', y2: 'high', className: 'kp-band' })],
    outline: [{ kind: 'band', key, x, low, high }],
  };
}

/** A level line across the plot. */
export function level(key: string, hand: Hand, y: number): Plotted {
  return {
    marks: [ruleY([y], { className: `kp-level ${hand} minor` })],
    outline: [{ kind: 'level', key, hand, weight: 'minor', y, reach: 'plot' }],
  };
}

/** A panel as every figure has them, drawn by Plot. */
export function panelOf({ plotted, ...panel }: PlotPanel): Panel {
  const marks = plotted.flatMap((one) => one.marks);
  return {
    ...panel,
    marks: plotted.flatMap((one) => one.outline),
    framed: false,
    drawn: (x, width, labelsX) => sheet(marks, x, panel, width, labelsX),
  };
}

function points(x: Column, y: Column): { readonly x: number; readonly y: number }[] {
  return Array.from(x, (at, i) => ({ x: at, y: y[i]! }));
}

/** Grid, axes and marks; without the style sheet that Plot puts in, and without names that no reader can use there. */
function sheet(
  marks: readonly Markish[],
  x: Axis,
  { y, height }: Pick<Panel, 'y' | 'height'>,
  width: number,
  labelsX: boolean,
): SVGElement {
  const labels = { label: null, className: 'kp-ticks' } as const;
  const drawn = plot({
    width,
    height,
    margin: 0,
    x: { type: x.scale ?? 'linear', domain: [...x.domain], range: [0, width], axis: null },
    y: { type: 'linear', domain: [...y.domain], range: [height, 0], axis: null },
    marks: [
      gridY(
        y.ticks.filter((tick) => tick > y.domain[0]),
        { className: 'kp-grid', strokeOpacity: 1 },
      ),
      axisY([...y.ticks], { ...labels, tickSize: 0, tickPadding: beside, text: (tick: number) => y.tickText(tick) }),
      ...(labelsX
        ? [
            axisX([...x.ticks], {
              ...labels,
              tickSize: tickLength,
              // As a text and not as a format: of a log axis Plot would leave labels out.
              text: (tick: number) => x.tickText(tick),
            }),
          ]
        : []),
      ruleY([y.domain[0]], { className: 'kp-base' }),
      ...marks,
    ],
  });
  const group = document.createElementNS('http://www.w3.org/2000/svg', 'g');
  group.setAttribute('class', 'kp-sheet kp-plot');
  // Plot says so on the sheet itself, which stays behind.
  group.setAttribute('text-anchor', 'middle');
  for (const child of [...drawn.children]) if (child.localName !== 'style') group.append(child);
  for (const one of group.querySelectorAll('*')) {
    for (const name of ['aria-label', 'aria-description', 'aria-hidden']) one.removeAttribute(name);
  }
  return group;
}
