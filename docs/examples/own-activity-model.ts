// An activity model of one's own wherever a name can stand: Margules with one constant, as crude as it is.

import { type ActivityModel, azeotrope, bubblePoint, solve } from 'kettle-and-plate';

/** gE/RT = A x1 x2; A of an invented fit, the same at every temperature. */
const A = 1.2;
const margules: ActivityModel = {
  name: 'one-constant Margules',
  range_K: [350, 375],
  source: 'invented for this example',
  excessGibbs: (x) => A * x * (1 - x),
  activity(x, _temperature_K, out) {
    out.lnGammaEthanol = A * (1 - x) ** 2;
    out.lnGammaWater = A * x ** 2;
    out.slopeEthanol = -2 * A * (1 - x);
    out.slopeWater = 2 * A * x;
    out.thermalEthanol = 0;
    out.thermalWater = 0;
    return out;
  },
};

const found = azeotrope(101325, margules);
console.log(found.found ? `azeotrope at x = ${found.moleFraction.toFixed(3)}` : found.message);
console.log(`half and half boils at ${(bubblePoint(0.5, 101325, margules).temperature_K - 273.15).toFixed(2)} °C`);
const run = solve({
  still: { kettle: { volume_m3: 0.03 } },
  charge: { kind: 'volume', volume_m3: 0.02, strength: 0.1 },
  activity: margules,
  sheet: [{ reflux: 'none', until: [{ kind: 'alcoholLeftBelow', share: 0.5 }] }],
});
console.log(run.ending.message);
