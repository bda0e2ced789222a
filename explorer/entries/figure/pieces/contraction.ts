// Why volumes do not add up: the volume lost on mixing, with the spirits of the page's workings on it.

import { html } from 'lit';
import { contractionFigure } from '../../../figures/plots/contraction.js';
import { contractionRows } from '../../../state/contraction-rows.js';
import { valuesOf, workingsIn } from '../../../state/workings.js';
import type { Asks } from '../../../worker/questions.js';
import { source } from '../../words.js';
import { trueSpirit } from '../../working/pieces/measured-spirit.js';
import type { FigurePiece } from '../piece.js';

const nothing: Asks = {};

export const contractionPiece: FigurePiece = {
  asks: () => nothing,
  draw: ({ common, units }) => {
    const values = valuesOf(workingsIn(common));
    const spirit = trueSpirit(values);
    const measured = typeof spirit === 'string' ? null : spirit.strength;
    return { figure: contractionFigure, rows: contractionRows(measured, values.wantedStrength, units) };
  },
  below: () =>
    html`<p class="working-after">
      Ethanol and water take less room together than apart, up to 3.6 % of the volume. What is lost between two spirits
      is the difference of their heights here, so a litre of water does not make a litre more. Mass and pure alcohol do
      add up: that is why the water is weighed.
    </p>`,
  notes: () => source(html`OIML R 22 (1975), at 20 °C.`),
};
