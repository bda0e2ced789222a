// The figure of a run: panels one under another on one axis of what is collected or of time, each with its curves, its
// levels and a length; brackets for the steps of a run sheet, red ticks where something goes wrong.

import type { RunFigureRows, RunPanel } from '../../rows/run.js';
import { alongAxis } from '../axes.js';
import type { Drawing, FigureSize } from '../figure.js';
import { drawPanel } from './panel.js';
import { readOutOf, tableOf } from './readings.js';

export function runFigure(rows: RunFigureRows, size: FigureSize): Drawing {
  const { along, readings } = rows;
  const longest = lengthOf(rows);
  const x = alongAxis(along.quantity, along.title, longest, size.width);
  const { step, toShown, fromShown } = along.quantity;
  return {
    description: rows.panels.map((panel, index) => described(panel, index, rows)).join(' '),
    x,
    panels: rows.panels.map((panel) => drawPanel(panel, rows, x, size)),
    rightRoom: 0,
    cursor: {
      quantity: along.quantity,
      start: fromShown(Math.round((toShown(longest) * rows.start) / step) * step),
      range: [0, longest],
    },
    readOut: readOutOf(readings, along.quantity),
    table: (fine) => tableOf(readings, along, fine),
  };
}

/** As far as any curve goes, SI. */
function lengthOf({ panels }: RunFigureRows): number {
  let longest = 0;
  for (const { curves } of panels) {
    for (const { along } of curves) if (along.length > 0) longest = Math.max(longest, along[along.length - 1]!);
  }
  return longest;
}

/** One sentence a panel, with its numbers. */
function described(panel: RunPanel, index: number, rows: RunFigureRows): string {
  const { quantity, curves, levels, says } = panel;
  const lines = [...curves]
    .reverse()
    .filter(({ read }) => read)
    .map(({ label, along, values }) => {
      const name = label === '' ? '' : `${label}: `;
      const last = values.length - 1;
      if (last < 0) return `${name}nothing`;
      const most = Math.max(...Array.from(values).filter((value) => !Number.isNaN(value)));
      const [first, end] = [values[0]!, values[last]!];
      // As printed, so that what is said does not hang on digits nobody sees.
      const printed = (si: number): number => Math.round(10 * quantity.toShown(si));
      const over =
        printed(most) > 1.01 * Math.max(printed(first), printed(end)) ? `, at most ${quantity.withUnit(most)}` : '';
      const until = rows.along.quantity.withUnit(along[last]!);
      return `${name}from ${quantity.withUnit(first)} to ${quantity.withUnit(end)} after ${until}${over}`;
    });
  const known = levels.map(({ label }) => label).filter((label) => label !== '');
  const measure = panel.measure === null ? [] : [panel.measure.words];
  const more = index < rows.panels.length - 1 ? [] : alongTheRun(rows);
  return `${panel.subject} against ${rows.along.title}; ${[...lines, ...measure, ...known, ...says, ...more].join('; ')}.`;
}

function alongTheRun({ phases, warnings, along }: RunFigureRows): string[] {
  const steps = phases.map(({ label, to }) => `${label} until ${along.quantity.withUnit(to)}`);
  return [...steps, ...warnings.map(({ words, at }) => `${words} at ${along.quantity.withUnit(at)}`)];
}
