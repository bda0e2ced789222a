// Workings: small computations with numbers of their own beside the run.

import { kindOfPieces } from '../pieces.js';
import { workingLines } from './list.js';

export const working = kindOfPieces(
  {
    name: 'working',
    title: 'Working',
    about: 'a small computation with numbers of its own: bringing down, gauges, books',
    choose: 'Working',
  },
  workingLines,
);
