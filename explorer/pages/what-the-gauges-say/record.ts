// The page 'What the gauges say': from thermometers, barometer and hydrometer to what is in the kettle and at the spout.

import type { PageRecord } from '../../state/notebook-record.js';

export const whatTheGaugesSay: PageRecord = {
  name: 'what-the-gauges-say',
  title: 'What the gauges say',
  promise: 'From a thermometer, a barometer and a hydrometer to what is in the kettle and at the spout.',
  entries: [
    { id: 'kettle', kind: 'working', heading: 'The kettle', data: { show: 'kettle' } },
    { id: 'head', kind: 'working', heading: 'The head', data: { show: 'head' } },
    { id: 'first', kind: 'words', heading: 'Which thermometer tells first?', data: { show: 'first-to-tell' } },
    { id: 'spout', kind: 'working', heading: 'The spout', data: { show: 'spout' } },
    { id: 'two-ways', kind: 'working', heading: 'Can both be right?', data: { show: 'two-ways' } },
    { id: 'wall', kind: 'working', heading: 'A table for the wall', data: { show: 'wall-table' } },
  ],
};
