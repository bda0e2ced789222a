// Sugar and oak: what they hide from the hydrometer.

import { html } from 'lit';
import { obscuredReading } from '#lib/index.js';
import { fixed, joined } from '../../../text/format.js';
import { ink, source } from '../../words.js';
import { strengthInk } from '../amounts.js';
import { workingPiece, type Worked } from '../working.js';

function answer({ values, units }: Worked): unknown {
  const { wantedStrength, solids } = values;
  const { shown, hidden_proof, withinRule } = obscuredReading(wantedStrength, solids);
  return html`<p>
    A hydrometer in spirit of ${strengthInk(wantedStrength, units)} then shows <b>${strengthInk(shown, units)}</b>: they
    hide ${ink(joined(fixed(hidden_proof, 1), 'US proof'))}.
    ${
      withinRule
        ? ''
        : html`That is more than the rule is meant for (6 g in a litre): distil a measured part of it, make it up to its
          volume with water, and measure that.`
    }
  </p>`;
}

export const obscured = workingPiece({
  sentences: [['In the spirit brought down there are ', { blank: 'solids' }, ' of sugar or of what oak gave it.']],
  answer,
  notes: () =>
    source(
      html`27 CFR 30.32 and 13.31: 0.1 g of solids in 100 mL hides 0.4 proof; above 600 mg in 100 mL it is distilled.`,
    ),
});
