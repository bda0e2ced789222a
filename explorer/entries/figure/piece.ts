// A figure that an entry can show: what it asks, its rows, and what belongs to it. One file each in pieces/.

import type { Figure } from '../../figures/figure.js';
import type { Common } from '../../state/notebook-record.js';
import type { RunCursor } from '../../state/run-cursor.js';
import type { Scenario } from '../../state/scenario.js';
import type { Asks } from '../../worker/questions.js';
import type { Choice } from '../choice.js';
import type { Answered, CautionName, Here } from '../entry.js';

/** One figure, or two side by side, by name. */
export interface FigureData {
  readonly figures: readonly string[];
}

/** A figure with the rows it takes. */
export interface Drawn {
  readonly figure: Figure<never>;
  readonly rows: unknown;
}

export interface FigurePiece<Asked extends Asks = Asks> {
  readonly asks: (scenario: Scenario, common: Common) => Asked;
  /** The figure and its rows; kept while it is far from view. */
  readonly draw: (here: Here<FigureData, Asked>, now: Answered<Asked>) => Drawn;
  /** Whether runs can be kept on it as pencil lines. */
  readonly keeps?: true;
  /** Where the page's cursor stands on it, and where the page's cursor goes when it is moved there. */
  readonly cursor?: {
    readonly x: (here: Here<FigureData, Asked>, now: Answered<Asked>) => number;
    readonly moved: (here: Here<FigureData, Asked>, x: number) => RunCursor;
  };
  /** What can be laid over it, of those in laying-over.ts. */
  readonly over?: readonly string[];
  /** More words to press under it, and what stands below them. */
  readonly words?: (here: Here<FigureData, Asked>, now: Answered<Asked>) => unknown;
  readonly below?: (here: Here<FigureData, Asked>, now: Answered<Asked>) => unknown;
  readonly notes?: (here: Here<FigureData, Asked>, now: Answered<Asked>) => unknown;
  readonly cautions?: readonly CautionName[];
}

/** A line of the list of figures. */
export interface FigureLine extends Choice {
  readonly load: () => Promise<FigurePiece>;
}

/** A figure in a list of figures, which ask different things. */
export function anyFigure<Asked extends Asks>(piece: FigurePiece<Asked>): FigurePiece {
  return piece as unknown as FigurePiece;
}
