// Bytes left on the heap by a step of the bare yardstick problem and by a whole solve with its columns. Run with --expose-gc and
// --single-threaded, so that what is compiled when does not hang on what else the machine does; prints JSON.

import { getHeapStatistics } from 'node:v8';
import { createEthanolWater, DEFAULT_ACTIVITY, solve } from '../../dist/lib/index.js';
import { BDF5 } from '../../dist/lib/numerics/stiff/multistep-step.js';
import { bareYardstick, yardstickProblem } from './yardstick.mjs';

const system = createEthanolWater();
const { run, counts } = bareYardstick(system, DEFAULT_ACTIVITY, BDF5, 1e-6);
const problem = yardstickProblem(1e-6, DEFAULT_ACTIVITY);
const perBareRun = bytesOf(run);
const { accepted, rejected } = counts();
const steps = (accepted + rejected) / runs(); // every run takes the same
console.log(JSON.stringify({ perStep: perBareRun / steps, perRun: bytesOf(() => solve(problem, system).plain()) }));

function runs() {
  return 2000 + 9 * 10;
}

/** Median over nine windows of ten calls, after warm-up; each window begins with a collection and is too short for another. */
function bytesOf(call) {
  for (let i = 0; i < 2000; i++) call();
  const windows = Array.from({ length: 9 }, () => {
    globalThis.gc();
    const before = getHeapStatistics().used_heap_size;
    for (let i = 0; i < 10; i++) call();
    return (getHeapStatistics().used_heap_size - before) / 10;
  });
  return windows.sort((a, b) => a - b)[4];
}
