// Steps without heat, rules that are met already or never, jars that end with their step.

import { describe, expect, it } from 'vitest';
import { createEthanolWater, type EnergySolution, overruled, solve } from '#lib/index.js';
import {
  doubler,
  platedStill,
  pot,
  power,
  trainProblem,
  type WholeProblem,
} from '../../../../support/train-problems.js';

const system = createEthanolWater();
const after = (seconds: number): WholeProblem['sheet'][number]['until'] => [{ kind: 'duration', seconds }];

describe('a step without heat', () => {
  const problem = trainProblem({
    still: { ...pot([doubler], { heatLoss_W_K: 3, metal_J_K: 3000 }) },
    doublerCharges: [{ charge: { kind: 'volume', volume_m3: 0.008, strength: 0.3 } }],
    start: 'cold',
    sheet: [
      { reflux: 'none', until: [{ kind: 'collectedVolume', volume_m3: 1e-3 }] },
      { reflux: 'none', heat: power(0), until: after(7200) },
      { reflux: 'none', until: [{ kind: 'collectedVolume', volume_m3: 3e-3 }] },
    ],
  });
  const run = solve(problem, system);
  const [, off, on] = run.stepStarts;

  it('stops the vapour within a minute and lets everything cool, the smallest fastest', () => {
    expect(run.ending.kind).toBe('stopped');
    const calm = run.time_s.findIndex((time) => time > run.time_s[off!]! + 60);
    const { holders } = run;
    for (let row = calm; row <= on!; row++) {
      expect(run.holderVapourRate_mol_s[row * holders.length]!).toBeLessThan(1e-3 * (5500 / 40e3));
      if (row > calm) expect(run.kettleTemperature_K[row]!).toBeLessThanOrEqual(run.kettleTemperature_K[row - 1]!);
    }
    const fallen = (j: number): number =>
      run.holderTemperature_K[off! * holders.length + j]! - run.holderTemperature_K[on! * holders.length + j]!;
    expect(fallen(0)).toBeGreaterThan(0);
    expect(fallen(1)).toBeGreaterThan(fallen(0));
    expect(run.holderTemperature_K.every((temperature) => temperature > 293 - 0.1)).toBe(true);
  });

  it('collects next to nothing, and the run goes on when the heat is back', () => {
    expect(run.collectedVolume_m3[on!]! - run.collectedVolume_m3[off!]!).toBeLessThan(0.1e-3);
    expect(run.collectedVolume_m3.at(-1)!).toBeCloseTo(3e-3, 8);
    expect(run.holderAmount_mol.every((amount) => amount >= 0)).toBe(true);
  });

  it('at once ends where a rule of its own is met already', () => {
    const sheet = [
      ...problem.sheet,
      { reflux: 'none', until: [{ kind: 'collectedVolume', volume_m3: 2e-3 }] },
    ] as const;
    const again = solve({ ...problem, sheet }, system);
    expect(again.ending.message).toBe('step 4 ended at once: 2 L were collected already');
    expect(again.time_s.at(-1)).toBe(run.time_s.at(-1));
  });
});

describe('what can never be met', () => {
  it('ends as never met, with nothing collected: a volume at total reflux', () => {
    const run = solve(
      trainProblem({ sheet: [{ reflux: 'total', until: [{ kind: 'collectedVolume', volume_m3: 1e-3 }] }] }),
      system,
    );
    expect(run.ending.kind).toBe('neverMet');
    expect(run.collectedVolume_m3.at(-1)).toBe(0);
    expect(run.jars).toEqual([]);
  });

  it('ends as never met where the losses take all heat', () => {
    const still = platedStill(4);
    const leaky = { ...still, kettle: { ...still.kettle, heatLoss_W_K: 100 } };
    const run = solve(
      trainProblem({
        still: leaky,
        start: 'cold',
        heat: power(3000),
        sheet: [{ reflux: 'total', until: [{ kind: 'firstVapour' }] }],
      }),
      system,
    );
    expect(run.ending.kind).toBe('neverMet');
    expect(run.firstVapour_s).toBeNull();
    expect(run.kettleTemperature_K.at(-1)!).toBeCloseTo(293.15 + 30, 0);
  });
});

describe('a step that is longer than its rows', () => {
  const run = (until: WholeProblem['sheet'][number]['until'], outputs: WholeProblem['outputs']): EnergySolution =>
    solve(trainProblem({ still: pot(), sheet: [{ reflux: 'none', until }], outputs }), system);

  it('is refused before the run where its clock tells', () => {
    expect(() => run(after(6000), { kind: 'every', interval_s: 0.1 })).toThrow(
      'outputs.interval_s is 0.1; expected 0.120 s or more, for at most 50000 rows: the run sheet lasts 1.67 h',
    );
    expect(run(after(6000), { kind: 'every', interval_s: 1 }).ending.message).toBe('step 1 ended: 100 min had passed');
  });

  it('is left with that as the reason, not as one without end', () => {
    const { ending, time_s } = run([{ kind: 'alcoholLeftBelow', share: 1e-3 }], { kind: 'every', interval_s: 0.1 });
    expect(time_s.at(-1)!).toBeLessThan(5000);
    expect(ending.message).toBe(
      'step 1 was left after 1.4 h of the run, which then had 50000 rows: outputs farther apart would show more of it',
    );
  });
});

describe('the first vapour', () => {
  const cold = (changes: Partial<WholeProblem>): number => {
    const sheet: WholeProblem['sheet'] = [{ reflux: 'none', until: [{ kind: 'firstVapour' }] }];
    const run = solve(trainProblem({ start: 'cold', sheet, ...changes }), system);
    expect(run.ending.kind).toBe('stopped');
    return run.time_s.at(-1)!;
  };
  const partial = (power_W: number): WholeProblem['still'] => ({
    ...platedStill(4),
    refluxCondenser: {
      kind: 'partial',
      holdUp: { kind: 'volume', volume_m3: 5e-5 },
      coolant: { kind: 'duty', power_W },
    },
  });

  it('comes to a partial condenser as soon as to a total one, also when it lets nothing through', () => {
    const alike_s = 2;
    const reaches = cold({ still: platedStill(4) });
    expect(Math.abs(cold({ still: partial(3000) }) - reaches)).toBeLessThan(alike_s);
    const sheet: WholeProblem['sheet'] = [{ reflux: 'total', until: [{ kind: 'firstVapour' }] }];
    expect(Math.abs(cold({ still: partial(3000), sheet }) - reaches)).toBeLessThan(alike_s);
  });

  it('comes the later the more doublers stand before the condenser', () => {
    const charge = { charge: { kind: 'volume', volume_m3: 0.008, strength: 0.3 } } as const;
    const times = [0, 1, 2, 3].map((count) =>
      cold({
        still: pot(Array.from({ length: count }, () => doubler)),
        doublerCharges: Array.from({ length: count }, () => charge),
      }),
    );
    for (let count = 1; count <= 3; count++) expect(times[count]!).toBeGreaterThan(times[count - 1]! + 300);
  });
});

describe('jars', () => {
  it('that fill exactly as their step ends are full, and the next begins empty', () => {
    const size = { kind: 'size', volume_m3: 1e-3 } as const;
    const sheet: WholeProblem['sheet'] = [
      { reflux: 3, until: [{ kind: 'collectedVolume', volume_m3: 1e-3 }] },
      { reflux: 4, until: [{ kind: 'collectedVolume', volume_m3: 2.5e-3 }] },
    ];
    const { jars } = solve(trainProblem({ jars: size, sheet }), system);
    // Centilitres: unlike spirits shrink by a millilitre when mixed, so that the jars hold a little more than was asked for.
    expect(jars.map(({ volume_m3 }) => Math.round(1e5 * volume_m3))).toEqual([100, 100, 50]);
    expect(jars.map(({ full, step }) => [full, step])).toEqual([
      [true, 1],
      [true, 2],
      [false, 2],
    ]);
  });

  it('are found when many fill within one step of the solver', () => {
    const sheet: WholeProblem['sheet'] = [{ reflux: 'none', until: [{ kind: 'collectedVolume', volume_m3: 0.02 }] }];
    const size = { kind: 'size', volume_m3: 2e-5 } as const;
    const run = solve(trainProblem({ still: pot(), jars: size, sheet, tolerance: 1e-3 }), system);
    expect(run.jars.length).toBeGreaterThan(2 * run.statistics.acceptedSteps);
    expect(run.jars.filter(({ full }) => full).every(({ volume_m3 }) => Math.abs(volume_m3 - 2e-5) < 1e-9)).toBe(true);
    for (let i = 1; i < run.jars.length; i++) expect(run.jars[i]!.from_s).toBe(run.jars[i - 1]!.to_s);
  });
});

describe('a run sheet overruled at its very end', () => {
  it('runs on from there as if a moment longer', () => {
    const problem = trainProblem();
    const run = solve(problem, system);
    const end_s = run.time_s.at(-1)!;
    const changed = solve({ ...problem, sheet: overruled(problem.sheet, run, end_s, { reflux: 9 }) }, system);
    expect(Math.abs(changed.time_s.at(-1)! - end_s)).toBeLessThan(0.01);
  });
});
