// What a doubler gives, by what it is charged with.

import { doublerQuestions, type DoublerQuestions } from '../../../pages/the-doubler/questions.js';
import type { Piece } from '../../pieces.js';
import { chargesTable, doublerNumbers } from '../../../pages/the-doubler/words.js';

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
