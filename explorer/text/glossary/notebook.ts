// Words that are this notebook's own.

import type { Term } from './term.js';

export const notebook: readonly Term[] = [
  {
    name: 'page',
    also: ['pages'],
    means: 'One screenful of this notebook: a sentence to set and what follows from it.',
  },
  {
    name: 'entry',
    also: ['entries'],
    means: 'One block of a page: a text, a sentence, a figure, a table, a question.',
  },
  { name: 'setup sentence', means: 'The sentence whose numbers you can change; everything in blue follows from them.' },
  { name: 'pencil line', also: ['pencil lines'], means: 'An earlier curve kept for comparison.' },
  { name: 'your guess', also: ['guess'], means: 'The curve you draw before you see the answer, in pencil dots.' },
  { name: 'print', means: 'Black: whatever holds for every still.' },
  { name: 'ink', means: 'Blue: what you set, and what follows from it.' },
];
