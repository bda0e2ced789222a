// The page 'The ceiling': why a column stops short of pure, with the reader's own charge and still.

import type { PageRecord } from '../../state/notebook-record.js';

export const theCeiling: PageRecord = {
  name: 'the-ceiling',
  title: 'The ceiling',
  promise: 'Why plates top out near 96 % vol, and how close yours can come.',
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
          ' efficient, reflux ',
          { blank: 'sheet[2].reflux' },
          ', heated by ',
          { blank: 'still.kettle.power_W' },
          ', in air of ',
          { blank: 'still.air.pressure_Pa' },
          '.',
        ],
        hands: true,
      },
    },
    { id: 'run', kind: 'figure', data: { figures: ['run'] }, close: true },
    { id: 'run-words', kind: 'words', data: { show: 'run' } },
    { id: 'why', kind: 'words', heading: 'Why the steps stop', data: { show: 'why-steps' } },
    { id: 'steps', kind: 'figure', data: { figures: ['ideal-steps', 'last-corner'] } },
    { id: 'azeotrope', kind: 'words', data: { show: 'azeotrope' } },
    { id: 'moves', kind: 'ceiling-moves', data: {} },
    { id: 'strangers', kind: 'words', heading: 'A gift and a wall', data: { show: 'strangers' } },
    { id: 'at-work', kind: 'words', heading: 'Your plates at work', data: { show: 'plates-at-work' } },
    { id: 'at-work-drawn', kind: 'figure', data: { figures: ['plates-at-work', 'boiling'] } },
    { id: 'ninety-six', kind: 'words', heading: 'What is the 96 %?', data: { show: 'ninety-six' } },
    { id: 'models', kind: 'table', data: { show: 'stages-by-model' }, close: true },
    { id: 'last-tenth', kind: 'words', data: { show: 'last-tenth' }, close: true },
    {
      id: 'measured-said',
      kind: 'text',
      heading: 'What was measured',
      data: {
        text: 'The curve on this page is fitted to published measurements. Each mark is one of them; the lower panel shows how far it lies from the curve at its own pressure.',
      },
    },
    { id: 'measured', kind: 'figure', data: { figures: ['measured'] } },
    { id: 'plates-or-reflux', kind: 'table', heading: 'Plates or reflux?', data: { show: 'plates-or-reflux' } },
  ],
};
