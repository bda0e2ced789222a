// Words for a run: what goes in, what comes over, and how it is steered.

import type { Term } from './term.js';

export const run: readonly Term[] = [
  { name: 'charge', also: ['charges'], means: 'What is filled into the kettle for one run.' },
  { name: 'wash', means: 'Fermented liquid before it is distilled, most often between 5 and 12 % vol.' },
  { name: 'run', also: ['runs'], means: 'One charge distilled: from lighting up to the moment you stop.' },
  {
    name: 'strip',
    also: ['stripping'],
    means: 'A quick first run that takes the alcohol out of the wash without parting it finely.',
  },
  { name: 'low wines', means: 'What a strip brings over: weak spirit that becomes the charge of the next run.' },
  {
    name: 'feints',
    means: 'In whisky distilling the tails; in other trades heads and tails together. Kept for a later charge.',
  },
  {
    name: 'foreshots',
    means: 'The very first spirit of a run, set apart; in whisky distilling all that comes before the hearts.',
  },
  {
    name: 'heads',
    means:
      'What comes before the hearts, with what leaves the liquid more readily than alcohol does; not kept as product.',
  },
  { name: 'hearts', means: 'The part of a run that is kept as product.' },
  {
    name: 'tails',
    means: 'The weak end of a run, after the hearts: little alcohol, and what leaves the liquid less readily than it.',
  },
  {
    name: 'cut',
    also: ['cuts'],
    means: 'The moment you change from one fraction to the next: heads to hearts, hearts to tails.',
  },
  { name: 'reflux', means: 'Condensed vapour that is sent back down the column instead of out of the spout.' },
  {
    name: 'reflux ratio',
    also: ['ratio'],
    means:
      'Parts sent back for each part kept, 3 : 1. Some count what is sent back against what rises: there it is 3 : 4.',
  },
  {
    name: 'total reflux',
    also: ['everything sent back'],
    means: 'Everything that condenses is sent back and nothing is kept: the strongest a column can be, and no product.',
  },
  {
    name: 'boil-up',
    means:
      'The vapour a kettle raises in a given time, by the heat less what its walls lose and what warms the charge.',
  },
  {
    name: 'puking',
    also: ['pukes', 'boil-over'],
    means: 'Wash thrown over into the condenser, by froth or a kettle filled too high. Turn the heat down at once.',
  },
  {
    name: 'suck-back',
    means: 'Liquid of a doubler or a receiver drawn back into a cooling kettle, because no air got in.',
  },
  {
    name: 'spent wash',
    also: ['pot ale', 'stillage'],
    means: 'What stays in the kettle after a strip: next to no alcohol, and scalding hot.',
  },
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
