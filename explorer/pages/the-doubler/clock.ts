// What goes on in the doubler of 'The doubler' along the clock: strength, level and temperature.

import { alongClock } from '../../figures/run/along-clock.js';
import type { RunFigureRows } from '../../rows/run.js';
import { spoutAlongTime } from '../../state/spout.js';
import { resultsOf } from './questions.js';
import { holderRow, insideDoubler } from './inside.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import type { Doubling } from './words.js';

/** What goes on in the doubler along the clock. */
export function insideRows(now: Doubling, units: UnitSystem): RunFigureRows {
  const run = now.answers.doubler.solution;
  const { volume_m3, strength } = insideDoubler(run);
  const { time_s } = run;
  const brim = run.problem.still.doublers[0]!.volume_m3;
  return alongClock({
    since: 'since lighting up',
    panels: [
      {
        key: 'strength',
        title: 'Strength',
        quantity: units.strength,
        height: 190,
        takesIn: [0],
        curves: [
          { key: 'spout', label: 'spout', weight: 'result', ...spoutAlongTime(run) },
          { key: 'held', label: 'inside', weight: 'second', along: time_s, values: strength },
        ],
        levels: [],
      },
      {
        key: 'level',
        title: 'What it holds, hot',
        quantity: units.volume,
        height: 98,
        takesIn: [0],
        curves: [{ key: 'held', label: 'inside', weight: 'result', along: time_s, values: volume_m3 }],
        levels: [{ key: 'brim', label: 'brim', note: '', hand: 'print', at: brim, form: 'inside' }],
      },
      {
        key: 'temperature',
        title: 'Temperature',
        quantity: units.temperature,
        height: 98,
        takesIn: [],
        curves: [
          {
            key: 'doubler',
            label: 'doubler',
            weight: 'result',
            along: time_s,
            values: holderRow(run, 'holderTemperature_K', 1),
          },
          { key: 'kettle', label: 'kettle', weight: 'second', along: time_s, values: run.kettleTemperature_K },
        ],
        levels: [],
      },
    ],
    phases: phasesOf(now),
    phasesIn: { panel: 'level', along: 'base' },
    warnings: [],
    units,
  });
}

function phasesOf({ answers, scenario }: Doubling): RunFigureRows['phases'] {
  const results = resultsOf(answers.doubler.solution, scenario.charge.volume_m3);
  return [
    { from: 0, to: results.kettleBoils_s, label: 'the kettle heats up' },
    { from: results.kettleBoils_s, to: results.spoutRuns_s, label: 'the doubler' },
    { from: results.spoutRuns_s, to: results.ended_s, label: 'the spout runs' },
  ];
}
