// A doubler over the pot, with its charge and with water; and what goes on inside it along the clock.

import { runFigure } from '../../../figures/run/run-figure.js';
import { doublerQuestions, type DoublerQuestions } from '../../../pages/the-doubler/questions.js';
import { insideRows } from '../../../pages/the-doubler/clock.js';
import { doublerRows } from '../../../pages/the-doubler/words.js';
import type { FigurePiece } from '../piece.js';

export const doublerStrength: FigurePiece<DoublerQuestions> = {
  asks: doublerQuestions,
  cautions: ['spout'],
  draw: ({ units, once }, now) => ({
    figure: runFigure,
    rows: once('doubler', [now, units], () => doublerRows(now, units)),
  }),
};

export const insideTheDoubler: FigurePiece<DoublerQuestions> = {
  asks: doublerQuestions,
  cautions: ['spout'],
  draw: ({ units, once }, now) => ({
    figure: runFigure,
    rows: once('inside', [now, units], () => insideRows(now, units)),
  }),
};
