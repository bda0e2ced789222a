// The yardstick problem: our methods, the public door, and the peers, as work against error.

import { BDF5 } from '../../../dist/lib/numerics/stiff/multistep-step.js';
import { RODAS4 } from '../../../dist/lib/numerics/stiff/rodas4.js';
import { RODAS5P } from '../../../dist/lib/numerics/stiff/rodas5p.js';
import { peerRows } from '../peers.mjs';
import { pictureLines } from '../pictures.mjs';
import { inMs, table, timed, timesAtError } from '../timing.mjs';
import { bareYardstick, converged, largestDifference, yardstickProblem } from '../yardstick.mjs';

const SWEEP = [1e-4, 1e-5, 5e-6, 3e-6, 2e-6, 1e-6, 5e-7, 2e-7];
const GOAL = 1e-6;

export const yardstick = { title: 'Yardstick problem', run };

function run({ lib, system, activity }) {
  const reference = converged(system, activity);
  const runs = [
    ...sweep(BDF5),
    ...SWEEP.filter((tolerance) => tolerance < 1e-4).map(solveRow),
    ...[RODAS4, RODAS5P].flatMap(sweep),
  ];
  const peers = peerRows(system.curve(activity).at(101325), reference);
  runs.push(...peers.rows);
  return [
    '20 ideal plates above the kettle, 3 h, 180 outputs (tests/bench/yardstick.mjs). Error: largest difference of the spout’s mole fraction over all outputs from a converged solution. All solvers use the same table of the equilibrium; CVODE has its memory reused and an analytic banded Jacobian; scipy’s right-hand sides and Jacobians are compiled C, except where it says numpy. Times of the peers are CPU times.',
    table(
      ['solver', 'tolerance', 'median', 'least', 'error', 'work'],
      runs.map((row) => [row.name, row.tolerance, inMs(row.ms), inMs(row.least), row.error.toExponential(1), row.work]),
    ),
    ...pictureLines(yardstick.title),
    ...peers.notes,
    `At an error of ${GOAL}, read between the rows above (straight lines in logarithms); ratios are of least times:`,
    atGoal(runs),
  ];

  function sweep(method) {
    return SWEEP.map((tolerance) => bareRow(method, tolerance));
  }

  function bareRow(method, tolerance) {
    const { run, counts } = bareYardstick(system, activity, method, tolerance);
    const error = largestDifference(run(), reference);
    const { accepted, rejected, rightHandSides } = counts();
    const work = `${accepted} + ${rejected} steps, ${rightHandSides} sides`;
    return { name: method.name, tolerance, ...timed(run), error, work };
  }

  function solveRow(tolerance) {
    const problem = yardstickProblem(tolerance, activity);
    const solve = () => lib.solve(problem, system).plain();
    const { spoutMoleFraction, statistics } = solve();
    const error = largestDifference(spoutMoleFraction.subarray(1), reference);
    const { acceptedSteps, rejectedSteps, rightHandSides } = statistics;
    const work = `${acceptedSteps} + ${rejectedSteps} steps, ${rightHandSides} sides`;
    return { name: 'solve, all columns', tolerance, ...timed(solve), error, work };
  }
}

function atGoal(runs) {
  const names = [...new Set(runs.map((row) => row.name))];
  const times = names.map((name) => ({
    name,
    at: timesAtError(
      runs.filter((row) => row.name === name),
      GOAL,
    ),
  }));
  const ours = times.find(({ name }) => name === BDF5.name).at;
  return table(
    ['solver', 'median', 'least', `times ${BDF5.name}`],
    times.map(({ name, at }) =>
      at === null
        ? [name, 'not reached', '', '']
        : [name, inMs(at.ms), inMs(at.least), (at.least / ours.least).toFixed(1)],
    ),
  );
}
