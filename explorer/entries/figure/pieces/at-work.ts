// The still's own plates, and kettle and head on the boiling diagram, at the moment of the page's cursor.

import { nothing } from 'lit';
import { boilingDiagram } from '../../../figures/boiling-diagram.js';
import { xyDiagram } from '../../../figures/xy-diagram.js';
import { boilingDiagramRows, curveRows, plateStairRows } from '../../../state/equilibrium-rows.js';
import { cursorPosition } from '../../../state/run-cursor.js';
import { readAt } from '../../../state/run-results.js';
import { asking, type CeilingAsks } from '../../../pages/the-ceiling/asks.js';
import type { Here } from '../../entry.js';
import { laidOn, overlaysFor } from '../laying-over.js';
import type { FigureData, FigurePiece } from '../piece.js';
import { stillOf } from '../../../state/paths.js';

type Asked = CeilingAsks<'run' | 'equilibrium'>;

const asks = asking('run', 'equilibrium');

function notes(here: Here<FigureData, Asked>, now: NonNullable<Here<FigureData, Asked>['now']>): unknown {
  return overlaysFor(here)?.notes(laidOn(here), stillOf(now.scenario).air.pressure_Pa, here.units) ?? nothing;
}

/** The staircase of the plates as they stand. */
export const platesAtWork: FigurePiece<Asked> = {
  asks,
  over: ['measured'],
  notes,
  cautions: ['kettle'],
  draw: (here, { scenario, answers: { equilibrium, run } }) => {
    const at = cursorPosition(here.cursor, run.solution);
    const curve = here.once('curve', [equilibrium], () => curveRows(equilibrium.slice));
    const data = here.once('at work', [equilibrium, run, scenario, at, here.units], () =>
      plateStairRows(curve, equilibrium, run.solution, scenario, at, here.units),
    );
    return overlaysFor(here)?.overPlates(data, laidOn(here)) ?? { figure: xyDiagram, rows: data };
  },
};

/** Kettle and head where they boil. */
export const boiling: FigurePiece<Asked> = {
  asks,
  over: ['measured'],
  notes,
  cautions: ['kettle'],
  draw: (here, { scenario, answers: { equilibrium, run } }) => {
    const at = cursorPosition(here.cursor, run.solution);
    const kettle = readAt(run.solution.kettleMoleFraction, at);
    const head = readAt(run.solution.spoutMoleFraction, at);
    const pressure = stillOf(scenario).air.pressure_Pa;
    const curve = here.once('curve', [equilibrium], () => curveRows(equilibrium.slice));
    const data = here.once('boiling', [equilibrium, pressure, kettle, head, here.units], () =>
      boilingDiagramRows(curve, equilibrium, pressure, kettle, head, here.units),
    );
    return overlaysFor(here)?.overBoiling(data, laidOn(here)) ?? { figure: boilingDiagram, rows: data };
  },
};
