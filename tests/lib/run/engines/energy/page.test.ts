// The theory page can be computed from. Its table of constants is the code's; and whole runs by scipy on that page alone (reference/derived/page-scipy.py:
// cold start, lags, rounded corners, doubler, condensers, a hold) are the library's, row by row.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createEthanolWater, solve, type PlainEnergySolution } from '#lib/index.js';
import { GAS_CONSTANT, MOLAR_MASS_ETHANOL, MOLAR_MASS_WATER, STANDARD_GRAVITY } from '../../../../../lib/constants.js';
import { DRY_SHARE } from '../../../../../lib/run/charge.js';
import { BY_ITSELF, NO_VAPOUR } from '../../../../../lib/run/engines/energy/balances.js';
import { GAIN, INTEGRAL_s, TOTAL_DUTY } from '../../../../../lib/run/engines/energy/controls.js';
import { FADES_FROM_K, FADES_TO_K } from '../../../../../lib/run/engines/energy/fading.js';
import * as holders from '../../../../../lib/run/engines/energy/holders.js';
import { above, ROUNDING } from '../../../../../lib/run/engines/energy/rounding.js';
import { MOIST } from '../../../../../lib/run/engines/energy/start.js';
import { NEARLY_DRY } from '../../../../../lib/run/engines/energy/streams.js';
import { EQUAL_HEAT } from '../../../../../lib/run/engines/energy/tables.js';
import { FIRST_VAPOUR } from '../../../../../lib/run/stop-rules.js';
import { COLD_K } from '../../../../../lib/equilibrium/enthalpy-curve.js';
import { WATER_J_kg_K } from '../../../../../lib/still/condensers.js';
import type { WholeProblem } from '../../../../support/train-problems.js';
import { read } from '../../../../support/tree.js';

const page = read('docs/theory/train.md');
const table = page.split('## Constants')[1]!.split('\n## ')[0]!;
const pageSays = Object.fromEntries(
  [...table.matchAll(/^\| `(\w+)` +\| ([-+0-9.e]+)/gm)].map(([, name, value]) => [name!, Number(value)]),
);
const inCode: Readonly<Record<string, number>> = {
  unitHeat: holders.LAMBDA0,
  boilLagMost: holders.LONGEST_BOIL_LAG_s,
  boilLagShare: holders.BOIL_SHARE,
  weirLagMost: holders.LONGEST_WEIR_LAG_s,
  weirLagShare: holders.WEIR_SHARE,
  heldPerVolume: holders.MOL_PER_M3,
  heldPerVolumeOfDrum: holders.MOL_PER_DRUM,
  rounding: ROUNDING,
  nearlyDry: NEARLY_DRY,
  kettleCounts: holders.KETTLE_COUNTS,
  byItself: BY_ITSELF,
  noVapour: NO_VAPOUR,
  moist: MOIST,
  cold_K: COLD_K,
  fadesFrom: FADES_FROM_K,
  fadesTo: FADES_TO_K,
  totalDuty: TOTAL_DUTY,
  gain: GAIN,
  integralTime: INTEGRAL_s,
  waterHeat: WATER_J_kg_K,
  firstVapour: FIRST_VAPOUR,
  dry: DRY_SHARE,
  equalHeat: EQUAL_HEAT,
  gasConstant: GAS_CONSTANT,
  gravity: STANDARD_GRAVITY,
  molarMassEthanol: MOLAR_MASS_ETHANOL,
  molarMassWater: MOLAR_MASS_WATER,
};

describe('the theory page of the train', () => {
  it('has every constant of the code and no other, to the last digit', () => {
    expect(pageSays).toEqual(inCode);
  });

  it('uses every constant it lists, by its name or its letter', () => {
    const equations = page.split('## Equations')[1]!.split('## Constants')[0]!;
    const used = new Set([...equations.matchAll(/`(\w+)`/g)].map(([, name]) => name!));
    const letters = ['unitHeat', 'rounding', 'gain', 'integralTime', 'waterHeat', 'cold_K', 'gasConstant', 'gravity'];
    const greek = new Set([...letters, 'molarMassEthanol', 'molarMassWater']);
    expect(Object.keys(pageSays).filter((name) => !used.has(name) && !greek.has(name))).toEqual([]);
  });

  it.each([-1.2, -1, -0.6, -0.1, 0, 0.3, 0.9, 1, 4])('rounds corners by the printed polynomial at %d widths', (z) => {
    const printed = 5 / 32 + z / 2 + (15 * z ** 2) / 32 - (5 * z ** 4) / 32 + z ** 6 / 32;
    const expected = z <= -1 ? 0 : z >= 1 ? z : printed;
    expect(above(7 * z, 7)).toBeCloseTo(7 * expected, 12);
  });
});

interface Case {
  readonly problem: WholeProblem;
  readonly firstVapour_s: number;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly number[])[];
}
const file = new URL('../../../../../reference/derived/page-scipy.json', import.meta.url);
const { cases, constants } = JSON.parse(readFileSync(file, 'utf8')) as {
  readonly cases: Readonly<Record<string, Case>>;
  readonly constants: Readonly<Record<string, number>>;
};
const system = createEthanolWater();

/** Largest difference between the library's rows and scipy's, by quantity. */
function worstOf(run: PlainEnergySolution, { columns, rows }: Case): ReadonlyMap<string, number> {
  const worst = new Map<string, number>();
  for (const row of rows) {
    const at = run.time_s.findIndex((time) => Math.abs(time - row[0]!) < 1e-6);
    expect(at, `a row at ${String(row[0])} s`).toBeGreaterThanOrEqual(0);
    columns.forEach((column, k) => {
      const [name, holder] = column.split('.') as [keyof PlainEnergySolution, string | undefined];
      const values = run[name] as Float64Array;
      const value = values[holder === undefined ? at : at * run.holders.length + Number(holder)]!;
      worst.set(name, Math.max(worst.get(name) ?? 0, Math.abs(value - row[k]!)));
    });
  }
  return worst;
}

describe.each(Object.entries(cases))('scipy on that page alone, %s', (_name, reference) => {
  const run = solve({ ...reference.problem, tolerance: 1e-7 }, system);
  const worst = worstOf(run, reference);

  it('was run on the constants the page has now', () => {
    expect(constants).toEqual(pageSays);
  });

  it('has the first vapour at the condenser at the same moment, within two thousandths of a second', () => {
    expect(Math.abs(run.firstVapour_s! - reference.firstVapour_s)).toBeLessThan(2e-3);
  });

  it.each([
    ['holderAmount_mol', 4e-4],
    ['holderLiquid', 6e-6],
    ['holderTemperature_K', 3e-4],
    ['holderVapourRate_mol_s', 1e-5],
    ['holderLiquidRate_mol_s', 3e-6],
    ['spoutMoleFraction', 1e-6],
    ['drumAmount_mol', 3e-6],
    ['collectedEthanol_mol', 1e-4],
    ['collectedWater_mol', 4e-4],
  ])('agrees in %s within %d on every holder at every row', (name, tolerance) => {
    expect(worst.get(name)).toBeLessThan(tolerance);
  });
});

describe('what lags and corners cost, as the page has it', () => {
  const { problem } = cases['coldColumn']!;
  const { column } = problem.still;
  if (column.kind !== 'plates') throw new Error('a column of plates');
  const rows = [...table.matchAll(/^\| (\d+) \| (\d+) \| ([\d.]+) \|$/gm)].map((row) => row.slice(1).map(Number));

  it('is told of four columns', () => {
    expect(rows.map(([count]) => count)).toEqual([1, 6, 12, 30]);
  });

  it.each(rows)('over %i plates: first vapour at %i s, %d s later than without', (count, first_s, later_s) => {
    const still = { ...problem.still, column: { ...column, count: count } };
    const cold: WholeProblem = { ...problem, still, sheet: problem.sheet.slice(0, 1), tolerance: 1e-6 };
    const sharp = solve({ ...cold, lags: { boil_s: 0.02, weir_s: 0.05 } }, system).firstVapour_s!;
    const soft = solve(cold, system).firstVapour_s!;
    expect(soft.toFixed(0)).toBe(String(first_s));
    expect((soft - sharp).toFixed(1)).toBe(later_s.toFixed(1));
  });
});

describe('the moment of the first vapour', () => {
  const { problem } = cases['coldColumn']!;

  it('is nothing in a run that starts with it', () => {
    expect(solve({ ...problem, start: 'firstVapour' }, system).firstVapour_s).toBe(0);
  });

  it('does not hang on the solver’s steps: a tolerance ten times looser moves it by less than a second in two hours', () => {
    const [loose, tight] = [1e-5, 1e-6].map((tolerance) => solve({ ...problem, tolerance }, system).firstVapour_s!);
    expect(Math.abs(loose! - tight!)).toBeLessThan(1);
  });
});
