// One charge through several stills, a panel each, and the words that set a column of the reader's own beside them.

import { html } from 'lit';
import { runFigure } from '../../../figures/run/run-figure.js';
import { mostOwnStills } from '../../../state/own-stills-check.js';
import type { StillsQuestions } from '../../../pages/one-charge-three-stills/questions.js';
import { keepColumn, ownStills, stillsAsks, takeAway } from '../../../pages/one-charge-three-stills/own-stills.js';
import { columnLabel, stillRows } from '../../../pages/one-charge-three-stills/words.js';
import type { FigurePiece } from '../piece.js';

export const stills: FigurePiece<StillsQuestions> = {
  asks: stillsAsks,
  cautions: ['spout'],
  draw: ({ units, specs, once }, now) => ({
    figure: runFigure,
    rows: once('stills', [now, units, specs], () => stillRows(now, ownStills(now.common), units, specs)),
  }),
  words: (here) => {
    const own = ownStills(here.common);
    return html`<button
        class="word-button"
        type="button"
        ?disabled=${own.length >= mostOwnStills}
        @click=${() => keepColumn(here)}
      >
        Set this column beside the others
      </button>
      ${own.map(
        (still, place) =>
          html`<button class="word-button" type="button" @click=${() => takeAway(here, place)}>
            Take away ${columnLabel(still, here.specs)}
          </button>`,
      )}`;
  },
};
