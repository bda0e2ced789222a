// Puts the picture of the still into one svg: what has not changed since the last moment is not touched.

import type { PathMark, StillMark, WordMark } from '../../figures/still/marks.js';
import type { StillPicture } from '../../figures/still/picture.js';
import { KeyedChildren, setAttributes, setText, svgElement } from '../figure/svg.js';

export class StillPainter {
  readonly svg = svgElement('svg', { class: 'kp-still-svg', 'aria-hidden': 'true', focusable: 'false' });
  readonly #paths: KeyedChildren<PathMark, SVGPathElement>;
  readonly #words: KeyedChildren<WordMark, SVGTextElement>;

  constructor() {
    const [paths, words] = [svgElement('g'), svgElement('g')];
    this.svg.append(paths, words);
    this.#paths = new KeyedChildren(paths, () => svgElement('path'), updatePath);
    this.#words = new KeyedChildren(words, () => svgElement('text'), updateWords);
  }

  paint({ width, height, marks }: StillPicture, layout: 'wide' | 'narrow'): void {
    setAttributes(this.svg, { width, height, class: `kp-still-svg ${layout}` });
    this.#paths.set(marks.filter(isPath).map((mark) => [mark.key, mark]));
    this.#words.set(marks.filter(isWords).map((mark) => [mark.key, mark]));
  }
}

function isPath(mark: StillMark): mark is PathMark {
  return mark.kind === 'path';
}

function isWords(mark: StillMark): mark is WordMark {
  return mark.kind === 'words';
}

function updatePath(node: SVGPathElement, { look, d, dashes, opacity }: PathMark): void {
  setAttributes(node, { class: `still-${look}`, d });
  if (dashes === undefined) node.removeAttribute('stroke-dasharray');
  else {
    setAttributes(node, { 'stroke-dasharray': `${dashes.dash.toFixed(2)} ${dashes.gap.toFixed(2)}` });
    setAttributes(node, { 'stroke-dashoffset': -dashes.along });
  }
  if (opacity !== undefined) setAttributes(node, { opacity });
}

function updateWords(node: SVGTextElement, { x, y, anchor, parts }: WordMark): void {
  setAttributes(node, { x, y, 'text-anchor': anchor });
  while (node.childElementCount > parts.length) node.lastElementChild!.remove();
  parts.forEach(({ text, hand, bold }, i) => {
    const part = node.children[i] ?? node.appendChild(svgElement('tspan'));
    setAttributes(part, { class: `${hand}${bold ? ' bold' : ''}` });
    setText(part, text);
  });
}
