// A figure as a picture that needs nothing else: the drawing on the page with every style it got from the
// page's style sheets written into it, cropped to what is drawn. Always by daylight, as on paper.

import { svgElement } from '../svg.js';

/** What the style sheets say about a drawing; those that an element passes on to what stands in it. */
const inherited = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-opacity',
  'stroke-dasharray',
  'stroke-linejoin',
  'stroke-linecap',
  'paint-order',
  'font-family',
  'font-size',
  'font-weight',
  'font-style',
  'text-anchor',
  'dominant-baseline',
  'visibility',
  'white-space',
];
const own: readonly (readonly [name: string, initial: string])[] = [
  ['opacity', '1'],
  ['overflow', 'visible'],
];
/** Never drawn along: where the cursor happens to stand. */
const leftOut = '.kp-cursor, .kp-cursor-line, style';
/** Room round the drawing, px, and how much wider words may be in the typeface of another program. */
const margin = 12;
const widerWords = 1.25;

export interface Picture {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
}

/** `styleSheet` goes into the picture as it is: a typeface, where the picture cannot fetch one. */
export function pictureOf(drawn: SVGSVGElement, description: string, styleSheet = ''): Picture {
  const root = document.documentElement;
  const before = root.dataset.theme;
  root.dataset.theme = 'light';
  try {
    return drawnByDay(drawn, description, styleSheet);
  } finally {
    if (before === undefined) delete root.dataset.theme;
    else root.dataset.theme = before;
  }
}

function drawnByDay(drawn: SVGSVGElement, description: string, styleSheet: string): Picture {
  const { x, y, width, height } = extent(drawn);
  const svg = svgElement('svg', {
    xmlns: 'http://www.w3.org/2000/svg',
    viewBox: `${String(x)} ${String(y)} ${String(width)} ${String(height)}`,
    width,
    height,
    role: 'img',
  });
  const title = svgElement('title');
  title.textContent = description;
  svg.append(title);
  if (styleSheet !== '') {
    const style = svgElement('style');
    style.textContent = styleSheet;
    svg.append(style);
  }
  const paper = getComputedStyle(document.documentElement).getPropertyValue('--paper').trim();
  svg.append(svgElement('rect', { x, y, width, height, fill: paper }));
  const inside = svgElement('g');
  const style = writeStyle(inside, drawn, undefined);
  for (const child of drawn.children) copyInto(inside, child, style);
  svg.append(inside);
  return { svg: new XMLSerializer().serializeToString(svg), width, height };
}

function copyInto(parent: Element, original: Element, above: CSSStyleDeclaration): void {
  if (original.matches(leftOut)) return;
  const node = original.cloneNode(false) as Element;
  for (const name of ['class', 'style', 'aria-hidden', 'focusable']) node.removeAttribute(name);
  const style = writeStyle(node, original, above);
  if (original.childElementCount === 0) node.textContent = original.textContent;
  else for (const child of original.children) copyInto(node, child, style);
  parent.append(node);
}

/** Writes what differs from the element above, which is what would be inherited; all of it where there is none. */
function writeStyle(node: Element, original: Element, above: CSSStyleDeclaration | undefined): CSSStyleDeclaration {
  const style = getComputedStyle(original);
  for (const name of inherited) {
    const value = style.getPropertyValue(name);
    if (value !== above?.getPropertyValue(name)) node.setAttribute(name, value);
    else node.removeAttribute(name);
  }
  for (const [name, initial] of own) {
    const value = style.getPropertyValue(name);
    if (value !== initial || original.matches('svg')) node.setAttribute(name, value);
  }
  return style;
}

/** What is drawn, words outside the plot included, in the drawing's own px. */
function extent(drawn: SVGSVGElement): { x: number; y: number; width: number; height: number } {
  const origin = drawn.getBoundingClientRect();
  let [left, top, right, bottom] = [0, 0, origin.width, origin.height];
  for (const words of drawn.querySelectorAll('text')) {
    const box = words.getBoundingClientRect();
    if (box.width === 0 || words.closest(leftOut) !== null) continue;
    const wider = (widerWords - 1) * box.width;
    left = Math.min(left, box.left - origin.left);
    top = Math.min(top, box.top - origin.top);
    right = Math.max(right, box.right - origin.left + wider);
    bottom = Math.max(bottom, box.bottom - origin.top);
  }
  const x = Math.floor(left - margin);
  const y = Math.floor(top - margin);
  return { x, y, width: Math.ceil(right + margin) - x, height: Math.ceil(bottom + margin) - y };
}
