// Width of words at 15 px, by a canvas: it forces no layout. Kept by text, and forgotten when the
// typeface arrives.

let widths = new Map<string, number>();
let pen: CanvasRenderingContext2D | null = null;

export function measureText(text: string, bold: boolean): number {
  const key = `${bold ? 'b' : 'r'}${text}`;
  const known = widths.get(key);
  if (known !== undefined) return known;
  pen ??= document.createElement('canvas').getContext('2d');
  if (pen === null) return text.length * 7.2;
  pen.font = `${bold ? 600 : 400} 15px 'Source Sans 3', system-ui, sans-serif`;
  const width = pen.measureText(text).width;
  if (widths.size > 500) widths = new Map();
  widths.set(key, width);
  return width;
}

export function forgetWidths(): void {
  widths = new Map();
}
