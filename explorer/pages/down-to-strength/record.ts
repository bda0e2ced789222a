// The page 'Down to strength': bringing spirit down with water, blending, filling bottles.

import type { PageRecord } from '../../state/notebook-record.js';

export const downToStrength: PageRecord = {
  name: 'down-to-strength',
  title: 'Down to strength',
  promise: 'How much water a spirit takes, and what comes of it.',
  entries: [
    { id: 'bring-down', kind: 'working', data: { show: 'bring-down' } },
    { id: 'in-steps', kind: 'working', heading: 'In portions', data: { show: 'in-steps' } },
    { id: 'bottles', kind: 'working', heading: 'Into bottles', data: { show: 'bottles' } },
    { id: 'contraction', kind: 'figure', heading: 'Why volumes do not add up', data: { figures: ['contraction'] } },
    { id: 'to-make', kind: 'working', heading: 'What it takes', data: { show: 'to-make' } },
    { id: 'together', kind: 'working', heading: 'Pouring together', data: { show: 'pour-together' } },
    { id: 'obscured', kind: 'working', heading: 'Sugar and oak', data: { show: 'obscured' } },
  ],
};
