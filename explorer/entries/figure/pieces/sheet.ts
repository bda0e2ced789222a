// The run of the page's run sheet along the clock: strengths, temperatures, what runs and what it takes, with the steps under brackets.

import { fromSI, type Limit, type RunStep } from '#lib/index.js';
import { alongClock } from '../../../figures/run/along-clock.js';
import { runFigure } from '../../../figures/run/run-figure.js';
import type { RunFigureRows, RunPhase, RunWarning } from '../../../rows/run.js';
import { cursorX, timeCursor } from '../../../state/run-cursor.js';
import { spoutAlongTime } from '../../../state/spout.js';
import { withJumps } from '../../../state/step-jumps.js';
import { fixed, joined } from '../../../text/format.js';
import type { UnitSystem } from '../../../text/unit-systems.js';
import type { RunParts } from '../../../worker/kinds/run.js';
import { sheetAsks, sheetRun, type SheetAsks } from '../../run-sheet/asks.js';
import { limitName, stepSaid } from '../../run-sheet/said.js';
import type { FigurePiece } from '../piece.js';
import type { SheetRun } from '../../../state/run-sheet.js';

export const sheetTimeline: FigurePiece<SheetAsks> = {
  asks: sheetAsks,
  cautions: ['spout', 'kettle'],
  draw: (
    { units, once },
    {
      answers: {
        sheetRun: { solution },
      },
    },
  ) => ({
    figure: runFigure,
    rows: once('sheet', [solution, units], () => rows(solution, units)),
  }),
  cursor: {
    x: ({ cursor }, now) => cursorX(timeCursor(cursor, sheetRun(now)), sheetRun(now)),
    moved: (_here, x) => ({ along: 'time', x }),
  },
};

/** Room above the flow for the brackets of the steps. */
const headroom = 1.5;

function rows(run: SheetRun & Pick<RunParts, 'limits'>, units: UnitSystem): RunFigureRows {
  const { limits } = run;
  const steps = run.problem.sheet;
  const { time_s } = run;
  const perHour = fromSI(1, 'h');
  const flow = {
    unit: `${units.volume.unit}/h`,
    toShown: (si: number): number => units.volume.toShown(si) / perHour,
    text: (si: number): string => fixed(units.volume.toShown(si) / perHour, 2),
    withUnit: (si: number): string => joined(fixed(units.volume.toShown(si) / perHour, 2), `${units.volume.unit}/h`),
  };
  return alongClock({
    since: 'since lighting up',
    panels: [
      {
        key: 'strength',
        title: 'Strength',
        quantity: units.strength,
        height: 190,
        takesIn: [0, 1],
        curves: [
          { key: 'spout', label: 'spout', weight: 'result', ...spoutAlongTime(run) },
          { key: 'kettle', label: 'kettle', weight: 'second', along: time_s, values: run.kettleStrength },
        ],
        levels: [],
      },
      {
        key: 'temperature',
        title: 'Temperature',
        quantity: units.temperature,
        height: 110,
        takesIn: [],
        curves: [
          { key: 'head', label: 'head', weight: 'result', along: time_s, values: run.headTemperature_K },
          { key: 'kettle', label: 'kettle', weight: 'second', along: time_s, values: run.kettleTemperature_K },
        ],
        levels: [],
      },
      {
        key: 'flow',
        title: 'At the spout',
        quantity: flow,
        height: 110,
        takesIn: [0, headroom * Math.max(...run.distillateRate_m3_s)],
        curves: [
          {
            key: 'flow',
            label: 'spout runs',
            weight: 'result',
            ...withJumps(run, run.distillateRate_m3_s),
          },
        ],
        levels: [],
      },
      {
        key: 'heat',
        title: 'Heat',
        quantity: units.power,
        height: 92,
        takesIn: [0],
        curves: [
          {
            key: 'in',
            label: 'into the kettle',
            weight: 'result',
            ...withJumps(run, run.power_W),
          },
          {
            key: 'condenser',
            label: 'condenser',
            weight: 'second',
            along: time_s,
            values: run.condenserDuty_W,
          },
          { key: 'lost', label: 'lost', weight: 'third', along: time_s, values: run.lost_W },
        ],
        levels: [],
      },
    ],
    phases: phasesOf(run, steps, units),
    phasesIn: { panel: 'flow', along: 'top' },
    warnings: warningsOf(run, limits),
    units,
  });
}

/** Where each limit is first passed, on a curve it has to do with, so that two ticks seldom meet. */
function warningsOf(run: SheetRun, limits: readonly Limit[]): RunWarning[] {
  return limits.map(({ kind, from_s }) => {
    const row = Math.max(
      0,
      run.time_s.findIndex((time) => time >= from_s),
    );
    const { panel, value } = tickOn(kind, run, row);
    return { key: kind, panel, at: from_s, value, words: limitName[kind] };
  });
}

function tickOn(kind: Limit['kind'], run: SheetRun, row: number): { panel: string; value: number } {
  if (kind === 'condenserShort') return { panel: 'heat', value: run.condenserDuty_W[row]! };
  if (kind === 'flooding' || kind === 'heaterShort') return { panel: 'heat', value: run.power_W[row]! };
  if (kind === 'weeping') return { panel: 'flow', value: run.distillateRate_m3_s[row]! };
  return { panel: 'temperature', value: run.kettleTemperature_K[row]! };
}

function phasesOf(run: SheetRun, steps: readonly RunStep[], units: UnitSystem): RunPhase[] {
  const starts = run.stepStarts.map((row) => run.time_s[row]!);
  const end_s = run.time_s.at(-1)!;
  return starts.flatMap((from_s, index) => {
    const step = steps[index];
    const to_s = starts[index + 1] ?? end_s;
    return step === undefined || to_s <= from_s ? [] : [{ from: from_s, to: to_s, label: stepSaid(step, units) }];
  });
}
