// The outline of a measured point as an svg path: told apart by form and by filled or open, never by colour.

import type { PointForm } from '../../rows/shown.js';

/** Half the height of each form, px: so that all look equally large. */
const half: Readonly<Record<PointForm, number>> = { disc: 3.5, square: 3.1, diamond: 4.4 };

/** One point of a form about a place, px. */
export function pointShape(form: PointForm, x: number, y: number): string {
  const r = half[form];
  const [px, py] = [x.toFixed(2), y.toFixed(2)];
  switch (form) {
    case 'disc':
      return `M${px} ${py}m${-r} 0a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0z`;
    case 'square':
      return `M${px} ${py}m${-r} ${-r}h${2 * r}v${2 * r}h${-2 * r}z`;
    case 'diamond':
      return `M${px} ${py}m0 ${-r}l${r} ${r}l${-r} ${r}l${-r} ${-r}z`;
  }
}
