// One mark, made once and then updated in place.

import type { Column } from '../../rows/shown.js';
import type { Mark } from '../../figures/figure.js';
import { pathThrough } from './path.js';
import { pointShape } from './point-shapes.js';
import { marginGap } from './geometry.js';
import { setAttributes, svgElement } from './svg.js';

/** Scales of a panel and the ids its marks refer to. */
export interface MarkContext {
  readonly x: (shown: number) => number;
  readonly y: (shown: number) => number;
  readonly width: number;
  readonly height: number;
  readonly clip: string;
  readonly hatch: string;
  readonly wide: boolean;
}

/** Px a line runs on into the gap before its name. */
const runOut = marginGap - 10;
const tick = 7;
/** Px that the tick of a warning goes up and down from its curve. */
export const warningTick = tick;
/** Px from the edge at which brackets stand: above the base axis, or under the top with room for their names. */
const bracketFromBase = 8;
const bracketFromTop = 24;
/** Px between points of a smooth curve below which one is passed over. */
const nearest = 1.5;

export function makeMark(mark: Mark): SVGElement {
  switch (mark.kind) {
    case 'curve':
      return svgElement('path', { class: `kp-curve ${mark.hand} ${mark.weight}` });
    case 'level':
      return svgElement('line', { class: `kp-level ${mark.hand} ${mark.weight}`, x1: 0 });
    case 'band':
      return svgElement('path', { class: 'kp-band' });
    case 'points':
      return svgElement('path', { class: `kp-points${mark.filled ? '' : ' open'}` });
    case 'hatch':
      return svgElement('rect', { class: 'kp-hatch', x: 0 });
    case 'dot':
      return svgElement('circle', { class: `kp-dot ${mark.hand}`, r: 4.5 });
    case 'box':
      return svgElement('rect', { class: 'kp-box' });
    case 'bracket':
    case 'warning': {
      const group = svgElement('g', { class: `kp-${mark.kind}` });
      group.append(svgElement('path'));
      return group;
    }
    case 'measure': {
      const group = svgElement('g', { class: 'kp-measure' });
      group.append(svgElement('path', { class: 'drop' }), svgElement('path', { class: 'length' }));
      return group;
    }
  }
}

export function updateMark(node: SVGElement, mark: Mark, context: MarkContext): void {
  const { x, y } = context;
  switch (mark.kind) {
    case 'curve': {
      setAttributes(node, {
        class: `kp-curve ${mark.hand} ${mark.weight}`,
        'clip-path': `url(#${context.clip})`,
        d: pathOf(mark, context),
      });
      return;
    }
    case 'level': {
      const end = context.width + (mark.reach === 'margin' && context.wide ? runOut : 0);
      setAttributes(node, { x2: end, y1: y(mark.y), y2: y(mark.y) });
      return;
    }
    case 'band': {
      const side = (column: Column): [number, number][] =>
        Array.from(mark.x, (at, i): [number, number] => [x(at), y(column[i]!)]);
      const d = pathThrough([...side(mark.low), ...side(mark.high).reverse()], false);
      setAttributes(node, { 'clip-path': `url(#${context.clip})`, d: `${d}Z` });
      return;
    }
    case 'points': {
      const d = Array.from(mark.x, (at, i) => pointShape(mark.form, x(at), y(mark.y[i]!))).join('');
      setAttributes(node, { 'clip-path': `url(#${context.clip})`, d });
      return;
    }
    case 'hatch': {
      const height = Math.max(0, y(mark.from) - y(mark.to));
      setAttributes(node, { y: y(mark.to), width: context.width, height, fill: `url(#${context.hatch})` });
      return;
    }
    case 'dot':
      setAttributes(node, { class: `kp-dot ${mark.hand}`, cx: x(mark.x), cy: y(mark.y) });
      return;
    case 'box': {
      const left = x(mark.x[0]);
      const top = y(mark.y[1]);
      setAttributes(node, { x: left, y: top, width: x(mark.x[1]) - left, height: y(mark.y[0]) - top });
      return;
    }
    case 'bracket':
      updateBracket(node, mark, context);
      return;
    case 'warning':
      updateWarning(node, mark, context);
      return;
    case 'measure':
      updateMeasure(node, mark, context);
  }
}

/** Height of a bracket in its plot, px from the top. */
export function bracketHeight({ along }: Extract<Mark, { kind: 'bracket' }>, height: number): number {
  return along === 'base' ? height - bracketFromBase : bracketFromTop;
}

function updateMeasure(node: SVGElement, mark: Extract<Mark, { kind: 'measure' }>, context: MarkContext): void {
  const [drop, length] = node.children;
  const from = context.x(mark.from);
  const to = context.x(mark.to);
  const at = context.y(mark.at);
  setAttributes(drop!, { d: `M${to},${context.y(mark.dropFrom)}V${at - tick}` });
  setAttributes(length!, { d: `M${from},${at - tick}v${2 * tick}M${from},${at}H${to}M${to},${at - tick}v${2 * tick}` });
}

function updateBracket(node: SVGElement, mark: Extract<Mark, { kind: 'bracket' }>, context: MarkContext): void {
  const from = context.x(mark.from) + 1;
  const to = Math.max(from + 1, context.x(mark.to) - 1);
  const at = bracketHeight(mark, context.height);
  setAttributes(node.children[0]!, { d: `M${from},${at + 5}V${at}H${to}V${at + 5}` });
}

function updateWarning(node: SVGElement, mark: Extract<Mark, { kind: 'warning' }>, context: MarkContext): void {
  setAttributes(node.children[0]!, { d: `M${context.x(mark.x)},${context.y(mark.y) - tick}v${2 * tick}` });
}

function pathOf(mark: Extract<Mark, { kind: 'curve' }>, context: MarkContext): string {
  const smooth = mark.shape === 'monotone';
  const points = pointsOf(mark, context, smooth ? nearest : 0);
  return pathThrough(points, smooth);
}

// Points of a smooth curve nearer to the one before than the eye can tell are passed over; ends are kept.
function pointsOf({ x, y }: { x: Column; y: Column }, context: MarkContext, apart: number): [number, number][] {
  const points: [number, number][] = [];
  let [lastX, lastY] = [-Infinity, -Infinity];
  for (let i = 0; i < x.length; i++) {
    const px = context.x(x[i]!);
    const py = context.y(y[i]!);
    const near = Math.abs(px - lastX) < apart && Math.abs(py - lastY) < apart;
    if (near && i < x.length - 1) continue;
    points.push([px, py]);
    [lastX, lastY] = [px, py];
  }
  return points;
}
