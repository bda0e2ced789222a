// Tables: results of the page's numbers in rows and columns.

import { kindOfPieces } from '../pieces.js';
import { tableLines } from './list.js';

export const table = kindOfPieces(
  {
    name: 'table',
    title: 'Table',
    about: 'results in rows and columns',
    choose: 'Table',
  },
  tableLines,
);
