// The printed sheet of a panel: grid, base axis and tick labels. It is made anew only when domain, ticks or size
// change; the marks on it are updated in place. Lines stand half a px in, so that one px of line is one px of screen.

import type { Axis, Panel } from '../../figures/figure.js';
import { svgElement, trimmed, type Attributes } from './svg.js';

const tickLength = 5;
/** Gap between the plot and the labels beside it, and between the ticks and those under it, px. */
const gap = { y: 7.5, x: 4 } as const;
/** From the middle of a label, and from its top, to the line it stands on, in its size. */
const middle = '0.32em';
const top = '0.71em';

/** Which sheet a panel needs; two panels with equal keys share their sheet. */
export function sheetKey(x: Axis, panel: Panel, width: number, labelsX: boolean): string {
  const of = (axis: Axis): string => `${axis.domain.join()}|${axis.ticks.map(axis.tickText).join()}`;
  return [of(x), of(panel.y), width, panel.height, labelsX, panel.framed].join(';');
}

export function drawSheet(x: Axis, panel: Panel, width: number, labelsX: boolean): SVGElement {
  const { y, height, framed } = panel;
  const across = (shown: number): number => width * share(x, shown);
  const down = (shown: number): number => height * (1 - share(y, shown));
  const sheet = svgElement('g', { class: 'kp-sheet' });
  if (!framed) {
    const inner = y.ticks.filter((tick) => tick > y.domain[0]);
    sheet.append(
      lines(
        'kp-grid',
        inner.map((tick) => `M0 ${halfIn(down(tick))}H${trimmed(width)}`),
      ),
    );
  }
  sheet.append(
    labels(y, { 'text-anchor': 'end' }, (tick) => ({ x: -gap.y, y: trimmed(down(tick) + 0.5), dy: middle })),
  );
  if (labelsX) {
    const below = height + tickLength + gap.x + 0.5;
    sheet.append(
      lines(
        'kp-base',
        x.ticks.map((tick) => `M${halfIn(across(tick))} ${trimmed(height)}v${String(tickLength)}`),
      ),
      labels(x, { 'text-anchor': 'middle' }, (tick) => ({ x: trimmed(across(tick) + 0.5), y: below, dy: top })),
    );
  }
  sheet.append(lines('kp-base', [`M0 ${halfIn(height)}H${trimmed(width)}`]));
  return sheet;
}

/** Where a number stands on an axis, 0 at its start and 1 at its end. */
function share({ domain: [from, to] }: Axis, shown: number): number {
  return (shown - from) / (to - from);
}

function halfIn(px: number): string {
  return trimmed(px + 0.5);
}

function lines(look: string, paths: readonly string[]): SVGElement {
  return svgElement('path', { class: look, d: paths.join('') });
}

function labels(axis: Axis, attributes: Attributes, place: (tick: number) => Attributes): SVGElement {
  const group = svgElement('g', { class: 'kp-ticks', ...attributes });
  for (const tick of axis.ticks) {
    const text = svgElement('text', place(tick));
    text.textContent = axis.tickText(tick);
    group.append(text);
  }
  return group;
}
