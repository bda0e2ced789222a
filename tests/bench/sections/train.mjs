// The full model: holders with energy, losses and metal. 20 plates from the first vapour and from cold, a pot with a doubler, as work against
// error; SUNDIALS IDA on the same equations beside them.

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { attempt, compile, folder, lines } from '../peers.mjs';
import { pictureLines } from '../pictures.mjs';
import { inMs, table, timed, timesAtError } from '../timing.mjs';
import { trainFile } from '../train-file.mjs';
import { fromCold, fromVapour, potAndDoubler } from '../train-problems.mjs';
import { largestDifference } from '../yardstick.mjs';

const SWEEP = [3e-4, 1e-4, 3e-5, 1e-5, 3e-6, 1e-6];
const IDA_SWEEP = ['1e-4', '1e-5', '3e-6', '1e-6', '3e-7', '1e-7'];
const GOAL = 1e-5;
const CONVERGED = 1e-9;
const CASES = [
  { name: '20 plates', problem: fromVapour, calls: { warmUp: 100, samples: 201 }, repeats: '15' },
  { name: '20 plates from cold', problem: fromCold, calls: { warmUp: 20, samples: 41 }, repeats: '5' },
  { name: 'pot and doubler from cold', problem: potAndDoubler, calls: { warmUp: 100, samples: 201 }, repeats: null },
];

export const train = { title: 'Full model', run };

function run({ lib, system, activity }) {
  const scratch = mkdtempSync(join(tmpdir(), 'kettle-bench-'));
  const notes = [];
  const rows = [];
  try {
    for (const { name, problem, calls, repeats } of CASES) {
      const reference = lib.solve(problem(CONVERGED, activity), system).spoutMoleFraction;
      for (const tolerance of SWEEP) {
        const asked = problem(tolerance, activity);
        const { spoutMoleFraction, statistics } = lib.solve(asked, system);
        const { acceptedSteps, rejectedSteps, rightHandSides } = statistics;
        const error = largestDifference(spoutMoleFraction, reference);
        const work = `${acceptedSteps} + ${rejectedSteps} steps, ${rightHandSides} sides`;
        rows.push({ name, solver: 'solve', tolerance, error, work, ...timed(() => lib.solve(asked, system), calls) });
      }
      if (repeats === null) continue;
      attempt(notes, `SUNDIALS IDA on ${name}`, ['libsundials-dev', 'gcc', 'libc6-dev'], () => {
        const [program, file] = [join(scratch, 'ida'), join(scratch, 'train.bin')];
        compile(['-o', program, join(folder, 'ida.c'), '-lsundials_ida', '-lsundials_nvecserial', '-lm']);
        writeFileSync(file, trainFile(problem(GOAL, activity), system));
        for (const line of lines(program, [file, repeats, ...IDA_SWEEP])) rows.push(idaRow(name, line, reference));
      });
    }
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
  return [
    'Three hours at 3 : 1 on 20 plates of an efficiency of 0.65 with their energy, losses and metal, from the first vapour; the same from cold, after three hours of heating up, filling and equalising at total reflux; a pot and a doubler from cold, four hours. An output every minute (tests/bench/train-problems.mjs). `solve` is the public door with all its columns; IDA has the same equations and tables (tests/bench/peers/train.h) without what is only read off them, banded with an analytic Jacobian, memory reused, and gives the spout only. Error: largest difference of the spout’s mole fraction over all outputs from `solve` at a tolerance of 1e-9, to which IDA comes within some 1e-8 at its finest. Times of the peer are CPU times.',
    table(
      ['run', 'solver', 'tolerance', 'median', 'least', 'error', 'work'],
      rows.map((one) => [
        one.name,
        one.solver,
        one.tolerance,
        inMs(one.ms),
        inMs(one.least),
        one.error.toExponential(1),
        one.work,
      ]),
    ),
    ...pictureLines(train.title),
    `At an error of ${GOAL}, read between the rows above; ratios are of least times:`,
    table(['run', 'solver', 'median', 'least', 'times solve'], atGoal(rows)),
    ...notes,
  ];
}

function idaRow(name, [weights, tolerance, least, median, steps, sides, jacobians, ...spout], reference) {
  return {
    name,
    solver: weights === 'ours' ? 'IDA, C -O3, our error weights' : 'IDA, C -O3',
    tolerance: Number(tolerance),
    ms: Number(median),
    least: Number(least),
    error: largestDifference(Float64Array.from(spout, Number), reference.subarray(1)),
    work: `${steps} steps, ${sides} sides, ${jacobians} Jacobians`,
  };
}

function atGoal(rows) {
  const found = [];
  for (const { name } of CASES) {
    let own = null;
    for (const solver of new Set(rows.map((row) => row.solver))) {
      const times = timesAtError(
        rows.filter((row) => row.name === name && row.solver === solver),
        GOAL,
      );
      if (times === null) continue;
      own ??= times.least;
      found.push([name, solver, inMs(times.ms), inMs(times.least), (times.least / own).toFixed(1)]);
    }
  }
  return found;
}
