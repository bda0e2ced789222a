// The bare pot from the first vapour to the first stop rule, by quadrature along the path of its kettle (path.ts).
// Everything that rises is condensed and collected; no reflux in the head, no heat lost, and of the heat given only
// the latent heat counts, as in the column.

import type { EthanolWater } from '../../../equilibrium/ethanol-water.js';
import { InputError, type InputFault } from '../../../errors.js';
import { bracketedRoot } from '../../../numerics/root.js';
import { chargeAmounts, chargeFaults, DRY_SHARE } from '../../charge.js';
import { heatFaults, MOST_ROWS, rangeFault, wholeFault } from '../../check.js';
import type { SimpleProblem } from '../../problem.js';
import type { Ending, RunSolution } from '../../solution.js';
import { simpleShapeFaults } from '../../shape.js';
import { describeMetRule, describeRule, stopMargin, stopRuleFaults } from '../../stop-rules.js';
import { type PathPoint, pathWalker, paceOf } from './path.js';
import { type PotState, potState } from './pot-state.js';
import { potColumns } from './rows.js';

const DEFAULT_ROWS = 200;
const END_OF_PATH = -Math.log(DRY_SHARE);

/**
 * Runs a bare pot in time, from the first vapour to the first stop rule met or a dry kettle.
 *
 * Equation: ln(n0/n) = ∫ dx/(y* − x) by quadrature in ln(x/(1 − x)); dt = (latent heat/power) dV.
 * @param problem Charge, pressure [Pa] (20 to 300 kPa), activity model, heat, stop rules and number of rows (default 200), as plain data.
 * @param system Equilibrium of ethanol and water, made once by createEthanolWater() and used again.
 * @returns Columns of the run evenly spaced in the amount distilled, how it ended ('stopped' or 'kettleDry', when 0.5 % of the charge's moles is left), what it cost; one row when a rule was met from the start.
 * @throws InputError when a part of the problem cannot be used or a stop rule lies beyond any run: more than the charge holds, hotter than boiling water, a strength above 100 %.
 * @example solveSimple({ kind: 'simple', charge: { kind: 'amount', amount_mol: 100, moleFraction: 0.18 }, pressure_Pa: 101325, activity: 'redlich-kister', heat: { kind: 'power', power_W: 1000 }, until: [{ kind: 'alcoholLeftBelow', share: 0.5 }] }, createEthanolWater()).kettleMoleFraction.at(-1) // → 0.1101
 * Source: Lord Rayleigh, Phil. Mag. (6) 4 (1902) 521-537.
 */
export function solveSimple(problem: SimpleProblem, system: EthanolWater): RunSolution {
  const { ethanol_mol, water_mol } = checkedCharge(problem, system);
  const amount_mol = ethanol_mol + water_mol;
  const slice = system.curve(problem.activity).at(problem.pressure_Pa);
  const walker = pathWalker(slice, amount_mol, paceOf(problem.heat, slice));
  const look = (point: PathPoint): PotState => potState(slice, amount_mol, ethanol_mol, point);
  const margins = problem.until.map((rule) => stopMargin(rule));

  const start: PathPoint = { u: Math.log(ethanol_mol / water_mol), s: 0, time_s: 0 };
  const panels: PathPoint[] = [start];
  let before = margins.map((margin) => margin(look(start)));
  let met = before.findIndex((margin) => margin <= 0);
  let end = start;
  while (met < 0 && end.s < END_OF_PATH) {
    const from = end;
    let to = walker.next(from);
    if (to.s > END_OF_PATH) to = walker.within(from, END_OF_PATH - from.s);
    const after = margins.map((margin) => margin(look(to)));
    let first = Infinity;
    for (const [i, margin] of margins.entries()) {
      if (!(before[i]! > 0 && after[i]! <= 0)) continue;
      const rise = bracketedRoot((r) => margin(look(walker.within(from, r))), 0, to.s - from.s, 1e-15);
      if (rise < first) {
        first = rise;
        met = i;
      }
    }
    end = met < 0 ? to : walker.within(from, first);
    before = after;
    panels.push(end);
  }

  const points = evenlySpaced(panels, met < 0 || end.s > 0 ? (problem.rows ?? DEFAULT_ROWS) : 1, walker);
  return {
    ending: endingOf(problem, met, end.s === 0),
    statistics: {
      acceptedSteps: panels.length - 1,
      rejectedSteps: 0,
      rightHandSides: 5 * (panels.length - 1),
      jacobians: 0,
      factorisations: 0,
      events: met < 0 ? 0 : 1,
    },
    stepStarts: [0],
    ...potColumns(points.map(look), problem.heat, slice),
  };
}

/** Points of the path at even steps of the amount distilled, the last exactly at the end. */
function evenlySpaced(
  panels: readonly PathPoint[],
  rows: number,
  walker: ReturnType<typeof pathWalker>,
): readonly PathPoint[] {
  const last = panels.at(-1)!;
  const distilled = -Math.expm1(-last.s);
  const points = [panels[0]!];
  let panel = 0;
  for (let row = 1; row < rows; row++) {
    const s = -Math.log1p((-distilled * row) / (rows - 1));
    while (panel + 1 < panels.length && panels[panel + 1]!.s <= s) panel++;
    points.push(row === rows - 1 ? last : walker.within(panels[panel]!, s - panels[panel]!.s));
  }
  return points;
}

function endingOf(problem: SimpleProblem, met: number, atOnce: boolean): Ending {
  const rule = problem.until[met];
  if (rule !== undefined && atOnce) {
    return { kind: 'stopped', step: 0, rule, message: `the run ended at once: ${describeMetRule(rule)}` };
  }
  if (rule !== undefined) return { kind: 'stopped', step: 0, rule, message: `the run ended: ${describeRule(rule)}` };
  return { kind: 'kettleDry', step: 0, message: 'the kettle ran dry before any rule was met' };
}

function checkedCharge(problem: SimpleProblem, system: EthanolWater): ReturnType<typeof chargeAmounts> {
  const faults = simpleProblemFaults(problem, system);
  if (faults.length > 0) throw new InputError(...faults);
  return chargeAmounts(problem.charge);
}

/** Every fault of the problem: of its shape, else of its numbers, else of its rules. */
export function simpleProblemFaults(problem: SimpleProblem, system: EthanolWater): InputFault[] {
  const shape = simpleShapeFaults(problem);
  if (shape.length > 0) return shape;
  const [lowest, highest] = system.curve(problem.activity).range_Pa;
  const expected = `a pressure from ${String(lowest)} to ${String(highest)} Pa`;
  const numbers = [
    ...chargeFaults(problem.charge),
    ...rangeFault('pressure_Pa', problem.pressure_Pa, lowest, highest, expected),
    ...heatFaults(problem.heat),
    ...wholeFault('rows', problem.rows ?? DEFAULT_ROWS, 2, MOST_ROWS),
  ];
  if (numbers.length > 0) return numbers;
  const charge = chargeAmounts(problem.charge);
  return problem.until.flatMap((rule, i) => stopRuleFaults(`until[${String(i)}]`, rule, charge, problem.pressure_Pa));
}
