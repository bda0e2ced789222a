// One panel of the figure of a run, from its rows.

import type { RunCurve, RunFigureRows, RunPanel } from '../../rows/run.js';
import { extentOf, roundAxis, strengthAxis } from '../axes.js';
import type { Axis, CursorSeries, FigureSize, Mark, Panel, PlotName } from '../figure.js';
import { levelMarks, levelName } from '../levels.js';
import { nameOf } from '../names.js';
import { readAlong } from './readings.js';

/** Px above the base axis at which a length is drawn. */
const measureHeight = 24;

export function drawPanel(panel: RunPanel, rows: RunFigureRows, x: Axis, size: FigureSize): Panel {
  const { toShown } = panel.quantity;
  const height = panel.height[size.layout];
  const curves = panel.curves.map((curve) => ({
    curve,
    x: Float64Array.from(curve.along, rows.along.quantity.toShown),
    y: Float64Array.from(curve.values, toShown),
  }));
  const y = axisOf(panel, rows);
  const levels = panel.levels.map((level) => ({ ...level, at: toShown(level.at) }));
  const marks: Mark[] = [
    ...levels.flatMap((level) => levelMarks(level, y)),
    ...curves.map(({ curve, ...drawn }): Mark => {
      const { key, hand, weight } = curve;
      return { kind: 'curve', key, hand, weight, shape: 'monotone', ...drawn };
    }),
  ];
  const names: PlotName[] = [
    ...levels.filter(({ label }) => label !== '').map(levelName),
    ...panel.curves.filter(({ label }) => label !== '').map(curveName),
  ];
  const readers = [...curves].reverse().filter(({ curve }) => curve.read);
  marks.push(...measureMark(panel, rows, y, size), ...onTheRun(panel, rows));
  return {
    key: panel.key,
    height,
    y,
    marks,
    names,
    cursorSeries: readers.map(({ curve, ...drawn }): CursorSeries => ({ hand: curve.hand, at: readAlong(drawn) })),
    framed: false,
    rightScale: null,
  };
}

function axisOf({ axis, curves, levels, quantity, title }: RunPanel, { units }: RunFigureRows): Axis {
  if (axis.kind === 'strength') return strengthAxis(units, axis.from, title);
  const [low, high] = extentOf([
    ...curves.map(({ values }) => values),
    levels.map(({ at }) => at),
    [...axis.takesIn],
  ]).map(quantity.toShown);
  return roundAxis({ title, unit: quantity.unit }, [low!, high!], { steps: 4, ticks: axis.ticks });
}

function curveName({ key, label, hand, weight, side }: RunCurve): PlotName {
  const at = side === 'below' ? 0.2 : 0.3;
  return nameOf(key, label, hand, weight === 'result', { kind: 'curve', mark: key, at, side });
}

function measureMark({ measure, quantity, height }: RunPanel, rows: RunFigureRows, y: Axis, size: FigureSize): Mark[] {
  if (measure === null) return [];
  const at = y.domain[0] + (measureHeight / height[size.layout]) * (y.domain[1] - y.domain[0]);
  return [
    {
      kind: 'measure',
      key: 'measure',
      from: 0,
      to: rows.along.quantity.toShown(measure.to),
      at,
      dropFrom: measure.falls ? quantity.toShown(measure.value) : at,
      words: size.layout === 'wide' ? measure.words : measure.narrowWords,
    },
  ];
}

/** Brackets of the steps and ticks of what goes wrong, where they belong to this panel. */
function onTheRun({ key, quantity }: RunPanel, { along, phases, phasesIn, warnings }: RunFigureRows): Mark[] {
  const { toShown } = along.quantity;
  const steps = key === phasesIn.panel ? phases : [];
  return [
    ...steps.map(({ from, to, label }, i): Mark => ({
      kind: 'bracket',
      key: `phase ${String(i)}`,
      along: phasesIn.along,
      from: toShown(from),
      to: toShown(to),
      words: label,
    })),
    ...warnings
      .filter(({ panel }) => panel === key)
      .map((one): Mark => ({
        kind: 'warning',
        key: one.key,
        x: toShown(one.at),
        y: quantity.toShown(one.value),
        words: one.words,
      })),
  ];
}
