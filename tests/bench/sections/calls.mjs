// Single calls of the library.

import { inMs, table, timed } from '../timing.mjs';

export const calls = { title: 'Other calls', run };

function run({ lib, system, activity }) {
  const model = system.model(activity);
  const curve = system.curve(activity);
  const slice = curve.at(101325);
  const compositions = Array.from({ length: 200 }, (_none, i) => (i + 0.5) / 200);
  const directly = compositions.map((x) => lib.bubblePoint(x, 101325, model).vapourMoleFraction);
  const misses = (one, of) => Math.max(...compositions.map((x, i) => Math.abs(lib.vapourOnSlice(one, x) - of[i])));
  const elsewhere = 87_654;
  const directlyElsewhere = compositions.map((x) => lib.bubblePoint(x, elsewhere, model).vapourMoleFraction);
  const boiling = compositions.map((x) =>
    lib.bubblePressure(x, lib.bubblePoint(x, 101325, model).temperature_K, model),
  );
  const pressureError = Math.max(...boiling.map(({ pressure_Pa }) => Math.abs(pressure_Pa / 101325 - 1)));
  const inVapour = (error) => `${error.toExponential(1)} in y`;
  const rows = [
    [
      '200 bubble points',
      () => compositions.forEach((x) => lib.bubblePoint(x, 101325, model)),
      `${pressureError.toExponential(1)} of the pressure, back from the temperature`,
    ],
    [
      '200 readings of a compiled slice',
      () => compositions.forEach((x) => lib.vapourOnSlice(slice, x)),
      inVapour(misses(slice, directly)),
    ],
    [
      'slice of the compiled curve at a new pressure',
      newPressure(lib, model),
      inVapour(misses(curve.at(elsewhere), directlyElsewhere)),
    ],
    [
      'compiling a curve',
      () => lib.compileCurve(model),
      inVapour(misses(lib.compileCurve(model).at(101325), directly)),
    ],
    [
      'bare pot to 20 % vol at the spout',
      () => lib.solve(simple(activity), system).plain(),
      rayleighError({ lib, system, activity }),
    ],
  ];
  return [
    table(
      ['', 'median', 'least', 'error'],
      rows.map(([name, call, error]) => {
        const { ms, least } = timed(call, name.startsWith('compiling') ? { warmUp: 5, samples: 21 } : {});
        return [name, inMs(ms), inMs(least), error];
      }),
    ),
  ];
}

/** A slice nobody has asked for before, each time. */
function newPressure(lib, model) {
  const bare = lib.compileCurve(model);
  let pressure_Pa = 90000;
  return () => bare.at((pressure_Pa += 1));
}

function simple(activity) {
  return {
    model: 'rayleigh',
    still: { kettle: { volume_m3: 0.16 } },
    charge: { kind: 'volume', volume_m3: 0.12, strength: 0.095 },
    activity,
    heat: { kind: 'power', power_W: 5500 },
    sheet: [{ reflux: 'none', until: [{ kind: 'spoutStrengthBelow', strength: 0.2 }] }],
    outputs: { kind: 'evenly', rows: 200 },
  };
}

/** What the pot leaves in the kettle against Rayleigh's integral between the same compositions, by quadrature. */
function rayleighError({ lib, system, activity }) {
  const problem = simple(activity);
  const run = lib.solve(problem, system);
  const { ethanol_mol, water_mol } = lib.chargeAmounts(problem.charge);
  const charge_mol = ethanol_mol + water_mol;
  const slice = system.curve(activity).at(101325);
  const closed = lib.rayleighLeft(slice, ethanol_mol / charge_mol, run.kettleMoleFraction.at(-1));
  const left = run.kettleAmount_mol.at(-1) / charge_mol;
  return `${Math.abs(left / closed.shareLeft - 1).toExponential(1)} in the amount left`;
}
