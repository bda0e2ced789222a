// Results in words: what the numbers of the page come to, in sentences written for the notebook.

import { kindOfPieces } from '../pieces.js';
import { wordLines } from './list.js';

export const words = kindOfPieces(
  {
    name: 'words',
    title: 'Result in words',
    about: 'what the numbers of the page come to, in sentences',
    choose: 'Words on',
  },
  wordLines,
);
