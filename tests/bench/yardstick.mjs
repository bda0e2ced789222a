// The yardstick problem: 20 ideal plates above the kettle, constant molar overflow, vapour 0.13 mol/s, reflux
// ratio 3, 5 200 mol at x = 0.0405 in the kettle, 2 mol on each plate and 1 mol in the condenser, all at the
// charge's composition at the start, 3 h, output every minute. Error: the largest difference of the spout's mole
// fraction over the 180 outputs from a converged solution (RODAS5P at a tolerance of 1e-12).

import { completeProblem } from '../../dist/lib/run/complete.js';
import { columnEquations } from '../../dist/lib/run/engines/equal-flows/equations.js';
import { columnSystem } from '../../dist/lib/run/engines/equal-flows/column-system.js';
import { createIntegrator } from '../../dist/lib/numerics/stiff/integrate.js';
import { RODAS5P } from '../../dist/lib/numerics/stiff/rodas5p.js';

const RATE = 0.13;
const OUTPUTS = 180;
const INTERVAL = 60 * RATE; // mol boiled up between outputs

/** Ideal plates that hold 2 mol each under a condenser that holds 1, at one pressure. */
export function flatStill(plates) {
  const held = { kind: 'amount', amount_mol: 0.5 };
  return {
    kettle: { volume_m3: 1 },
    column: { kind: 'plates', count: plates, efficiency: 1, holdUp: { kind: 'amount', amount_mol: 2 }, drop_Pa: 0 },
    refluxCondenser: { kind: 'total', holdUp: held },
    productCondenser: { holdUp: held },
    air: { pressure_Pa: 101325 },
  };
}

/** The yardstick as a problem for the public door; `plates` other than 20 for the cost of a plate. */
export function yardstickProblem(tolerance, activity, plates = 20) {
  return {
    model: 'equalFlows',
    charge: { kind: 'amount', amount_mol: 5200 + 2 * plates + 1, moleFraction: 0.0405 },
    still: flatStill(plates),
    activity,
    heat: { kind: 'boilUp', rate_mol_s: RATE },
    sheet: [{ reflux: 3, until: [{ kind: 'duration', seconds: 60 * OUTPUTS }] }],
    outputs: { kind: 'every', interval_s: 60 },
    start: 'charge',
    tolerance,
  };
}

/** The bare integration, storage reused: a function that runs it and returns the 180 spout mole fractions. */
export function bareYardstick(system, activity, method, tolerance, plates = 20) {
  const column = columnSystem(completeProblem(yardstickProblem(tolerance, activity, plates)), system.curve(activity));
  Object.assign(column.flows, { returned: 0.75, drawn: 0.25 });
  const { layout } = column;
  const integrator = createIntegrator(columnEquations(column, tolerance), method);
  const start = new Float64Array(layout.size).fill(0.0405);
  start[layout.time] = 0;
  start[layout.kettleEthanol] = 0.0405 * 5200;
  start[layout.receiverEthanol] = 0;
  const spout = new Float64Array(OUTPUTS);
  const run = () => {
    let next = 1;
    integrator.run({
      from: 0,
      to: OUTPUTS * INTERVAL,
      start,
      firstStep: 0.02,
      events: [],
      onStep: (step) => {
        for (; next <= OUTPUTS && next * INTERVAL <= step.to * (1 + 1e-13); next++) {
          spout[next - 1] = step.component(Math.min(next * INTERVAL, step.to), layout.condenser);
        }
      },
    });
    return spout;
  };
  return { run, counts: () => integrator.counts };
}

/** The converged solution to compare with. */
export function converged(system, activity, plates = 20) {
  return Float64Array.from(bareYardstick(system, activity, RODAS5P, 1e-12, plates).run());
}

/** Largest difference of two runs of the spout. */
export function largestDifference(spout, reference) {
  return spout.reduce((worst, value, i) => Math.max(worst, Math.abs(value - reference[i])), 0);
}
