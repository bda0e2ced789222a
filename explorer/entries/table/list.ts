// The tables an entry can show, in the order of the list to choose from. A new one is one file in pieces/ and one
// line here.

import { anyPiece, type PieceLine } from '../pieces.js';

export const tableLines: readonly PieceLine[] = [
  {
    name: 'plates-or-reflux',
    title: 'Plates or reflux',
    load: async () => anyPiece((await import('./pieces/plates-or-reflux.js')).platesOrReflux),
  },
  {
    name: 'stages-by-model',
    title: 'Ideal stages by model',
    load: async () => anyPiece((await import('./pieces/models.js')).stagesByModel),
  },
  {
    name: 'jars',
    title: 'Jars of the run by its sheet',
    load: async () => anyPiece((await import('./pieces/jars.js')).jars),
  },
  {
    name: 'stills',
    title: 'What each still makes of the charge',
    load: async () => anyPiece((await import('./pieces/stills.js')).stillsTable),
  },
  {
    name: 'doubler-charges',
    title: 'What a doubler gives, by its charge',
    load: async () => anyPiece((await import('./pieces/doubler.js')).doublerCharges),
  },
];
