// Several drawings of the same run as one figure: panels one under another on one x axis.

import type { Drawing } from './figure.js';

/** Panels of `upper` over those of `lower`; axis, cursor, read-out and table are the upper one's. */
export function stack(upper: Drawing, lower: Drawing): Drawing {
  return {
    ...upper,
    description: `${upper.description} ${lower.description}`,
    panels: [...upper.panels, ...lower.panels],
  };
}
