// The cautions of the notebook, each said once on a page, beside the first entry that shows what it is about.

import { html } from 'lit';
import type { CautionName } from './entry.js';
import { caution } from './words.js';

export const cautions: Readonly<Record<CautionName, unknown>> = {
  spout: caution(
    html`Vapour at the spout is heavier than air and lights. Catch spirit away from flame, let fresh air in, and never
    close the still.`,
  ),
  kettle: caution(
    html`Never let the kettle run below its heating surface. What is left is hot enough to scald; let air in as it
    cools. Follow local codes and the maker’s instructions.`,
  ),
  vacuum: caution(
    html`A vessel under vacuum can implode, and one above the pressure of the air can burst. Vacuum distillation needs
    vessels, condensers and pumps rated for it and licensed practice; it is not done on these pages. Follow local codes
    and the maker’s instructions.`,
  ),
};
