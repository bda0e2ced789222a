// Ideal steps from the charge with everything sent back: on the whole curve, and its last corner, with measured
// points, other models and Raoult's law where they are wanted.

import { nothing } from 'lit';
import type { StaircaseDiagramRows } from '../../../rows/equilibrium.js';
import { lastCorner } from '../../../figures/last-corner.js';
import { xyDiagram } from '../../../figures/xy-diagram.js';
import { curveRows, idealStairRows } from '../../../state/equilibrium-rows.js';
import { asking, type CeilingAsks, type CeilingNow } from '../../../pages/the-ceiling/asks.js';
import type { Here } from '../../entry.js';
import { laidOn, overlaysFor } from '../laying-over.js';
import type { FigureData, FigurePiece } from '../piece.js';
import { stillOf } from '../../../state/paths.js';

type Names = 'equilibrium' | 'raoult' | 'nrtl' | 'wilson';
type Asked = CeilingAsks<Names>;
type Steps = Here<FigureData, Asked>;

const asks = asking('equilibrium', 'raoult', 'nrtl', 'wilson');

function rows({ units, common, once }: Steps, { scenario, answers }: CeilingNow<Names>): StaircaseDiagramRows {
  const { equilibrium, raoult } = answers;
  const { strength } = scenario.charge;
  const pressure = stillOf(scenario).air.pressure_Pa;
  const curve = once('curve', [equilibrium], () => curveRows(equilibrium.slice));
  const strangers = common.raoult === true ? once('raoult', [raoult], () => curveRows(raoult.slice)) : null;
  return once('stair', [equilibrium, strangers, strength, pressure, units], () =>
    idealStairRows(curve, equilibrium, strangers, strength, pressure, units),
  );
}

/** On the whole curve. */
export const idealSteps: FigurePiece<Asked> = {
  asks,
  over: ['measured', 'models', 'raoult'],
  draw: (here, now) => {
    const data = rows(here, now);
    const laid = overlaysFor(here)?.overStaircase(
      data,
      laidOn(here),
      now.answers,
      stillOf(now.scenario).air.pressure_Pa,
      here.units,
    );
    return laid?.xy ?? { figure: xyDiagram, rows: data };
  },
  below: (here, now) => overlaysFor(here)?.modelWords(laidOn(here), now.answers, here.units) ?? nothing,
  notes: (here, now) =>
    overlaysFor(here)?.notes(laidOn(here), stillOf(now.scenario).air.pressure_Pa, here.units) ?? nothing,
};

/** The last corner of the same steps. */
export const lastCornerSteps: FigurePiece<Asked> = {
  ...idealSteps,
  draw: (here, now) => {
    const data = rows(here, now);
    const laid = overlaysFor(here)?.overStaircase(
      data,
      laidOn(here),
      now.answers,
      stillOf(now.scenario).air.pressure_Pa,
      here.units,
    );
    return laid?.corner ?? { figure: lastCorner, rows: data };
  },
};
