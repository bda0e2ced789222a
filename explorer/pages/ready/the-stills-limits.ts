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
          { blank: 'chargeVolume' },
          ' at ',
          { blank: 'chargeStrength' },
          ' in a kettle with ',
          { blank: 'plates' },
          ', each ',
          { blank: 'efficiency' },
          ' efficient, ',
          { blank: 'columnDiameter' },
          ' wide and ',
          { blank: 'plateSpacing' },
          ' apart, heated by ',
          { blank: 'heat' },
          ', in air of ',
          { blank: 'pressure' },
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
