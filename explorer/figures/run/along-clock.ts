// Panels of one run along the clock, from plain columns: the read-out and the table follow from the curves.

import type { PanelQuantity, RunCurve, RunFigureRows, RunPanel, RunPhase, RunWarning } from '../../rows/run.js';
import type { Column, CurveWeight, FigureUnits } from '../../rows/shown.js';
import { pick, risingRows } from '../columns.js';

/** One curve, SI; all in ink. */
export interface ClockCurve {
  readonly key: string;
  readonly label: string;
  readonly weight: CurveWeight;
  readonly along: Column;
  readonly values: Column;
}

export interface ClockPanel {
  readonly key: string;
  readonly title: string;
  readonly quantity: PanelQuantity;
  /** Px of the plot rectangle on a wide page. */
  readonly height: number;
  /** Kept in view whatever the curves do, SI. */
  readonly takesIn: readonly number[];
  /** The more telling first. */
  readonly curves: readonly ClockCurve[];
  readonly levels: RunPanel['levels'];
}

export interface ClockRows {
  readonly panels: readonly ClockPanel[];
  /** What time counts from: 'since lighting up'. */
  readonly since: string;
  readonly phases: readonly RunPhase[];
  readonly phasesIn: RunFigureRows['phasesIn'];
  readonly warnings: readonly RunWarning[];
  readonly units: FigureUnits;
}

const narrowShare = 0.86;

export function alongClock({ panels, since, phases, units, ...rest }: ClockRows): RunFigureRows {
  return {
    ...rest,
    along: { quantity: units.time, title: `${units.time.words} ${since}` },
    start: 0.4,
    panels: panels.map(panelOf),
    readings: {
      caption: `The run in numbers, ${since}`,
      columns: [{ label: 'value', hand: 'ink' }],
      rows: panels.flatMap(({ title, quantity, curves }) =>
        curves.map(({ label, along, values }) => ({
          label: label === '' ? title : label,
          quantity,
          curves: [{ along, values }],
          tableOnly: false,
        })),
      ),
      note: (at) => {
        const phase = phases.find(({ from, to }) => at >= from && at < to);
        return phase === undefined ? since : `${since}: ${phase.label}`;
      },
    },
    phases,
    units,
  };
}

function panelOf({ height, takesIn, curves, ...panel }: ClockPanel): RunPanel {
  return {
    ...panel,
    subject: panel.title,
    height: { wide: height, narrow: Math.round(narrowShare * height) },
    axis: { kind: 'round', takesIn, ticks: height > 150 ? 5 : 3 },
    curves: curves.map(drawn).reverse(),
    measure: null,
    says: [],
  };
}

/** Of rows at one moment the last counts: a step of no length has no value of its own. */
function drawn({ along, values, ...curve }: ClockCurve): RunCurve {
  const rows = risingRows(along, 0);
  return { ...curve, hand: 'ink', along: pick(along, rows), values: pick(values, rows), side: 'end', read: true };
}
