// npm run bench: times with their errors, on the built library. A time without an error is no result.

import * as lib from '../../dist/lib/index.js';
import { RODAS4 } from '../../dist/lib/numerics/stiff/rodas4.js';
import { RODAS5P } from '../../dist/lib/numerics/stiff/rodas5p.js';
import { medianTime, table } from './timing.mjs';
import { bareYardstick, converged, largestDifference, yardstickProblem } from './yardstick.mjs';

const ACTIVITY = lib.DEFAULT_ACTIVITY;
const ms = (time) => time.toFixed(3);
const system = lib.createEthanolWater();
const reference = converged(system, ACTIVITY);

const rows = [];
for (const tableau of [RODAS4, RODAS5P]) {
  for (const tolerance of [1e-4, 1e-5, 3e-6, 1e-6, 7e-7, 3e-7]) {
    const { run, counts } = bareYardstick(system, ACTIVITY, tableau, tolerance);
    const error = largestDifference(run(), reference);
    const { accepted, rejected } = counts();
    rows.push([
      `integration, ${tableau.name}, tolerance ${tolerance}`,
      ms(medianTime(run)),
      error.toExponential(1),
      `${accepted} + ${rejected}`,
    ]);
  }
}
for (const tolerance of [3e-6, 1e-6, 7e-7]) {
  const solve = () => lib.solveColumn(yardstickProblem(tolerance, ACTIVITY), system);
  const { spoutMoleFraction, statistics } = solve();
  const error = largestDifference(spoutMoleFraction.subarray(1), reference);
  rows.push([
    `solveColumn with all its columns, tolerance ${tolerance}`,
    ms(medianTime(solve)),
    error.toExponential(1),
    `${statistics.acceptedSteps} + ${statistics.rejectedSteps}`,
  ]);
}
console.log('Yardstick problem (20 ideal plates, 3 h, 180 outputs); goal 1.5 ms at 1e-6\n');
console.log(table(['', 'median ms', 'error', 'steps + rejected'], rows));

const model = system.model(ACTIVITY);
const curve = system.curve(ACTIVITY);
const slice = curve.at(101325);
const compositions = Array.from({ length: 200 }, (_none, i) => (i + 0.5) / 200);
const directly = compositions.map((x) => lib.bubblePoint(model, x, 101325).vapourMoleFraction);
const curveError = Math.max(...compositions.map((x, i) => Math.abs(lib.vapourOnSlice(slice, x) - directly[i])));
const simple = {
  kind: 'simple',
  charge: { kind: 'volume', volume_m3: 0.12, strength: 0.095 },
  pressure_Pa: 101325,
  activity: ACTIVITY,
  heat: { kind: 'power', power_W: 5500 },
  until: [{ kind: 'spoutStrengthBelow', strength: 0.2 }],
};
console.log('\nOther calls\n');
console.log(
  table(
    ['', 'median ms', 'error'],
    [
      [
        '200 bubble points',
        ms(medianTime(() => compositions.forEach((x) => lib.bubblePoint(model, x, 101325)))),
        'Newton to round-off',
      ],
      [
        '200 readings of a compiled slice',
        ms(medianTime(() => compositions.forEach((x) => lib.vapourOnSlice(slice, x)))),
        `${curveError.toExponential(1)} in y`,
      ],
      [
        'slice of the compiled curve at a pressure',
        ms(medianTime(() => curve.at(98765))),
        'see the test of the compiled curve',
      ],
      [
        'compiling a curve',
        ms(medianTime(() => lib.compileCurve(model), { warmUp: 3, samples: 11 })),
        'see the test of the compiled curve',
      ],
      [
        'bare pot to 20 % vol at the spout',
        ms(medianTime(() => lib.solveSimple(simple, system))),
        'see the tests of the simple still',
      ],
    ],
  ),
);
