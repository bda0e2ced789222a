// The workings an entry can show, in the order of the list to choose from. A new one is one file in pieces/ and one line
// here.

import type { PieceLine } from '../pieces.js';

export const workingLines: readonly PieceLine[] = [
  {
    name: 'bring-down',
    title: 'Bring a spirit down',
    load: async () => (await import('./pieces/bring-down.js')).bringDown,
  },
  {
    name: 'in-steps',
    title: 'Bring it down in portions',
    load: async () => (await import('./pieces/in-steps.js')).inSteps,
  },
  { name: 'bottles', title: 'Fill bottles', load: async () => (await import('./pieces/bottles.js')).bottlesFilled },
  {
    name: 'to-make',
    title: 'Make a volume of a strength',
    load: async () => (await import('./pieces/to-make.js')).toMake,
  },
  {
    name: 'pour-together',
    title: 'Pour spirits together',
    load: async () => (await import('./pieces/pour-together.js')).pourTogether,
  },
  { name: 'obscured', title: 'Sugar and oak', load: async () => (await import('./pieces/obscured.js')).obscured },
  {
    name: 'kettle',
    title: 'The kettle’s thermometer',
    load: async () => (await import('./pieces/kettle.js')).kettleGauge,
  },
  { name: 'head', title: 'The head’s thermometer', load: async () => (await import('./pieces/head.js')).headGauge },
  {
    name: 'spout',
    title: 'The hydrometer at the spout',
    load: async () => (await import('./pieces/spout.js')).spoutGauge,
  },
  {
    name: 'two-ways',
    title: 'The kettle in two ways',
    load: async () => (await import('./pieces/two-ways.js')).twoWays,
  },
  {
    name: 'wall-table',
    title: 'A table for the wall',
    load: async () => (await import('./pieces/wall-table.js')).wallTable,
  },
  { name: 'books', title: 'The books', load: async () => (await import('./pieces/books.js')).booksOfRun },
];
