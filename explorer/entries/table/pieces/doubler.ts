// What a doubler gives, by what it is charged with.

import { doublerQuestions, type DoublerQuestions } from '../../../state/doubler.js';
import { remembered } from '../../../state/memo.js';
import type { Piece } from '../../pieces.js';
import { chargesTable, doublerNumbers } from '../../the-doubler.js';

const numbers = remembered(doublerNumbers);

export const doublerCharges: Piece<DoublerQuestions> = {
  asks: doublerQuestions,
  cautions: ['heating'],
  view: ({ units }, now) => chargesTable(now, numbers(now), units),
};
