// The printed sheet of a panel: grid, base axis and tick labels, made by Observable Plot. It is made
// anew only when domain, ticks or size change; the marks on it are updated in place.

import { axisX, axisY, gridY, plot, ruleY } from '@observablehq/plot';
import type { Axis, Panel } from '../../figures/figure.js';

/** Which sheet a panel needs; two panels with equal keys share their sheet. */
export function sheetKey(x: Axis, panel: Panel, width: number, labelsX: boolean): string {
  const of = (axis: Axis): string => `${axis.domain.join()}|${axis.ticks.map(axis.tickText).join()}`;
  return [of(x), of(panel.y), width, panel.height, labelsX, panel.framed].join(';');
}

export function drawSheet(x: Axis, panel: Panel, width: number, labelsX: boolean): SVGElement {
  const { y } = panel;
  const inner = y.ticks.filter((tick) => tick > y.domain[0]);
  const base = panel.framed ? [] : [gridY(inner, { stroke: 'var(--rule)', strokeOpacity: 1 })];
  const labels = labelsX
    ? [
        axisX(x.ticks, {
          tickSize: 5,
          tickPadding: 4,
          label: null,
          tickFormat: (shown: number) => x.tickText(shown),
          stroke: 'var(--print)',
          fill: 'var(--soft)',
        }),
      ]
    : [];
  const sheet = plot({
    className: 'kp-sheet',
    width,
    height: panel.height,
    margin: 0,
    x: { type: 'linear', domain: [...x.domain], range: [0, width], axis: null },
    y: { type: 'linear', domain: [...y.domain], range: [panel.height, 0], axis: null },
    marks: [
      ...base,
      axisY(y.ticks, {
        tickSize: 0,
        tickPadding: 8,
        label: null,
        tickFormat: (shown: number) => y.tickText(shown),
        fill: 'var(--soft)',
      }),
      ...labels,
      ruleY([y.domain[0]], { stroke: 'var(--print)' }),
    ],
  }) as SVGElement;
  // Plot brings a style sheet along in each figure, which a strict content policy refuses; what it says that
  // matters here stands in figure.css.
  for (const style of sheet.querySelectorAll('style')) style.remove();
  return sheet;
}
