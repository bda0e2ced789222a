// Making and updating SVG elements; an attribute is written only when it changes.

const space = 'http://www.w3.org/2000/svg';

export type Attributes = Readonly<Record<string, string | number>>;

export function svgElement<Name extends keyof SVGElementTagNameMap>(
  name: Name,
  attributes: Attributes = {},
): SVGElementTagNameMap[Name] {
  const element = document.createElementNS(space, name);
  setAttributes(element, attributes);
  return element;
}

export function setAttributes(element: Element, attributes: Attributes): void {
  for (const [name, value] of Object.entries(attributes)) {
    const text = typeof value === 'number' ? trimmed(value) : value;
    if (element.getAttribute(name) !== text) element.setAttribute(name, text);
  }
}

export function setText(element: Element, text: string): void {
  if (element.textContent !== text) element.textContent = text;
}

/**
 * Children of `parent` kept by key: made when new, updated when kept, removed when gone, in the order given.
 */
export class KeyedChildren<Item, Node extends SVGElement> {
  readonly #parent: SVGElement;
  readonly #make: (item: Item) => Node;
  readonly #update: (node: Node, item: Item) => void;
  #nodes = new Map<string, Node>();

  constructor(parent: SVGElement, make: (item: Item) => Node, update: (node: Node, item: Item) => void) {
    this.#parent = parent;
    this.#make = make;
    this.#update = update;
  }

  set(items: readonly (readonly [key: string, item: Item])[]): void {
    const before = this.#nodes;
    this.#nodes = new Map();
    let next = this.#parent.firstElementChild;
    for (const [key, item] of items) {
      const node = before.get(key) ?? this.#make(item);
      before.delete(key);
      this.#nodes.set(key, node);
      this.#update(node, item);
      if (node === next) next = next.nextElementSibling;
      else this.#parent.insertBefore(node, next);
    }
    for (const node of before.values()) node.remove();
  }
}

/** Hundredths of a px are enough for the eye and short in the document. */
export function trimmed(value: number): string {
  return String(Math.round(value * 100) / 100);
}
