// A map: 1 600 ideal columns, 40 numbers of plates by 40 reflux ratios, shared out to two workers.

import { Worker } from 'node:worker_threads';
import { inMs, table } from '../timing.mjs';

const WORKERS = 2;
const REPEATS = 9;

const IDEAL = {
  full: false,
  sweep: [1e-3, 1e-4, 1e-5, 1e-6],
  finest: 1e-9,
  words:
    '1 to 40 plates by 40 reflux ratios from 0.5 to 20: 120 L at 9.5 % vol (the charge of the guide), 2 mol on a plate, 5.5 kW, half an hour at total reflux and then down to a fifth of the alcohol; asked for is what a map shows, the strength of everything collected.',
};
const FULL = {
  full: true,
  sweep: [1e-3, 1e-4, 1e-5],
  finest: 1e-7,
  words:
    'The same map by the full model: plates of an efficiency of 0.65 with their energy, losses, metal and pressure drop, from the first vapour (tests/bench/train-problems.mjs).',
};

export const batch = { title: 'Batch of 1 600 columns', run: (bench) => run(bench, IDEAL) };
export const fullBatch = { title: 'Batch of 1 600 full models', run: (bench) => run(bench, FULL) };

async function run({ activity }, { full, sweep, finest, words }) {
  const workers = Array.from(
    { length: WORKERS },
    (_none, part) =>
      new Worker(new URL('../batch-worker.mjs', import.meta.url), {
        workerData: { part, parts: WORKERS, activity, full },
      }),
  );
  const ask = (tolerance) =>
    Promise.all(
      workers.map(
        (worker) =>
          new Promise((resolve, reject) => {
            worker.removeAllListeners('error').once('error', reject);
            worker.once('message', resolve);
            worker.postMessage(tolerance);
          }),
      ),
    );
  const rows = [];
  const exact = (await ask(finest)).flat();
  for (const tolerance of sweep) {
    const times = [];
    const shares = [];
    let answers = [];
    for (let i = 0; i < REPEATS; i++) {
      const start = performance.now();
      const used = process.cpuUsage();
      answers = (await ask(tolerance)).flat();
      times.push(performance.now() - start);
      const { user, system } = process.cpuUsage(used);
      shares.push((user + system) / 1000 / WORKERS);
    }
    times.sort((a, b) => a - b);
    shares.sort((a, b) => a - b);
    const errors = answers.map((value, i) => Math.abs(value - exact[i])).sort((a, b) => a - b);
    rows.push([
      tolerance,
      inMs(times[REPEATS >> 1]),
      inMs(times[0]),
      inMs(shares[REPEATS >> 1]),
      errors[errors.length >> 1].toExponential(1),
      errors.at(-1).toExponential(1),
    ]);
  }
  await Promise.all(workers.map((worker) => worker.terminate()));
  return [
    `${words} ${WORKERS} workers, curve compiled, code warm. CPU a worker: median CPU time over two, which is the time on two cores with nothing else to do. Error: of that strength against a tolerance of ${finest}, median and largest.`,
    table(['tolerance', 'median', 'least', 'CPU a worker', 'median error', 'largest error'], rows),
  ];
}
