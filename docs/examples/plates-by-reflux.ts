// How strong a column of so many plates gets at so much reflux, every pair a run of its own, swept over all processors.

import { Worker } from 'node:worker_threads';
import { type RunProblem, sweep } from 'kettle-and-plate';

const plates = [4, 8, 12];
const refluxes = [1, 2, 4];
const problems = plates.flatMap((count) =>
  refluxes.map((reflux): RunProblem => ({
    model: 'equalFlows',
    still: { kettle: { volume_m3: 0.12 }, column: { kind: 'plates', count } },
    charge: { kind: 'volume', volume_m3: 0.08, strength: 0.1 },
    sheet: [
      { reflux: 'total', until: [{ kind: 'duration', seconds: 1200 }] },
      { reflux, until: [{ kind: 'collectedVolume', volume_m3: 0.004 }] },
    ],
  })),
);

const worker = (): Worker => new Worker(new URL(import.meta.resolve('kettle-and-plate/sweep-worker')));
const answers = await sweep(problems, { read: 'end', worker, workers: 2 });
answers.forEach((answer, i) => {
  const count = plates[Math.floor(i / refluxes.length)];
  const reflux = refluxes[i % refluxes.length];
  const said = answer.found
    ? `first 4 L at ${((100 * answer.kept.pureAlcoholCollected_m3) / answer.kept.collectedVolume_m3).toFixed(1)} % vol`
    : answer.error.message;
  console.log(`${String(count).padStart(2)} plates, ${String(reflux)} : 1: ${said}`);
});
