// The reader's own rows, a panel a column over the one they are drawn along, with the page's curve of the same quantity.

import type { DataColumn, DataFigureRows, DataPanel } from '../../rows/data.js';
import { extentOf, roundAxis } from '../axes.js';
import type { Axis, DataTable, Drawing, FigureSize, Panel } from '../figure.js';
import { nameOf } from '../names.js';
import { curve, dots, panelOf, type Plotted } from './theme.js';

/** Px of the plot rectangle: one column, or several. */
const height = { one: { wide: 300, narrow: 250 }, each: { wide: 150, narrow: 130 } };
const mostTableRows = 200;

export function ownData(rows: DataFigureRows, size: FigureSize): Drawing {
  const { along, panels } = rows;
  const x = axisOf(
    along,
    [along.numbers, ...panels.map(({ curve: drawn }) => drawn?.x ?? [])],
    size.width < 480 ? 4 : 6,
  );
  return {
    description: panels.map((panel) => described(panel, along)).join(' '),
    x: { ...x, unit: along.unit === '' ? 'number' : along.unit },
    panels: panels.map((panel, index) => drawnPanel(panel, `column ${String(index)}`, along, x, panels.length, size)),
    rightRoom: 0,
    cursor: null,
    readOut: null,
    table: (fine) => table(rows, fine ?? false),
  };
}

function drawnPanel(
  { column, curve: run }: DataPanel,
  key: string,
  along: DataColumn,
  x: Axis,
  count: number,
  size: FigureSize,
): Panel {
  const seen = Array.from(along.numbers, (_, i) => i).filter(
    (i) => Number.isFinite(along.numbers[i]) && Number.isFinite(column.numbers[i]),
  );
  const of = (values: DataColumn['numbers']): number[] => seen.map((i) => values[i]!);
  const plotted: Plotted[] = [
    ...(run === null ? [] : [curve('run', { hand: 'ink', weight: 'second', shape: 'monotone' }, run.x, run.y)]),
    dots('own', { form: 'disc', filled: false, hand: 'ink' }, of(along.numbers), of(column.numbers)),
  ];
  const y = axisOf(column, [column.numbers, run?.y ?? []], count > 1 ? 3 : 5);
  return panelOf({
    key,
    height: (count > 1 ? height.each : height.one)[size.layout],
    y: { ...y, unit: column.unit === '' ? 'number' : column.unit },
    plotted,
    names:
      run === null
        ? []
        : [nameOf('run', run.label, 'ink', false, { kind: 'curve', mark: 'run', at: 0.6, side: 'above' })],
    cursorSeries: [],
    rightScale: null,
  });
}

function axisOf({ title, unit }: DataColumn, columns: readonly DataColumn['numbers'][], ticks: number): Axis {
  return roundAxis({ title, unit }, extentOf(columns), { steps: ticks, ticks });
}

function described({ column, curve: run }: DataPanel, along: DataColumn): string {
  const seen = Array.from(column.numbers).filter(Number.isFinite);
  const [low, high] = extentOf([seen]);
  const unit = column.unit === '' ? '' : ` ${column.unit}`;
  const beside = run === null ? '' : `; beside it ${run.label}`;
  return `${column.title} against ${along.title}: ${String(seen.length)} of your own rows, ${column.text(low)} to ${column.text(high)}${unit}${beside}.`;
}

function table({ along, panels }: DataFigureRows, fine: boolean): DataTable {
  const columns = [along, ...panels.map(({ column }) => column)];
  const count = fine ? along.numbers.length : Math.min(along.numbers.length, mostTableRows);
  return {
    caption: 'Your own data in numbers',
    columns: columns.map(({ title, unit }) => ({ title, unit })),
    rows: Array.from({ length: count }, (_, i) =>
      columns.map(({ numbers, text }) => (Number.isFinite(numbers[i]) ? text(numbers[i]!) : '–')),
    ),
  };
}
