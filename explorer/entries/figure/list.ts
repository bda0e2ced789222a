// The figures an entry can show, in the order of the list to choose from. A new one is one file in pieces/ and one
// line here.

import { anyFigure, type FigureLine } from './piece.js';

export const figureLines: readonly FigureLine[] = [
  {
    name: 'run',
    title: 'The run: strength and temperatures',
    load: async () => anyFigure((await import('./pieces/run.js')).run),
  },
  {
    name: 'ideal-steps',
    title: 'Ideal steps on the equilibrium curve',
    load: async () => anyFigure((await import('./pieces/ideal-steps.js')).idealSteps),
  },
  {
    name: 'last-corner',
    title: 'The last corner of the steps',
    load: async () => anyFigure((await import('./pieces/ideal-steps.js')).lastCornerSteps),
  },
  {
    name: 'plates-at-work',
    title: 'Your plates at work',
    load: async () => anyFigure((await import('./pieces/at-work.js')).platesAtWork),
  },
  {
    name: 'boiling',
    title: 'What boils at what temperature',
    load: async () => anyFigure((await import('./pieces/at-work.js')).boiling),
  },
  {
    name: 'measured',
    title: 'Measured points and the model',
    load: async () => anyFigure((await import('./pieces/measured.js')).measured),
  },
  {
    name: 'sheet',
    title: 'The run by its sheet, along the clock',
    load: async () => anyFigure((await import('./pieces/sheet.js')).sheetTimeline),
  },
  {
    name: 'column-strength',
    title: 'Strength up the column',
    load: async () => anyFigure((await import('./pieces/column-profile.js')).strengthUpTheColumn),
  },
  {
    name: 'column-temperature',
    title: 'Temperature up the column',
    load: async () => anyFigure((await import('./pieces/column-profile.js')).temperatureUpTheColumn),
  },
  {
    name: 'stills',
    title: 'One charge through several stills',
    load: async () => anyFigure((await import('./pieces/stills.js')).stills),
  },
  {
    name: 'doubler',
    title: 'With a doubler and without',
    load: async () => anyFigure((await import('./pieces/doubler.js')).doublerStrength),
  },
  {
    name: 'inside-doubler',
    title: 'Inside the doubler',
    load: async () => anyFigure((await import('./pieces/doubler.js')).insideTheDoubler),
  },
  {
    name: 'contraction',
    title: 'Why volumes do not add up',
    load: async () => (await import('./pieces/contraction.js')).contractionPiece,
  },
];
