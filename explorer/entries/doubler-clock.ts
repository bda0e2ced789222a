// What goes on in the doubler of 'The doubler' along the clock: strength, level and temperature.

import type { TimelineRows } from '../rows/timeline.js';
import { resultsOf } from '../state/doubler.js';
import { holderRow, insideDoubler } from '../state/inside-doubler.js';
import { inventedParts } from '../state/invented-stills.js';
import type { UnitSystem } from '../text/unit-systems.js';
import type { Doubling } from './the-doubler.js';

/** What goes on in the doubler along the clock. */
export function insideRows(now: Doubling, units: UnitSystem): TimelineRows {
  const run = now.answers.doubler.solution;
  const { volume_m3, strength } = insideDoubler(run);
  const { time_s } = run;
  const brim = inventedParts.doublerRoom * now.scenario.doublerVolume;
  return {
    subject: 'Inside the doubler',
    since: 'since lighting up',
    panels: [
      {
        key: 'strength',
        title: 'Strength',
        quantity: units.strength,
        height: 190,
        takesIn: [0],
        series: [
          { key: 'spout', label: 'spout', hand: 'ink', weight: 'result', ...sinceFirstDrop(run) },
          { key: 'held', label: 'inside', hand: 'ink', weight: 'second', time_s, values: strength },
        ],
        levels: [],
      },
      {
        key: 'level',
        title: 'What it holds, hot',
        quantity: units.volume,
        height: 98,
        takesIn: [0],
        series: [{ key: 'held', label: 'inside', hand: 'ink', weight: 'result', time_s, values: volume_m3 }],
        levels: [{ key: 'brim', label: 'brim', hand: 'print', at: brim }],
      },
      {
        key: 'temperature',
        title: 'Temperature',
        quantity: units.temperature,
        height: 98,
        takesIn: [],
        series: [
          {
            key: 'doubler',
            label: 'doubler',
            hand: 'ink',
            weight: 'result',
            time_s,
            values: holderRow(run, 'holderTemperature_K', 1),
          },
          { key: 'kettle', label: 'kettle', hand: 'ink', weight: 'second', time_s, values: run.kettleTemperature_K },
        ],
        levels: [],
      },
    ],
    phases: phasesOf(now),
    phasesIn: { panel: 'level', along: 'base' },
    warnings: [],
    units,
  };
}

// Before the first drop the spout says nothing.
function sinceFirstDrop(run: Doubling['answers']['doubler']['solution']): {
  time_s: Float64Array;
  values: Float64Array;
} {
  const found = run.time_s.findIndex((time) => time > (run.firstVapour_s ?? Infinity) + 60);
  const first = found < 0 ? run.rows - 1 : found;
  return { time_s: run.time_s.subarray(first), values: run.spoutStrength.subarray(first) };
}

function phasesOf({ answers, scenario }: Doubling): TimelineRows['phases'] {
  const results = resultsOf(answers.doubler.solution, scenario.chargeVolume);
  return [
    { from_s: 0, to_s: results.kettleBoils_s, label: 'the kettle heats up' },
    { from_s: results.kettleBoils_s, to_s: results.spoutRuns_s, label: 'the doubler' },
    { from_s: results.spoutRuns_s, to_s: results.ended_s, label: 'the spout runs' },
  ];
}
