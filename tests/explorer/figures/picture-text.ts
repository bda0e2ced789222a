// A drawn svg as stable text, one element a line: numbers to three decimals at most, and words without
// their places, which depend on the typefaces of the machine.

export function pictureText(svg: SVGElement): string {
  const lines: string[] = [];
  write(svg, '', lines);
  return `${lines.join('\n')}\n`;
}

function write(element: Element, indent: string, lines: string[]): void {
  const isWords = element.matches('text');
  const attributes = [...element.attributes]
    .filter(({ name }) => !(isWords && /^(x|y|transform|text-anchor)$/.test(name)))
    .map(({ name, value }) => ` ${name}="${rounded(value)}"`)
    .join('');
  const tag = element.tagName;
  if (tag === 'style') return;
  if (element.childElementCount === 0) {
    lines.push(`${indent}<${tag}${attributes}>${escaped(element.textContent)}</${tag}>`);
    return;
  }
  lines.push(`${indent}<${tag}${attributes}>`);
  for (const child of element.children) write(child, `${indent}  `, lines);
  lines.push(`${indent}</${tag}>`);
}

function rounded(text: string): string {
  return text.replace(/-?\d+\.\d{3,}/g, (digits) => String(Math.round(Number(digits) * 1000) / 1000));
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
}
