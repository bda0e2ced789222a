// Plates driven hard work worse whatever sends their liquid back.

import { describe, expect, it } from 'vitest';
import { createEthanolWater } from '#lib/index.js';
import { controlsOf } from '#lib/run/train/controls.js';
import { trainOf } from '#lib/run/train/holders.js';
import type { Reflux } from '#lib/run/train/problem.js';
import { TrainEquations } from '#lib/run/train/equations.js';
import { startingState } from '#lib/run/train/start.js';
import { trainTables } from '#lib/run/train/tables.js';
import { TrainState } from '#lib/run/train/train-state.js';
import { wetEfficiencies } from '#lib/run/train/wet-efficiency.js';
import type { Still } from '#lib/still/still.js';
import { platedStill, trainProblem } from '../../../support/train-problems.js';

const power_W = 9000;
const falling = platedStill(6);
const hard: Still = { ...falling, column: { ...falling.column, efficiencyFalls: true } as Still['column'] };
const partial = (coolant: Extract<Still['refluxCondenser'], { kind: 'partial' }>['coolant']): Still => ({
  ...hard,
  refluxCondenser: { kind: 'partial', holdUp_m3: 5e-5, coolant },
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
  const problem = trainProblem({ still, power_W, sheet, charge: { kind: 'volume', volume_m3: 0.12, strength: 0.6 } });
  const train = trainOf(problem);
  const pressures = [...train.holders.map((holder) => holder.pressure_Pa), train.drum.pressure_Pa];
  const tables = trainTables(system.enthalpy('redlich-kister'), pressures, false);
  const controls = controlsOf(sheet[0], still, power_W);
  const equations = new TrainEquations(train, tables, 1e-5, controls);
  const moment = new TrainState(equations, train, system.curve('redlich-kister').at(101325));
  const all = wetEfficiencies(still, train, moment.look(0, startingState(problem, train, tables)), controls)!;
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
