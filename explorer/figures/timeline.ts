// What goes on in a still along the clock: panels one under another on one axis of time, brackets for the steps of the run sheet,
// red ticks where something goes wrong.

import type { TimelinePanel, TimelineRows } from '../rows/timeline.js';
import { extentOf, roundAxis } from './axes.js';
import { pick, thinned, valueAt } from './columns.js';
import type { Axis, CurveName, CursorSeries, Drawing, FigureSize, MarginName, Mark, Panel } from './figure.js';
import { curvePlaces } from './name-places.js';
import { cursorSeries } from './run-series.js';

const narrowShare = 0.86;
const tableRows = 25;

export function timeline(rows: TimelineRows, size: FigureSize): Drawing {
  const { time } = rows.units;
  const all = rows.panels.flatMap(({ series }) => series);
  const longest = Math.max(0, ...all.map(({ time_s }) => time_s[time_s.length - 1] ?? 0));
  const x = roundAxis({ title: `${time.words} ${rows.since}`, unit: time.unit }, [0, time.toShown(longest)], {
    steps: 6,
    ticks: size.width < 480 ? 4 : 6,
  });
  return {
    description: describe(rows),
    x,
    panels: rows.panels.map((panel) => panelOf(panel, rows, x, size)),
    rightRoom: 0,
    cursor: { quantity: time, start: 0.4 * longest, range: [0, longest] },
    readOut: {
      at: (at) => time.withUnit(at),
      note: (at) => rows.phases.find((phase) => at >= phase.from_s && at < phase.to_s)?.label ?? '',
      columns: [{ label: rows.since, hand: 'ink' }],
      rows: rows.panels.flatMap(({ quantity, series }) =>
        series
          .filter(({ hand }) => hand !== 'pencil')
          .map(({ label, time_s, values }) => ({
            label: `${label}, ${quantity.unit}`,
            texts: (at: number) => [quantity.text(valueAt(time_s, values, at))],
          })),
      ),
    },
    table: () => ({
      caption: rows.subject,
      columns: [
        { title: 'time', unit: time.unit },
        ...rows.panels.flatMap(({ quantity, series }) =>
          series.map(({ label }) => ({ title: label, unit: quantity.unit })),
        ),
      ],
      rows: thinned(all[0]?.time_s.length ?? 0, tableRows).map((i) => {
        const at = all[0]!.time_s[i]!;
        const texts = rows.panels.flatMap(({ quantity, series }) =>
          series.map(({ time_s, values }) => quantity.text(valueAt(time_s, values, at))),
        );
        return [time.text(at), ...texts];
      }),
    }),
  };
}

function panelOf(panel: TimelinePanel, rows: TimelineRows, x: Axis, size: FigureSize): Panel {
  const { quantity, series } = panel;
  const { time } = rows.units;
  const height = Math.round(panel.height * (size.layout === 'wide' ? 1 : narrowShare));
  const [low, high] = extentOf([
    ...series.map(({ values }) => values),
    panel.takesIn,
    panel.levels.map(({ at }) => at),
  ]);
  const [bottom, top] = [quantity.toShown(low), quantity.toShown(high)];
  const y = roundAxis({ title: panel.title, unit: quantity.unit }, [bottom, Math.max(top, bottom + 1e-9)], {
    steps: 5,
    ticks: height > 150 ? 5 : 3,
  });
  const marks: Mark[] = [];
  const names: CurveName[] = [];
  const marginNames: MarginName[] = [];
  const readers: CursorSeries[] = [];
  for (const level of panel.levels) {
    const at = quantity.toShown(level.at);
    marks.push({ kind: 'level', key: level.key, hand: level.hand, weight: 'minor', y: at, reach: 'plot' });
    const places = [
      { x: x.domain[1], y: at, dx: 0, dy: -12, anchor: 'end' as const },
      { x: x.domain[1], y: at, dx: 0, dy: 14, anchor: 'end' as const },
    ];
    names.push({ key: level.key, text: level.label, hand: level.hand, bold: false, optional: true, places });
  }
  for (const { key, label, hand, weight, time_s, values } of [...series].reverse()) {
    const all = Array.from(time_s, (_t, i) => i);
    const curve = { x: pick(time_s, all, time.toShown), y: pick(values, all, quantity.toShown) };
    marks.push({ kind: 'curve', key, hand, weight, shape: 'monotone', ...curve });
    if (hand !== 'pencil') readers.unshift(cursorSeries(hand, curve));
    if (label === '') continue;
    const bold = weight === 'result';
    const end = curve.y[curve.y.length - 1] ?? 0;
    const reaches = (curve.x[curve.x.length - 1] ?? 0) > 0.85 * x.domain[1];
    if (size.layout === 'wide' && reaches)
      marginNames.push({ key, text: label, note: '', y: end, hand, bold, at: 'end' });
    else {
      const places = curvePlaces({ ...curve, xAxis: x, yAxis: y, width: size.width, height }, 'above');
      names.push({ key, text: label, hand, bold, optional: false, places });
    }
  }
  if (panel.key === rows.phasesIn.panel) {
    rows.phases.forEach(({ from_s, to_s, label }, i) => {
      const [from, to] = [time.toShown(from_s), time.toShown(to_s)];
      marks.push({ kind: 'bracket', key: `phase ${String(i)}`, along: rows.phasesIn.along, from, to, words: label });
    });
  }
  for (const { key, panel: where, at_s, value, words } of rows.warnings) {
    if (where !== panel.key) continue;
    marks.push({ kind: 'warning', key, x: time.toShown(at_s), y: quantity.toShown(value), words });
  }
  return {
    key: panel.key,
    height,
    y,
    marks,
    names,
    marginNames,
    cursorSeries: readers,
    framed: false,
    rightScale: null,
  };
}

function describe({ subject, since, panels, phases, warnings, units }: TimelineRows): string {
  const curves = panels.flatMap(({ title, quantity, series }) =>
    series.map(({ label, values }) => {
      const [low, high] = extentOf([values]);
      const end = values[values.length - 1] ?? NaN;
      const name = label === '' ? title : `${title} of ${label}`;
      return `${name} ${quantity.text(low)} to ${quantity.withUnit(high)}, in the end ${quantity.withUnit(end)}`;
    }),
  );
  const steps = phases.map(({ label, to_s }) => `${label} until ${units.time.withUnit(to_s)}`);
  const wrong = warnings.map(({ words, at_s }) => `${words} at ${units.time.withUnit(at_s)}`);
  return `${subject} against ${units.time.words} ${since}; ${[...curves, ...steps, ...wrong].join('; ')}.`;
}
