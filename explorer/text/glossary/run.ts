// Words for a run: what goes in, what comes over, and how it is steered.

import type { Term } from './term.js';

export const run: readonly Term[] = [
  { name: 'charge', also: ['charges'], means: 'What is filled into the kettle for one run.' },
  { name: 'wash', means: 'Fermented liquid before it is distilled, most often between 5 and 12 % vol.' },
  { name: 'run', also: ['runs'], means: 'One charge boiled from the first vapour to the moment you stop.' },
  {
    name: 'strip',
    also: ['stripping'],
    means: 'A quick first run that takes the alcohol out of the wash without parting it finely.',
  },
  { name: 'low wines', means: 'What a strip brings over: weak spirit that becomes the charge of the next run.' },
  { name: 'feints', means: 'What was cut off before and after the hearts and is kept for a later charge.' },
  { name: 'foreshots', means: 'The very first spirit of a run, set apart.' },
  { name: 'heads', means: 'Spirit after the foreshots, sharp with what boils off early; not kept as product.' },
  { name: 'hearts', means: 'The part of a run that is kept as product.' },
  { name: 'tails', means: 'The weak end of a run, after the hearts, with what boils off late.' },
  {
    name: 'cut',
    also: ['cuts'],
    means: 'The moment you change from one fraction to the next: heads to hearts, hearts to tails.',
  },
  { name: 'reflux', means: 'Condensed vapour that is sent back down the column instead of out of the spout.' },
  {
    name: 'reflux ratio',
    also: ['ratio'],
    means: 'Parts sent back for each part kept: at 3 : 1, four parts are boiled for one that you keep.',
  },
  {
    name: 'total reflux',
    also: ['everything sent back'],
    means: 'Everything that condenses is sent back and nothing is kept: the strongest a column can be, and no product.',
  },
  { name: 'boil-up', means: 'How much vapour the kettle raises in a given time; it follows from the heat.' },
  {
    name: 'head temperature',
    means: 'What the thermometer at the head reads: the boil of what is there, so a clue to its strength.',
  },
  { name: 'kettle temperature', means: 'What the thermometer in the kettle reads; it rises as the alcohol leaves.' },
  {
    name: 'run sheet',
    means: 'Our name for the list of steps a run is steered by: hold, draw at this ratio until that happens, stop.',
  },
  {
    name: 'run log',
    means: 'Our name for what you write down while running: times, temperatures, strengths, volumes.',
  },
];
