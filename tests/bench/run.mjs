// npm run bench: times with their errors, on the built library. A time without an error is no result.

import * as lib from '../../dist/lib/index.js';
import { RODAS4 } from '../../dist/lib/numerics/stiff/rodas4.js';
import { RODAS5P } from '../../dist/lib/numerics/stiff/rodas5p.js';
import { writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { peerRows } from './peers.mjs';
import { medianTime, table, timeAtError } from './timing.mjs';
import { bareYardstick, converged, largestDifference, yardstickProblem } from './yardstick.mjs';

const ACTIVITY = lib.DEFAULT_ACTIVITY;
const page = [];
const say = (text) => {
  console.log(text);
  page.push(text);
};
const ms = (time) => time.toFixed(3);
const system = lib.createEthanolWater();
const reference = converged(system, ACTIVITY);

const TOLERANCES = [1e-4, 1e-5, 3e-6, 1e-6, 5e-7, 2e-7];

const runs = [];
for (const tableau of [RODAS4, RODAS5P]) {
  for (const tolerance of TOLERANCES) {
    const { run, counts } = bareYardstick(system, ACTIVITY, tableau, tolerance);
    const error = largestDifference(run(), reference);
    const { accepted, rejected } = counts();
    runs.push({ name: tableau.name, tolerance, ms: medianTime(run), error, work: `${accepted} + ${rejected} steps` });
  }
}
for (const tolerance of [3e-6, 1e-6, 5e-7]) {
  const solve = () => lib.solveColumn(yardstickProblem(tolerance, ACTIVITY), system);
  const { spoutMoleFraction, statistics } = solve();
  const error = largestDifference(spoutMoleFraction.subarray(1), reference);
  const work = `${statistics.acceptedSteps} + ${statistics.rejectedSteps} steps`;
  runs.push({ name: 'solveColumn, all columns', tolerance, ms: medianTime(solve), error, work });
}
const peers = peerRows(system.curve(ACTIVITY).at(101325), reference);
runs.push(...peers.rows);

say('## Yardstick problem\n');
say(
  '20 ideal plates above the kettle, 3 h, 180 outputs. Error: largest difference of the spout from a converged solution.\n',
);
say(
  table(
    ['solver', 'tolerance', 'median ms', 'error', 'work'],
    runs.map((run) => [run.name, run.tolerance, ms(run.ms), run.error.toExponential(1), run.work]),
  ),
);
peers.notes.forEach((note) => say(`\n${note}`));

say('\nAt an error of 1e-6, read between the rows above (straight lines in logarithms):\n');
const names = [...new Set(runs.map((run) => run.name))];
const atGoal = names.map((name) => ({
  name,
  ms: timeAtError(
    runs.filter((run) => run.name === name),
    1e-6,
  ),
}));
const ours = Math.min(...atGoal.filter(({ name }) => name.startsWith('rodas')).map((run) => run.ms ?? Infinity));
say(
  table(
    ['solver', 'ms', 'times ours'],
    atGoal.map((run) => [
      run.name,
      run.ms === null ? 'not reached' : ms(run.ms),
      run.ms === null ? '' : (run.ms / ours).toFixed(1),
    ]),
  ),
);

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
say('\n## Other calls\n');
say(
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

const head = `# Benchmarks

Written by \`npm run bench\`; do not edit. ${new Date().toISOString().slice(0, 10)}, Node ${process.versions.node}, ${cpus()[0].model}, ${cpus().length} cores. Medians after warm-up; times move by a third with what else the machine does, errors do not.
`;
writeFileSync(new URL('../../docs/benchmarks.md', import.meta.url), `${head}\n${page.join('\n')}\n`);
