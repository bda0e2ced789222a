// The page 'The doubler': what a doubler does depends on what it is charged with, and when one looks.

import type { PageRecord } from '../../state/notebook-record.js';

export const theDoubler: PageRecord = {
  name: 'the-doubler',
  title: 'The doubler',
  promise: 'It gives back what you put in, and then passes on what it gets.',
  entries: [
    {
      id: 'setup',
      kind: 'setup',
      data: {
        sentence: [
          'A pot of ',
          { blank: 'still.kettle.volume_m3' },
          ' with ',
          { blank: 'charge.volume_m3' },
          ' at ',
          { blank: 'charge.strength' },
          ', heated by ',
          { blank: 'still.kettle.power_W' },
          ', blows its vapour through a doubler of ',
          { blank: 'still.doublers[0].volume_m3' },
          ' charged with ',
          { blank: 'doublerCharges[0].charge.volume_m3' },
          ' at ',
          { blank: 'doublerCharges[0].charge.strength' },
          '.',
        ],
        hands: true,
      },
    },
    { id: 'strength', kind: 'figure', data: { figures: ['doubler'] }, close: true },
    { id: 'first', kind: 'words', data: { show: 'doubler-first' } },
    {
      id: 'misunderstood',
      kind: 'text',
      data: {
        text: 'That is why doublers are misunderstood. One who charges it with feints swears that it doubles the strength; one who charges it with water sees it do little. Both are right about their own charge, and both look at the first jar.',
      },
      close: true,
    },
    { id: 'inside', kind: 'figure', heading: 'Inside the doubler', data: { figures: ['inside-doubler'] } },
    { id: 'charges', kind: 'table', heading: 'It depends on its charge', data: { show: 'doubler-charges' } },
    {
      id: 'try',
      kind: 'text',
      data: {
        text: '*Try it.* Set the doubler’s charge to the strength of the wash and look at the first litre; then give it ten times as much of the same.',
      },
      close: true,
    },
    { id: 'retorts', kind: 'words', heading: 'Two in series', data: { show: 'retorts' } },
  ],
};
