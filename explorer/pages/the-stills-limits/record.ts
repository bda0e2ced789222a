// The page 'The still's limits': a run from lighting up by its run sheet, and what the still would refuse.

import type { PageRecord } from '../../state/notebook-record.js';

export const theStillsLimits: PageRecord = {
  name: 'the-stills-limits',
  title: 'The still’s limits',
  promise: 'A whole run by its sheet, and what the metal says to it.',
  entries: [
    {
      id: 'setup',
      kind: 'setup',
      data: {
        sentence: [
          'A charge of ',
          { blank: 'charge.volume_m3' },
          ' at ',
          { blank: 'charge.strength' },
          ' in a kettle of ',
          { blank: 'still.kettle.volume_m3' },
          ' with ',
          { blank: 'still.column.count' },
          ', each ',
          { blank: 'still.column.efficiency' },
          ' efficient, ',
          { blank: 'still.column.diameter_m' },
          ' wide and ',
          { blank: 'still.column.spacing_m' },
          ' apart, heated by ',
          { blank: 'still.kettle.power_W' },
          ', in air of ',
          { blank: 'still.air.pressure_Pa' },
          '.',
        ],
        hands: true,
      },
    },
    { id: 'timeline', kind: 'figure', data: { figures: ['sheet'] }, close: true },
    { id: 'picture', kind: 'still-picture', heading: 'The still at the cursor', data: {} },
    { id: 'profile', kind: 'figure', data: { figures: ['column-strength', 'column-temperature'] } },
    { id: 'sheet', kind: 'run-sheet', heading: 'The run sheet', data: {} },
    { id: 'words', kind: 'words', heading: 'What came of it', data: { show: 'sheet-run' } },
    { id: 'limits', kind: 'words', heading: 'What the metal says', data: { show: 'limits' } },
    { id: 'jars', kind: 'table', heading: 'The jars', data: { show: 'jars' } },
  ],
};
