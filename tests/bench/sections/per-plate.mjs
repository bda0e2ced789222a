// What a plate costs: the yardstick problem on 5 to 60 plates.

import { BDF5 } from '../../../dist/lib/numerics/stiff/multistep-step.js';
import { inMs, table, timed } from '../timing.mjs';
import { bareYardstick, converged, largestDifference } from '../yardstick.mjs';

const PLATES = [5, 10, 20, 40, 60];
const TOLERANCE = 1e-6;

export const perPlate = { title: 'Cost of a plate', run };

function run({ system, activity }) {
  const rows = PLATES.map((plates) => {
    const { run, counts } = bareYardstick(system, activity, BDF5, TOLERANCE, plates);
    const error = largestDifference(run(), converged(system, activity, plates));
    const { accepted, rejected } = counts();
    return { plates, steps: accepted + rejected, error, ...timed(run) };
  });
  return [
    `The yardstick problem with other numbers of plates, ${BDF5.name} at a tolerance of ${TOLERANCE}.`,
    table(
      ['plates', 'median', 'least', 'error', 'steps', 'least, µs a plate', 'least, ns a step and plate'],
      rows.map(({ plates, ms, least, error, steps }) => [
        plates,
        inMs(ms),
        inMs(least),
        error.toExponential(1),
        steps,
        ((1e3 * least) / plates).toFixed(1),
        ((1e6 * least) / plates / steps).toFixed(1),
      ]),
    ),
  ];
}
