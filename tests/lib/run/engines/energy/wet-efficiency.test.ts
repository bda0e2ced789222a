// Plates driven hard work worse whatever sends their liquid back.

import { completeProblem } from '#lib/run/complete.js';
import { describe, expect, it } from 'vitest';
import { createEthanolWater } from '#lib/index.js';
import { controlsOf } from '#lib/run/engines/energy/controls.js';
import { trainOf } from '#lib/run/engines/energy/holders.js';
import type { Reflux, RunStep } from '#lib/run/problem.js';
import { TrainEquations } from '#lib/run/engines/energy/equations.js';
import { solve } from '#lib/run/solve.js';
import type { EnergySolution } from '#lib/run/solution.js';
import { startingState } from '#lib/run/engines/energy/start.js';
import { trainTables } from '#lib/run/engines/energy/tables.js';
import { TrainState } from '#lib/run/engines/energy/train-state.js';
import { ratedPlates } from '#lib/run/engines/energy/wet-efficiency.js';
import type { Still } from '#lib/still/still.js';
import { platedStill, trainProblem, power } from '../../../../support/train-problems.js';

const power_W = 9000;
const falling = platedStill(6);
const hard: Still = { ...falling, column: { ...falling.column, efficiencyFalls: true } as Still['column'] };
const partial = (coolant: Extract<Still['refluxCondenser'], { kind: 'partial' }>['coolant']): Still => ({
  ...hard,
  refluxCondenser: { kind: 'partial', holdUp: { kind: 'volume', volume_m3: 5e-5 }, coolant },
});
const water = { kind: 'water', flow_kg_s: 1, inlet_K: 288, transfer_W_K: 72 } as const;
const ways: readonly (readonly [string, Still, Reflux])[] = [
  ['a ratio of a total condenser', hard, 1],
  ['a hold', hard, { kind: 'hold', strength: 0.95, leastShare: 0.4, mostShare: 0.6 }],
  ['a set duty', partial({ kind: 'duty', power_W: power_W / 2 }), 'asSet'],
  ['a flow of water', partial(water), 'asSet'],
];

const system = createEthanolWater();

/** Efficiencies of the plates of a still whose plates boil strong liquid, as its step begins. */
function rated(still: Still, reflux: Reflux): number[] {
  const sheet = [{ reflux, until: [{ kind: 'duration', seconds: 900 }] }] as const;
  const problem = trainProblem({
    still,
    heat: power(power_W),
    sheet,
    charge: { kind: 'volume', volume_m3: 0.12, strength: 0.6 },
  });
  const train = trainOf(completeProblem(problem));
  const pressures = [...train.holders.map((holder) => holder.pressure_Pa), train.drum.pressure_Pa];
  const tables = trainTables(system.enthalpy('redlich-kister'), pressures, false);
  const controls = controlsOf(sheet[0], { still, heat: power(power_W) });
  const equations = new TrainEquations(train, tables, 1e-5, controls);
  const slice = system.curve('redlich-kister').at(101325);
  const moment = new TrainState(equations, train, slice);
  const all = ratedPlates(still, train, slice)!.rate(
    moment.look(0, startingState(completeProblem(problem), train, tables)),
    controls,
  );
  return train.holders.flatMap(({ kind }, j) => (kind === 'plate' ? [all[j]!] : []));
}

describe.each(ways)('half of the vapour sent back by %s', (_name, still, reflux) => {
  it('makes plates that are driven hard work worse, as much as by any other way', () => {
    const efficiencies = rated(still, reflux);
    const expected = rated(hard, 1);
    expect(efficiencies).toHaveLength(6);
    for (const [i, efficiency] of efficiencies.entries()) {
      expect(efficiency).toBeLessThan(0.9 * 0.65);
      expect(Math.abs(efficiency - expected[i]!)).toBeLessThan(0.01); // the water's share is half to some per cent
    }
  });
});

describe('nothing sent back', () => {
  it('leaves nothing that could be carried up: plates lose no more than to their own flooding', () => {
    const dry = rated(hard, 'none');
    for (const [i, efficiency] of rated(hard, 1).entries()) expect(dry[i]!).toBeGreaterThan(efficiency);
  });
});

describe('plates that fill with stronger liquid in the course of a long step', () => {
  /** Drawn at 2 : 1 from lighting up or from the first vapour, in steps of a minute or in one. */
  const drawn = (start: 'cold' | 'firstVapour', minutes: number, steps: number): EnergySolution => {
    const each: RunStep = { reflux: 2, until: [{ kind: 'duration', seconds: (60 * minutes) / steps }] };
    const sheet = Array.from({ length: steps }, () => each);
    return solve(trainProblem({ still: hard, heat: power(10_500), sheet, start }), system);
  };
  it.each([
    ['from the first vapour', 'firstVapour', 90],
    ['from lighting up', 'cold', 150],
  ] as const)('are rated anew on the way, %s: one step does as if rated every minute', (_name, start, minutes) => {
    const [one, many] = [drawn(start, minutes, 1), drawn(start, minutes, minutes)];
    const at = (run: EnergySolution, minute: number): number =>
      run.spoutStrength[run.time_s.findIndex((time) => time >= 60 * minute - 1)]!;
    const halfAPercent = 0.005; // of strength: a factor on an efficiency may be off by 0.03
    const flows = Math.ceil((many.firstVapour_s ?? 0) / 60) + 5;
    for (let minute = flows; minute < minutes - 1; minute++) {
      expect(Math.abs(at(one, minute) - at(many, minute)), `minute ${String(minute)}`).toBeLessThan(halfAPercent);
    }
    const collected = (run: EnergySolution): number => run.pureAlcoholCollected_m3.at(-1)!;
    expect(Math.abs(collected(one) / collected(many) - 1)).toBeLessThan(1e-3);
    expect(one.statistics.acceptedSteps).toBeLessThan(0.4 * many.statistics.acceptedSteps);
  });

  it('are rated on the way without losing the end of a step that comes at the same moment', () => {
    // Sixty seconds is the least time between two ratings.
    const run = drawn('firstVapour', 90, 90);
    expect(run.time_s.at(-1)).toBeCloseTo(5400, 6);
    expect(run.stepStarts).toHaveLength(90);
    expect(run.ending.kind).toBe('stopped');
  });

  it('run on without a break where they are far from flooding', () => {
    const sheet: RunStep[] = [{ reflux: 2, until: [{ kind: 'duration', seconds: 5400 }] }];
    const [falls, not] = [hard, falling].map((still) =>
      solve(trainProblem({ still, heat: power(4000), sheet }), system),
    );
    expect(falls!.statistics.acceptedSteps).toBeLessThan(1.1 * not!.statistics.acceptedSteps);
  });
});
