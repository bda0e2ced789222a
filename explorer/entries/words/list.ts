// The results in words that an entry can show, in the order of the list to choose from. A new one is one file in
// pieces/ and one line here.

import { anyPiece, type PieceLine } from '../pieces.js';

const steps = async (): Promise<typeof import('./pieces/the-steps.js')> => import('./pieces/the-steps.js');
const ninetySix = async (): Promise<typeof import('./pieces/the-96.js')> => import('./pieces/the-96.js');
const stills = async (): Promise<typeof import('./pieces/stills.js')> => import('./pieces/stills.js');
const doubler = async (): Promise<typeof import('./pieces/doubler.js')> => import('./pieces/doubler.js');

export const wordLines: readonly PieceLine[] = [
  {
    name: 'run',
    title: 'The run in words',
    load: async () => anyPiece((await import('./pieces/the-run.js')).runInWords),
  },
  { name: 'why-steps', title: 'Why the steps stop', load: async () => anyPiece((await steps()).whySteps) },
  { name: 'azeotrope', title: 'The azeotrope', load: async () => anyPiece((await steps()).theAzeotrope) },
  { name: 'strangers', title: 'A gift and a wall', load: async () => anyPiece((await steps()).strangers) },
  {
    name: 'plates-at-work',
    title: 'Your plates at work, in words',
    load: async () => anyPiece((await steps()).platesAtWorkWords),
  },
  { name: 'ninety-six', title: 'What is the 96 %?', load: async () => anyPiece((await ninetySix()).theNinetySix) },
  {
    name: 'last-tenth',
    title: 'A question: the last tenth',
    load: async () => anyPiece((await ninetySix()).lastTenth),
  },
  {
    name: 'sheet-run',
    title: 'The run by its sheet, in words',
    load: async () => anyPiece((await import('./pieces/sheet-run.js')).sheetInWords),
  },
  {
    name: 'limits',
    title: 'What the metal says to the run',
    load: async () => anyPiece((await import('./pieces/limits.js')).limitsInWords),
  },
  {
    name: 'recovered',
    title: 'What comes over from each still',
    load: async () => anyPiece((await stills()).recovered),
  },
  {
    name: 'column-heat',
    title: 'A question: the column’s heat',
    load: async () => anyPiece((await stills()).heatOfTheColumn),
  },
  {
    name: 'doubler-besides',
    title: 'The doubler beside the pot',
    load: async () => anyPiece((await stills()).doublerBesides),
  },
  {
    name: 'doubler-first',
    title: 'What a doubler does first and later',
    load: async () => anyPiece((await doubler()).doublerFirst),
  },
  { name: 'retorts', title: 'Two doublers in series', load: async () => anyPiece((await doubler()).retorts) },
  {
    name: 'first-to-tell',
    title: 'Which thermometer tells first',
    load: async () => anyPiece((await import('./pieces/first-to-tell.js')).thermometerThatTells),
  },
];
