// The run of the page's run sheet along the clock: strengths, temperatures, what runs and what it takes, with the steps under brackets.

import { fromSI, type Limit, type TrainSolution, type TrainStep } from '#lib/index.js';
import { timeline } from '../../../figures/timeline.js';
import type { TimelineRows } from '../../../rows/timeline.js';
import { remembered } from '../../../state/memo.js';
import { cursorX, timeCursor } from '../../../state/run-cursor.js';
import { withJumps } from '../../../state/step-jumps.js';
import { fixed, joined } from '../../../text/format.js';
import type { UnitSystem } from '../../../text/unit-systems.js';
import { sheetAsks, sheetRun, stepsRun, type SheetAsks } from '../../run-sheet/asks.js';
import { limitName, stepSaid } from '../../run-sheet/said.js';
import type { FigurePiece } from '../piece.js';

export const sheetTimeline: FigurePiece<SheetAsks> = {
  asks: sheetAsks,
  cautions: ['spout', 'kettle'],
  draw: ({ units, common }, now) => ({
    figure: timeline,
    rows: rows(sheetRun(now), now.answers.sheetRun.limits, stepsRun(now, common), units),
  }),
  cursor: {
    x: ({ cursor }, now) => cursorX(timeCursor(cursor, sheetRun(now)), sheetRun(now)),
    moved: (_here, x) => ({ along: 'time', x }),
  },
};

/** Room above the flow for the brackets of the steps. */
const headroom = 1.5;

const rows = remembered(
  (run: TrainSolution, limits: readonly Limit[], steps: readonly TrainStep[], units: UnitSystem): TimelineRows => {
    const { time_s } = run;
    const drawn = firstDrop(run);
    const spout = { time_s: time_s.subarray(drawn), values: run.spoutStrength.subarray(drawn) };
    const perHour = fromSI(1, 'h');
    const flow = {
      unit: `${units.volume.unit}/h`,
      toShown: (si: number): number => units.volume.toShown(si) / perHour,
      text: (si: number): string => fixed(units.volume.toShown(si) / perHour, 2),
      withUnit: (si: number): string => joined(fixed(units.volume.toShown(si) / perHour, 2), `${units.volume.unit}/h`),
    };
    return {
      subject: 'The run by its sheet',
      since: 'since lighting up',
      panels: [
        {
          key: 'strength',
          title: 'Strength',
          quantity: units.strength,
          height: 190,
          takesIn: [0, 1],
          series: [
            { key: 'spout', label: 'spout', hand: 'ink', weight: 'result', ...spout },
            { key: 'kettle', label: 'kettle', hand: 'ink', weight: 'second', time_s, values: run.kettleStrength },
          ],
          levels: [],
        },
        {
          key: 'temperature',
          title: 'Temperature',
          quantity: units.temperature,
          height: 110,
          takesIn: [],
          series: [
            { key: 'head', label: 'head', hand: 'ink', weight: 'result', time_s, values: run.headTemperature_K },
            { key: 'kettle', label: 'kettle', hand: 'ink', weight: 'second', time_s, values: run.kettleTemperature_K },
          ],
          levels: [],
        },
        {
          key: 'flow',
          title: 'At the spout',
          quantity: flow,
          height: 110,
          takesIn: [0, headroom * Math.max(...run.distillateRate_m3_s)],
          series: [
            {
              key: 'flow',
              label: 'spout runs',
              hand: 'ink',
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
          series: [
            {
              key: 'in',
              label: 'into the kettle',
              hand: 'ink',
              weight: 'result',
              ...withJumps(run, run.power_W),
            },
            {
              key: 'condenser',
              label: 'condenser',
              hand: 'ink',
              weight: 'second',
              time_s,
              values: run.condenserDuty_W,
            },
            { key: 'lost', label: 'lost', hand: 'ink', weight: 'third', time_s, values: run.lost_W },
          ],
          levels: [],
        },
      ],
      phases: phasesOf(run, steps, units),
      phasesIn: { panel: 'flow', along: 'top' },
      warnings: warningsOf(run, limits),
      units,
    };
  },
);

/** Where each limit is first passed, on a curve it has to do with, so that two ticks seldom meet. */
function warningsOf(run: TrainSolution, limits: readonly Limit[]): TimelineRows['warnings'] {
  return limits.map(({ kind, from_s }) => {
    const row = Math.max(
      0,
      run.time_s.findIndex((time) => time >= from_s),
    );
    const { panel, value } = tickOn(kind, run, row);
    return { key: kind, panel, at_s: from_s, value, words: limitName[kind] };
  });
}

function tickOn(kind: Limit['kind'], run: TrainSolution, row: number): { panel: string; value: number } {
  if (kind === 'condenserShort') return { panel: 'heat', value: run.condenserDuty_W[row]! };
  if (kind === 'flooding' || kind === 'heaterShort') return { panel: 'heat', value: run.power_W[row]! };
  if (kind === 'weeping') return { panel: 'flow', value: run.distillateRate_m3_s[row]! };
  return { panel: 'temperature', value: run.kettleTemperature_K[row]! };
}

function phasesOf(run: TrainSolution, steps: readonly TrainStep[], units: UnitSystem): TimelineRows['phases'] {
  const starts = run.stepStarts.map((row) => run.time_s[row]!);
  const end_s = run.time_s.at(-1)!;
  return starts.flatMap((from_s, index) => {
    const step = steps[index];
    const to_s = starts[index + 1] ?? end_s;
    return step === undefined || to_s <= from_s ? [] : [{ from_s, to_s, label: stepSaid(step, units) }];
  });
}

/** Before something has run out of it the spout says nothing. */
function firstDrop(run: TrainSolution): number {
  const found = run.time_s.findIndex((time) => time > (run.firstVapour_s ?? Infinity) + 60);
  return found < 0 ? run.rows - 1 : found;
}
