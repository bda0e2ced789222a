// Published points beside the model, and what they differ by. No number of the page changes it.

import { measuredPoints } from '../../../figures/plots/measured-points.js';
import { measuredPointsRows, measuredQuestions } from '../../../state/measured-against-model.js';
import type { EquilibriumQuestion } from '../../../worker/kinds/equilibrium.js';
import { measuredNote } from '../../measured-notes.js';
import type { FigurePiece } from '../piece.js';

export const measured: FigurePiece<Readonly<Record<string, EquilibriumQuestion>>> = {
  asks: () => measuredQuestions,
  draw: ({ once }, { answers }) => ({
    figure: measuredPoints,
    rows: once('measured', [answers], () => measuredPointsRows(answers)),
  }),
  notes: () => measuredNote(null),
};
