// Stills with a run from cold, for the picture of the still and its numbers; all invented. Solved once when first asked for.

import { createEthanolWater, solve, type Still, type EnergyProblem, type PlainEnergySolution } from '#lib/index.js';
import { doubler, packedStill, platedStill, pot, power, trainProblem } from '../support/train-problems.js';

export interface StillCase {
  readonly name: string;
  readonly still: Still;
  readonly run: () => PlainEnergySolution;
}

const system = createEthanolWater();

/** From lighting up to the first vapour, then as asked. */
function fromCold(name: string, changes: Partial<EnergyProblem> & { readonly still: Still }): StillCase {
  const warm = changes.still.refluxCondenser.kind === 'total' ? 'total' : 'none';
  const sheet: EnergyProblem['sheet'] = [
    { reflux: warm, until: [{ kind: 'firstVapour' }, { kind: 'duration', seconds: 30_000 }] },
    ...(changes.sheet ?? []),
  ];
  let solved: PlainEnergySolution | undefined;
  const problem = trainProblem({ start: 'cold', ...changes, sheet });
  return { name, still: changes.still, run: () => (solved ??= solve(problem, system)) };
}

const litres = (volume: number, strength: number): EnergyProblem['charge'] => ({
  kind: 'volume',
  volume_m3: volume / 1000,
  strength,
});
const strip: EnergyProblem['sheet'] = [{ reflux: 'none', until: [{ kind: 'alcoholLeftBelow', share: 0.05 }] }];
const head = { heatLoss_W_K: 3, metal_J_K: 2000, film_m3: 2e-4 };

/** A 20 L pot on a bench, run down below its heating surface. */
export const bench = fromCold('bench pot', {
  still: {
    ...pot([], { heatLoss_W_K: 0.6, metal_J_K: 300, film_m3: 2e-5 }),
    kettle: {
      volume_m3: 0.02,
      diameter_m: 0.28,
      heatingSurfaceHeight_m: 0.2,
      power_W: 2000,
      heatLoss_W_K: 0.8,
      metal_J_K: 1500,
    },
  },
  charge: litres(16, 0.4),
  heat: power(2000),
  sheet: [{ reflux: 'none', until: [{ kind: 'spoutStrengthBelow', strength: 0.3 }] }],
  jars: { kind: 'size', volume_m3: 5e-4 },
});

/** A distillery's pot of 5 000 L. */
export const large = fromCold('large pot', {
  still: {
    ...pot([], { heatLoss_W_K: 40, metal_J_K: 60_000, film_m3: 5e-3 }),
    kettle: {
      volume_m3: 5,
      diameter_m: 1.9,
      heatingSurfaceHeight_m: 0.4,
      power_W: 250_000,
      heatLoss_W_K: 60,
      metal_J_K: 500_000,
    },
    productCondenser: {
      holdUp: { kind: 'volume', volume_m3: 5e-3 },
      flow_kg_s: 2,
      inlet_K: 288.15,
      transfer_W_K: 8000,
    },
  },
  charge: litres(4000, 0.08),
  heat: power(250_000),
  sheet: strip,
});

export const potAndDoubler = fromCold('pot and doubler', {
  still: pot([doubler], head),
  doublerCharges: [{ charge: litres(8, 0.3) }],
  sheet: [{ reflux: 'none', until: [{ kind: 'spoutStrengthBelow', strength: 0.45 }] }],
  jars: { kind: 'size', volume_m3: 2e-3 },
});

export const twoDoublers = fromCold('double retort', {
  still: pot(
    [
      { ...doubler, volume_m3: 0.03, diameter_m: 0.3 },
      { ...doubler, volume_m3: 0.03, diameter_m: 0.3 },
    ],
    head,
  ),
  doublerCharges: [{ charge: litres(12, 0.25) }, { charge: litres(12, 0.6) }],
  sheet: [{ reflux: 'none', until: [{ kind: 'spoutStrengthBelow', strength: 0.6 }] }],
  jars: { kind: 'size', volume_m3: 1e-3 },
});

export const twelvePlates = fromCold('twelve plates', {
  still: { ...platedStill(12), head: { heatLoss_W_K: 0.5, metal_J_K: 400, film_m3: 5e-5 } },
  sheet: [
    { reflux: 'total', until: [{ kind: 'duration', seconds: 1800 }] },
    { reflux: 3, until: [{ kind: 'spoutStrengthBelow', strength: 0.7 }] },
  ],
  jars: { kind: 'size', volume_m3: 1e-3 },
});

export const packed = fromCold('packed column', {
  still: packedStill(),
  sheet: [
    { reflux: 'total', until: [{ kind: 'duration', seconds: 1800 }] },
    { reflux: 'asSet', until: [{ kind: 'spoutStrengthBelow', strength: 0.6 }] },
  ],
});

/** A small kettle under sixty plates: a column as slim as it gets. */
export const sixtyPlates = fromCold('sixty plates', {
  still: platedStill(60),
  sheet: [
    { reflux: 'total', until: [{ kind: 'duration', seconds: 3600 }] },
    { reflux: 5, until: [{ kind: 'duration', seconds: 7200 }] },
  ],
});

/** Plates on the last of two doublers. */
export const platesOnDoublers = fromCold('plates on doublers', {
  still: { ...platedStill(4), doublers: [doubler, doubler] },
  doublerCharges: [{ charge: litres(8, 0.3) }, { charge: litres(8, 0.5) }],
  sheet: [
    { reflux: 'total', until: [{ kind: 'duration', seconds: 900 }] },
    { reflux: 1, until: [{ kind: 'duration', seconds: 5400 }] },
  ],
});

export const stillCases = [
  bench,
  large,
  potAndDoubler,
  twoDoublers,
  twelvePlates,
  packed,
  sixtyPlates,
  platesOnDoublers,
];
