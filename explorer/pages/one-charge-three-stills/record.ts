// The page 'One charge, three stills': the same charge in a bare pot, a pot with a doubler and a plated column, on
// common axes, and what each brings over above a strength.

import type { PageRecord } from '../../state/notebook-record.js';

export const oneChargeThreeStills: PageRecord = {
  name: 'one-charge-three-stills',
  title: 'One charge, three stills',
  promise: 'What a doubler and a column add, and what they ask for it.',
  entries: [
    {
      id: 'setup',
      kind: 'setup',
      data: {
        sentence: [
          'The same ',
          { blank: 'charge.volume_m3' },
          ' at ',
          { blank: 'charge.strength' },
          ' in a kettle of ',
          { blank: 'still.kettle.volume_m3' },
          ', heated by ',
          { blank: 'still.kettle.power_W' },
          ', in a bare pot, in a pot with a doubler, and under ',
          { blank: 'still.column.count' },
          ', each ',
          { blank: 'still.column.efficiency' },
          ' efficient, reflux ',
          { blank: 'sheet[2].reflux' },
          '. Wanted is what comes over above ',
          { blank: 'asked.strength' },
          '.',
        ],
        hands: true,
      },
    },
    { id: 'stills', kind: 'figure', data: { figures: ['stills'] }, close: true },
    { id: 'recovered', kind: 'words', data: { show: 'recovered' } },
    { id: 'heat', kind: 'words', data: { show: 'column-heat' }, close: true },
    { id: 'table', kind: 'table', heading: 'What each makes of it', data: { show: 'stills' } },
    { id: 'doubler', kind: 'words', heading: 'The doubler, honestly', data: { show: 'doubler-besides' } },
  ],
};
