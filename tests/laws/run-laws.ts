// What must hold of any run of any engine, as checks of one problem and its solution: each throws with what it found.

import { expect } from 'vitest';
import { azeotrope, type EnergyColumns, type EthanolWater, type RunSolution } from '#lib/index.js';
import { chargeAmounts } from '#lib/run/charge.js';
import { type CompleteProblem, keepsEnergy } from '#lib/run/complete.js';
import type { Amounts } from '#lib/mixture/volume.js';

/** Mole fractions may pass 0 and 1 by a trace; balances close to this share of the charge, design section 5. */
const TRACE = 1e-3;
const BALANCE = 1e-9;
/** What a run may cost at most: sides and factorisations for each block of the full model, attempts for each unknown of the column. */
const MOST_WORK = { energy: 12.5e6, equalHeats: 12.5e6, equalFlows: 20.5e6, rayleigh: 1e6 };
/** More than this of the azeotrope's mole fraction is beyond it: the trace, and the compiled curve's error. */
const BEYOND = 2e-3;

function filled({ charge, doublerCharges }: CompleteProblem): readonly Amounts[] {
  return [charge, ...doublerCharges.map((own) => own.charge)].map(chargeAmounts);
}

/** It ends as asked, dry, going on, or where it takes more work than one may, which its words say and `tooMuchWork` counts. */
export function endsTyped(run: RunSolution): void {
  expect(['stopped', 'kettleDry', 'neverMet', 'stepLimit']).toContain(run.ending.kind);
  if (tooMuchWork(run)) expect(run.ending.message).toContain('takes more work than one may');
  expect(run.ending.message.length).toBeLessThan(600);
}

/** Whether a run was left for the work it takes. */
export function tooMuchWork(run: RunSolution): boolean {
  return run.ending.kind === 'stepLimit';
}

export function costsNoMoreThanARunMay(run: RunSolution): void {
  const { rightHandSides, factorisations, acceptedSteps, rejectedSteps } = run.statistics;
  const { model } = run.problem;
  const work = keepsEnergy(model)
    ? (rightHandSides + factorisations) * (run.holders.length + 2)
    : (acceptedSteps + rejectedSteps) * (2 * run.plates + 4);
  expect(work).toBeLessThan(MOST_WORK[model]);
  expect(run.rows).toBeLessThanOrEqual(50_000);
}

/** Every number is one, but for a reflux ratio at total reflux. */
export function isFinite(run: RunSolution): void {
  for (const [name, column] of columns(run)) {
    if (name === 'refluxRatio') continue;
    expect(firstOutside(column, -Number.MAX_VALUE, Number.MAX_VALUE), name).toBe(-1);
  }
}

export function staysInRange(run: RunSolution): void {
  const whole = keepsEnergy(run.problem.model);
  const columnsOf = new Map(columns(run));
  const within = (name: string, low: number, high: number): void => {
    const column = columnsOf.get(name);
    const at = column === undefined ? -1 : firstOutside(column, low, high);
    expect(at < 0 ? 'within' : `${name}[${String(at)}] = ${String(column?.[at])}`).toBe('within');
  };
  for (const name of ['kettleMoleFraction', 'spoutMoleFraction', 'plateLiquid', 'holderLiquid'])
    within(name, -TRACE, 1 + TRACE);
  for (const name of ['plateVapour', 'holderVapour']) within(name, whole ? 0 : -0.01, whole ? 1 : 1.01);
  for (const name of ['kettleStrength', 'spoutStrength']) within(name, 0, 1);
  const [coldest_K, hottest_K] = temperaturesAround(run.problem);
  for (const name of ['kettleTemperature_K', 'headTemperature_K', 'holderTemperature_K'])
    within(name, coldest_K, hottest_K);
  for (const name of ['holderAmount_mol', 'kettleAmount_mol', 'drumAmount_mol']) within(name, 0, Infinity);
  for (const name of ['holderVapourRate_mol_s', 'holderLiquidRate_mol_s', 'distillateRate_mol_s'])
    within(name, 0, Infinity);
  const { time_s } = run;
  let still = 0;
  for (let row = 1; row < run.rows; row++) if (!(time_s[row]! > time_s[row - 1]!)) still = row;
  expect(still === 0 ? 'rising' : `time_s[${String(still)}] = ${String(time_s[still])}`).toBe('rising');
}

/** Where a column first leaves a range; −1 where it never does. A loop of its own: there are millions of numbers. */
function firstOutside(column: Float64Array, low: number, high: number): number {
  for (let i = 0; i < column.length; i++) if (!(column[i]! >= low && column[i]! <= high)) return i;
  return -1;
}

/** Nothing is colder than the coldest thing round it, by what rounded corners may be off, nor hotter than water boils at the highest pressure there is. */
function temperaturesAround(problem: CompleteProblem): readonly [number, number] {
  if (!keepsEnergy(problem.model)) return [300, 400];
  const { air, refluxCondenser: condenser, productCondenser } = problem.still;
  const water_K =
    condenser.kind === 'partial' && condenser.coolant.kind === 'water' ? condenser.coolant.inlet_K : Infinity;
  const filled_K = [problem.chargeTemperature_K, ...problem.doublerCharges.map((own) => own.temperature_K ?? Infinity)];
  // What a set duty cools fades out 25 K below its boiling point; the drum's liquid is as cold as its water.
  return [Math.min(air.temperature_K, water_K, productCondenser.inlet_K, 285, ...filled_K) - 5, 389];
}

/** Ethanol and water at every row are what they were. */
export function keepsEveryMole(run: RunSolution): void {
  const all = filled(run.problem);
  const ethanol = all.reduce((sum, one) => sum + one.ethanol_mol, 0);
  const total = all.reduce((sum, one) => sum + one.ethanol_mol + one.water_mol, 0);
  const held = run.holders.length;
  let worst = 0;
  for (let row = 0; row < run.rows; row++) {
    let n1 = run.drumAmount_mol[row]! * run.spoutMoleFraction[row]! + run.collectedEthanol_mol[row]!;
    let n = run.drumAmount_mol[row]! + run.collectedEthanol_mol[row]! + run.collectedWater_mol[row]!;
    for (let at = row * held; at < (row + 1) * held; at++) {
      n += run.holderAmount_mol[at]!;
      n1 += run.holderAmount_mol[at]! * run.holderLiquid[at]!;
    }
    worst = Math.max(worst, Math.abs(n - total), Math.abs(n1 - ethanol));
  }
  expect(worst / total).toBeLessThan(BALANCE);
}

/** What is weaker than the azeotrope in every vessel stays so, whatever is done to it. */
export function staysBelowTheAzeotrope(run: RunSolution, system: EthanolWater): void {
  const { still, activity } = run.problem;
  // It moves to less ethanol with rising pressure: the one at the head is the richest there is.
  const ceiling = azeotrope(still.air.pressure_Pa, system.model(activity));
  if (!ceiling.found || activity === 'raoult') return;
  const strong = ({ ethanol_mol, water_mol }: Amounts): boolean =>
    ethanol_mol > 0.8 * ceiling.moleFraction * (ethanol_mol + water_mol);
  if (filled(run.problem).some(strong)) return;
  const columnsOf = new Map(columns(run));
  for (const name of ['kettleMoleFraction', 'spoutMoleFraction', 'plateLiquid', 'holderLiquid', 'holderVapour']) {
    const column = columnsOf.get(name) ?? new Float64Array();
    const at = firstOutside(column, -Infinity, ceiling.moleFraction + BEYOND);
    expect(at < 0 ? 'below' : `${name}[${String(at)}] = ${String(column[at])}`).toBe('below');
  }
}

/**
 * Separating takes work, and the heat supplied can do no more than Carnot's share of it: with all surroundings at T₀ or above and heat given at the
 * kettle's temperature, Q (1 − T₀/T) + exergy of what was filled in warm ≥ work of separation at T₀ = RT₀ Σ n x ln(γx), before less after.
 */
export function paysForWhatItSeparates(run: RunSolution & Partial<EnergyColumns>, system: EthanolWater): void {
  const { problem } = run;
  if (problem.model !== 'energy' || problem.start === 'firstVapour') return;
  const { air, productCondenser, refluxCondenser: condenser } = problem.still;
  const water_K =
    condenser.kind === 'partial' && condenser.coolant.kind === 'water' ? condenser.coolant.inlet_K : Infinity;
  const ambient_K = Math.min(air.temperature_K, productCondenser.inlet_K, water_K, problem.chargeTemperature_K);
  if (ambient_K < 273) return;
  const model = system.model(problem.activity);
  const mixing = (n1: number, n2: number): number => {
    const x = n1 / (n1 + n2);
    if (!(x > 0 && x < 1)) return 0;
    const ideal = n1 * Math.log(x) + n2 * Math.log(1 - x);
    return 8.314 * ambient_K * (ideal + (n1 + n2) * model.excessGibbs(x, ambient_K));
  };
  const charged = filled(problem);
  const before = charged.reduce((sum, one) => sum + mixing(one.ethanol_mol, one.water_mol), 0);
  const last = run.rows - 1;
  const held = run.holders.length;
  let after = mixing(run.collectedEthanol_mol[last]!, run.collectedWater_mol[last]!);
  after += mixing(
    run.drumAmount_mol[last]! * run.spoutMoleFraction[last]!,
    run.drumAmount_mol[last]! * (1 - run.spoutMoleFraction[last]!),
  );
  for (let at = last * held; at < (last + 1) * held; at++) {
    after += mixing(
      run.holderAmount_mol[at]! * run.holderLiquid[at]!,
      run.holderAmount_mol[at]! * (1 - run.holderLiquid[at]!),
    );
  }
  const hottest_K = run.kettleTemperature_K.reduce((top, value) => Math.max(top, value), 0);
  const total = charged.reduce((sum, one) => sum + one.ethanol_mol + one.water_mol, 0);
  const filled_K = Math.max(problem.chargeTemperature_K, air.temperature_K);
  const warm_J = 150 * total * (filled_K - ambient_K - ambient_K * Math.log(filled_K / ambient_K));
  const most_J = run.supplied_J![last]! * (1 - ambient_K / Math.max(hottest_K, ambient_K)) + warm_J;
  expect(after - before).toBeLessThan(1.001 * most_J + 1e-9 * 8.314 * ambient_K * total);
}

function columns(run: RunSolution): [string, Float64Array][] {
  return Object.entries(run.plain()).filter(
    (entry): entry is [string, Float64Array] => entry[1] instanceof Float64Array,
  );
}
