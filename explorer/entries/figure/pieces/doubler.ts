// A doubler over the pot, with its charge and with water; and what goes on inside it along the clock.

import { strengthByStill } from '../../../figures/strength-by-still.js';
import { timeline } from '../../../figures/timeline.js';
import { doublerQuestions, type DoublerQuestions } from '../../../state/doubler.js';
import { remembered } from '../../../state/memo.js';
import { insideRows } from '../../doubler-clock.js';
import { doublerRows } from '../../the-doubler.js';
import type { FigurePiece } from '../piece.js';

const rows = remembered(doublerRows);
const inside = remembered(insideRows);

export const doublerStrength: FigurePiece<DoublerQuestions> = {
  asks: doublerQuestions,
  cautions: ['spout'],
  draw: ({ units }, now) => ({ figure: strengthByStill, rows: rows(now, units) }),
};

export const insideTheDoubler: FigurePiece<DoublerQuestions> = {
  asks: doublerQuestions,
  cautions: ['spout'],
  draw: ({ units }, now) => ({ figure: timeline, rows: inside(now, units) }),
};
