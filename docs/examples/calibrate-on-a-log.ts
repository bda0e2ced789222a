// The plates' efficiency from a run log by least squares. The log is invented: made by a run at 0.62 with errors of 0.3 % vol.

import { solve } from 'kettle-and-plate';
import { leastSquares } from 'kettle-and-plate/numerics';

/** Strength at the spout after so many minutes of drawing, as noted. */
const log = [
  [10, 0.9139],
  [40, 0.9052],
  [70, 0.9041],
  [100, 0.885],
] as const;

function strengths(efficiency: number): number[] {
  const run = solve({
    model: 'equalFlows',
    tolerance: 1e-8,
    still: { kettle: { volume_m3: 0.12, power_W: 5000 }, column: { kind: 'plates', count: 6, efficiency } },
    charge: { kind: 'volume', volume_m3: 0.08, strength: 0.12 },
    sheet: [
      { reflux: 'total', until: [{ kind: 'duration', seconds: 1800 }] },
      { reflux: 4, until: [{ kind: 'duration', seconds: 6600 }] },
    ],
  });
  return log.map(
    ([minutes]) => run.spoutStrength[run.time_s.findIndex((time_s) => time_s >= 1800 + 60 * minutes)] ?? NaN,
  );
}

const error = 0.003;
const fit = leastSquares(
  {
    residualCount: log.length,
    start: [0.5],
    residuals([efficiency = NaN], out) {
      strengths(Math.min(1, Math.max(0.05, efficiency))).forEach((strength, i) => {
        out[i] = (strength - (log[i]?.[1] ?? NaN)) / error;
      });
    },
    // By differences wide enough for the solver's own error.
    jacobian([efficiency = NaN], out) {
      const [above, below] = [strengths(efficiency + 0.01), strengths(efficiency - 0.01)];
      above.forEach((strength, i) => {
        out[i] = (strength - (below[i] ?? NaN)) / 0.02 / error;
      });
    },
  },
  { tolerance: 1e-3 },
);
const [efficiency = NaN] = fit.parameters;
const [variance = NaN] = fit.inverseNormal;
console.log(
  `efficiency ${efficiency.toFixed(3)} ± ${Math.sqrt(variance).toFixed(3)}, ${fit.ending} after ${String(fit.steps)} steps`,
);
