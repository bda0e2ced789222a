// Measured points in the margin: each mark as it is drawn, with the name of its source.

import { html } from 'lit';
import type { PointForm } from '../rows/shown.js';
import { pointShape } from '../components/figure/point-shapes.js';
import { measuredRows } from '../state/measured-rows.js';
import { source } from './words.js';

const side_px = 11;

/** The mark itself, in a line of text. */
export function pointOf({ form, filled }: { readonly form: PointForm; readonly filled: boolean }): unknown {
  return html`<svg class="point-in-text" width=${side_px} height=${side_px} aria-hidden="true">
    <path class=${filled ? 'kp-points' : 'kp-points open'} d=${pointShape(form, side_px / 2, side_px / 2)} />
  </svg>`;
}

/** The sets laid over the curves; `elsewhere` where the curves are not those of 1 atm. */
export function measuredNote(elsewhere: string | null): unknown {
  const named = measuredRows.map((set) => html`${pointOf(set)} ${set.source}. `);
  return source(
    html`Measured near 1 atm: ${named}
    ${elsewhere === null ? '' : `The curves here are those of ${elsewhere}, and so lie elsewhere.`}`,
  );
}
