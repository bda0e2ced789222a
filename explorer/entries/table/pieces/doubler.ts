// What a doubler gives, by what it is charged with.

import { doublerQuestions, type DoublerQuestions } from '../../../state/doubler.js';
import type { Piece } from '../../pieces.js';
import { chargesTable, doublerNumbers } from '../../the-doubler.js';

export const doublerCharges: Piece<DoublerQuestions> = {
  asks: doublerQuestions,
  cautions: ['heating'],
  view: ({ units, once }, now) =>
    chargesTable(
      now,
      once('numbers', [now], () => doublerNumbers(now)),
      units,
    ),
};
