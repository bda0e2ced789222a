// One worker's share of a batch: solves its columns, or full models, at the tolerance it is sent, answers with the strengths of what they collect.

import { parentPort, workerData } from 'node:worker_threads';
import { createEthanolWater, solve } from '../../dist/lib/index.js';
import { fromVapour } from './train-problems.mjs';
import { flatStill } from './yardstick.mjs';

const { part, parts, activity, full } = workerData;
const system = createEthanolWater();
const SIDE = 40;

parentPort.on('message', (tolerance) => {
  const strengths = [];
  for (let i = part; i < SIDE * SIDE; i += parts) {
    const plates = 1 + (i % SIDE);
    const reflux = 0.5 * 40 ** (Math.floor(i / SIDE) / (SIDE - 1));
    const run = solve((full ? fullModel : column)(plates, reflux, tolerance), system);
    strengths.push(run.pureAlcoholCollected_m3.at(-1) / run.collectedVolume_m3.at(-1));
  }
  parentPort.postMessage(strengths);
});

function column(plates, reflux, tolerance) {
  return {
    model: 'equalFlows',
    charge: { kind: 'volume', volume_m3: 0.12, strength: 0.095 },
    still: flatStill(plates),
    activity,
    heat: { kind: 'power', power_W: 5500 },
    ...asked(reflux),
    tolerance,
  };
}

function fullModel(plates, reflux, tolerance) {
  return { ...fromVapour(tolerance, activity, plates), ...asked(reflux) };
}

function asked(reflux) {
  return {
    sheet: [
      { reflux: 'total', until: [{ kind: 'duration', seconds: 1800 }] },
      { reflux, until: [{ kind: 'alcoholLeftBelow', share: 0.2 }] },
    ],
    outputs: { kind: 'every', interval_s: 1e6 },
  };
}
