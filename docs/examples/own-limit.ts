// A limit of one's own, watched as the run goes on: the spout must not run faster than the parrot takes.

import { solve } from 'kettle-and-plate';

const most_m3_s = 0.2e-3 / 60;
const run = solve({
  still: { kettle: { volume_m3: 0.1, power_W: 9000 } },
  charge: { kind: 'volume', volume_m3: 0.06, strength: 0.1 },
  sheet: [{ reflux: 'none', until: [{ kind: 'alcoholLeftBelow', share: 0.3 }] }],
});
const over = Array.from(run.distillateRate_m3_s).flatMap((rate, row) => (rate > most_m3_s ? [row] : []));
const [first] = over;
console.log(
  first === undefined
    ? 'the parrot takes it all'
    : `from minute ${((run.time_s[first] ?? 0) / 60).toFixed(0)} on more comes than ${(6e4 * most_m3_s).toFixed(1)} L/min, for ${String(over.length)} of ${String(run.rows)} rows`,
);
