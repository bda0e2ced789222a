// Moments of stills for looking at the picture and testing it, made without the library. Nothing here is a result.

import type { PicturedStill } from '../../../../explorer/figures/still/layout.js';
import type { JarMoment } from '../../../../explorer/rows/still-moment.js';
import type { Flow, PartMoment, StageMoment, StillMoment } from '../../../../explorer/rows/still-moment.js';
import { doubler, packedStill, platedStill, pot } from '../../../support/train-problems.js';

export function flow(share: number, passed = 0.25): Flow {
  return { rate_mol_s: 0.13 * share, share, passed };
}

export function part(changes: Partial<PartMoment> = {}): PartMoment {
  return {
    temperature_K: 367.2,
    strength: 0.067,
    volume_m3: 0.12,
    boiling: true,
    vapour: flow(0.9),
    liquid: flow(0),
    ...changes,
  };
}

const brim_m = 0.764;
const kettle = { ...part(), brim_m, level_m: 0.61, heatingSurface_m: 0.1, covered: true };
const inDoubler = {
  ...part({ strength: 0.42, volume_m3: 0.009, temperature_K: 355.1 }),
  brim_m: 0.407,
  level_m: 0.18,
  mouth_m: 0.063,
  covered: true,
};

export function jar(number: number, state: JarMoment['state'], filled = 1): JarMoment {
  const filled_m3 = 1e-3 * filled;
  return { number, size_m3: 1e-3, filled_m3, strength: filled_m3 > 0 ? 0.95 - 0.01 * number : null, state };
}

const bare: StillMoment = {
  time_s: 5400,
  firstVapour_s: 2400,
  power_W: 5500,
  condenserDuty_W: 4800,
  refluxDuty_W: 0,
  kettle,
  doublers: [],
  stages: [],
  head: { temperature_K: 366, vapour: flow(0.88) },
  partial: null,
  drumFilled: 1,
  refluxRatio: null,
  reflux: flow(0, 0),
  distillate: flow(0.88),
  distillateRate_m3_s: 3.6e-6,
  spoutStrength: 0.45,
  collectedVolume_m3: 2.4e-3,
  jars: [jar(1, 'filled'), jar(2, 'filled'), jar(3, 'underSpout', 0.4), jar(4, 'waiting', 0)],
};

function stages(count: number, dry = false): StageMoment[] {
  return Array.from({ length: count }, (_, i) => ({
    ...part({
      strength: dry ? null : 0.93 - 0.85 * 0.7 ** i,
      temperature_K: 351.6 + 16 * 0.7 ** i,
      volume_m3: 1.1e-4,
      vapour: flow(0.9, 0.2 + 0.003 * i),
      liquid: flow(0.65, 0.1),
    }),
    number: i + 1,
    depth_m: 0.014,
    filled: 0.95,
  }));
}

export interface PicturedCase {
  readonly name: string;
  readonly still: PicturedStill;
  readonly moment: StillMoment;
}

export const barePot: PicturedCase = { name: 'bare pot', still: pot(), moment: bare };

export const runLow: PicturedCase = {
  name: 'pot run low',
  still: pot(),
  moment: { ...bare, kettle: { ...kettle, level_m: 0.07, covered: false } },
};

export const retorts: PicturedCase = {
  name: 'double retort',
  still: pot([doubler, { ...doubler, overflow: 'over' }]),
  moment: { ...bare, doublers: [inDoubler, { ...inDoubler, level_m: 0.05, covered: false, boiling: false }] },
};

export const twelve: PicturedCase = {
  name: 'twelve plates',
  still: platedStill(12),
  moment: { ...bare, stages: stages(12), refluxRatio: 3, reflux: flow(0.66, 0.4), distillate: flow(0.22, 0.1) },
};

export const coldPlates: PicturedCase = {
  name: 'twelve plates, cold',
  still: platedStill(12),
  moment: {
    ...bare,
    time_s: 600,
    kettle: { ...kettle, boiling: false, vapour: flow(0, 0) },
    stages: stages(12, true).map((stage) => ({ ...stage, vapour: flow(0, 0), liquid: flow(0, 0) })),
    head: { temperature_K: 293.15, vapour: flow(0, 0) },
    drumFilled: 0,
    refluxRatio: 0,
    distillate: flow(0, 0),
    distillateRate_m3_s: 0,
    spoutStrength: null,
    collectedVolume_m3: 0,
    jars: [jar(1, 'underSpout', 0), jar(2, 'waiting', 0)],
  },
};

export const packedTower: PicturedCase = {
  name: 'packed column',
  still: packedStill(),
  moment: {
    ...bare,
    stages: stages(6),
    partial: part({ vapour: flow(0.25, 0.1), liquid: flow(0.65, 0.2) }),
    refluxRatio: 2.6,
    refluxDuty_W: 3600,
    reflux: flow(0.65, 0.2),
    distillate: flow(0.25, 0.1),
  },
};

export const picturedCases = [barePot, runLow, retorts, twelve, coldPlates, packedTower];
