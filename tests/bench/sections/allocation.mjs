// What a run of the yardstick problem costs in counts: the numbers the tests hold it to (tests/lib/run/engines/equal-flows/work.test.ts), and the
// bytes it leaves to the garbage collector, measured in a process of its own.

import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { table } from '../timing.mjs';
import { yardstickProblem } from '../yardstick.mjs';

export const allocation = { title: 'Counts', run };

function run({ lib, system, activity }) {
  const { statistics } = lib.solve(yardstickProblem(1e-6, activity), system);
  const program = fileURLToPath(new URL('../bytes.mjs', import.meta.url));
  const flags = ['--expose-gc', '--single-threaded', '--max-semi-space-size=64'];
  const bytes = JSON.parse(execFileSync(process.execPath, [...flags, program], { encoding: 'utf8' }));
  return [
    'The yardstick problem by `solve` at a tolerance of 1e-6; bytes on the JavaScript heap, after warm-up.',
    table(
      ['count', 'of a run'],
      [
        ['accepted steps', statistics.acceptedSteps],
        ['rejected steps', statistics.rejectedSteps],
        ['right-hand sides', statistics.rightHandSides],
        ['Jacobians', statistics.jacobians],
        ['factorisations', statistics.factorisations],
        ['bytes a step, bare integration', Math.round(bytes.perStep)],
        ['kB a run, with its rows and columns', Math.round(bytes.perRun / 1024)],
      ],
    ),
  ];
}
