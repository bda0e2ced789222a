// One panel on the page: its sheet, marks, names and right-hand scale, each updated in place.

import type { Axis, FigureSize, Mark, Panel, PlotName } from '../../figures/figure.js';
import { marginGap } from './geometry.js';
import { makeMark, updateMark } from './marks.js';
import type { MarkContext } from './marks.js';
import { measureText } from './measure-text.js';
import { namesOfPanel } from './names/in-plot.js';
import { noteBelow, spreadEnds, spreadMargin } from './names/margin-names.js';
import { placeNames } from './names/place-names.js';
import type { PlacedName } from './names/wanted.js';
import { drawSheet, sheetKey } from './sheet.js';
import { toPixels } from './pixels.js';
import { KeyedChildren, setAttributes, setText, svgElement, trimmed } from './svg.js';

export interface PanelPlace {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly titleY: number;
  readonly titleX: number;
  readonly isLast: boolean;
  readonly layout: FigureSize['layout'];
  /** Where the cursor stands, in shown units along x; null where there is none. */
  readonly cursorShown: number | null;
}

export class PanelPainter {
  readonly root = svgElement('g', { class: 'kp-panel' });
  readonly #sheet = svgElement('g');
  readonly #frame = svgElement('rect', { class: 'kp-frame' });
  readonly #clip = svgElement('rect');
  readonly #title = svgElement('text', { class: 'kp-title' });
  readonly #unit = svgElement('tspan', { class: 'unit' });
  readonly #quantity = svgElement('tspan');
  readonly #marks: KeyedChildren<Mark, SVGElement>;
  readonly #leaders = svgElement('path', { class: 'kp-leader' });
  readonly #names: KeyedChildren<PlacedName, SVGTextElement>;
  readonly #margin: KeyedChildren<BesidePlot, SVGTextElement>;
  readonly #scale = svgElement('g', { class: 'kp-right-scale' });
  #sheetKey = '';
  #context: MarkContext;

  constructor(id: string, hatch: string) {
    this.#context = { x: Number, y: Number, width: 0, height: 0, clip: `${id}-clip`, hatch, wide: true };
    const clipPath = svgElement('clipPath', { id: `${id}-clip` });
    clipPath.append(this.#clip);
    const [marks, names, margin] = [svgElement('g'), svgElement('g'), svgElement('g')];
    this.#title.append(this.#quantity, this.#unit);
    this.root.append(clipPath, this.#title, this.#sheet, marks, this.#scale, this.#leaders, names, margin);
    this.#marks = new KeyedChildren(marks, makeMark, (node, mark) => updateMark(node, mark, this.#context));
    this.#names = new KeyedChildren(names, () => svgElement('text'), updateName);
    this.#margin = new KeyedChildren(margin, makeMarginName, updateMarginName);
  }

  paint(xAxis: Axis, panel: Panel, place: PanelPlace): void {
    const { width } = place;
    const x = toPixels(xAxis, width, 'right');
    const y = toPixels(panel.y, panel.height, 'up');
    this.#context = { ...this.#context, x, y, width, height: panel.height, wide: place.layout === 'wide' };
    setAttributes(this.root, { transform: `translate(${place.left},${place.top})` });
    setAttributes(this.#title, { x: place.titleX - place.left, y: place.titleY - place.top });
    setText(this.#quantity, panel.y.title);
    setText(this.#unit, `, ${panel.y.unit}`);
    if (panel.drawn === undefined) {
      this.#paintSheet(xAxis, panel, place);
      this.#marks.set(panel.marks.map((mark) => [`${mark.kind} ${mark.key}`, mark]));
    } else {
      this.#sheetKey = '';
      this.#sheet.replaceChildren(panel.drawn(xAxis, width, place.isLast));
      this.#marks.set([]);
    }
    this.#paintNames(panel, width, place.cursorShown);
    this.#paintScale(panel, place);
  }

  #paintSheet(xAxis: Axis, panel: Panel, place: PanelPlace): void {
    const key = sheetKey(xAxis, panel, place.width, place.isLast);
    if (key === this.#sheetKey) return;
    this.#sheetKey = key;
    this.#sheet.replaceChildren(drawSheet(xAxis, panel, place.width, place.isLast));
    const size = { width: place.width, height: panel.height };
    // Half a stroke may stand over an open edge; a frame is kept.
    const over = panel.framed ? 0.5 : 4;
    setAttributes(this.#clip, { x: -over, y: -over, width: size.width + 2 * over, height: size.height + over });
    if (panel.framed) {
      setAttributes(this.#frame, { x: 0, y: 0, ...size });
      this.#sheet.prepend(this.#frame);
    }
  }

  #paintNames(panel: Panel, width: number, cursorShown: number | null): void {
    const { around, plot, ends, margin, crossing } = namesOfPanel(panel, this.#context, cursorShown, measureText);
    const atEnds = spreadEnds(ends, crossing);
    const inMargin = spreadMargin(margin);
    const within = ends.flatMap(({ key, inPlot }) => (atEnds.has(key) ? [] : [inPlot]));
    const placed = placeNames([...plot, ...within], around);
    this.#names.set(placed.map((one) => [one.name.key, one]));
    setAttributes(this.#leaders, {
      d: placed.map(({ leader }) => (leader === null ? '' : leaderPath(leader))).join(''),
    });
    const beside = [
      ...margin.map(({ key, name }) => ({ name, x: width + marginGap, y: inMargin.get(key)! })),
      ...ends.flatMap(({ key, inPlot }) => {
        const y = atEnds.get(key);
        return y === undefined ? [] : [{ name: { ...inPlot, note: '' }, x: width + 8, y }];
      }),
    ];
    this.#margin.set(beside.map((one) => [one.name.key, one]));
  }

  #paintScale(panel: Panel, place: PanelPlace): void {
    const scale = panel.rightScale;
    this.#scale.replaceChildren();
    if (scale === null) return;
    const title = svgElement('text', { class: 'title', x: place.width + 10, y: 0 });
    title.textContent = scale.title;
    this.#scale.append(title);
    for (const tick of scale.ticks) {
      const at = this.#context.y(tick.y);
      const text = svgElement('text', { class: tick.bold ? 'bold' : '', x: place.width + 10, y: at });
      text.textContent = tick.text;
      this.#scale.append(svgElement('line', { x1: place.width, x2: place.width + 6, y1: at, y2: at }), text);
    }
  }
}

/** Words right of the plot. */
interface BesidePlot {
  readonly name: PlacedName['name'] & Pick<PlotName, 'note'>;
  readonly x: number;
  readonly y: number;
}

function updateName(node: SVGTextElement, { name, x, y, anchor }: PlacedName): void {
  setAttributes(node, { class: nameClass(name), x, y, 'text-anchor': anchor });
  setText(node, name.text);
}

function leaderPath([from, to]: NonNullable<PlacedName['leader']>): string {
  return `M${trimmed(from.x)} ${trimmed(from.y)}L${trimmed(to.x)} ${trimmed(to.y)}`;
}

function makeMarginName(): SVGTextElement {
  const node = svgElement('text');
  node.append(svgElement('tspan'), svgElement('tspan', { class: 'note', dy: noteBelow }));
  return node;
}

function updateMarginName(node: SVGTextElement, { name, x, y }: BesidePlot): void {
  const [words, note] = node.children;
  setAttributes(node, { class: nameClass(name), x, y });
  setAttributes(note!, { x });
  setText(words!, name.text);
  setText(note!, name.note);
}

function nameClass(name: PlacedName['name']): string {
  return `kp-name ${name.hand}${name.bold ? ' bold' : ''}`;
}
