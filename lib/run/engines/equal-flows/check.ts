// What of a problem the column at constant molar flows cannot run.

import type { EthanolWater } from '../../../equilibrium/ethanol-water.js';
import type { Fault } from '../../../errors.js';
import type { Amounts } from '../../../mixture/volume.js';
import { chargeAmounts, DRY_SHARE } from '../../charge.js';
import { rangeFault } from '../../check.js';
import type { CompleteProblem } from '../../complete.js';
import type { RunStep, StopRule } from '../../problem.js';
import { stopRuleFaults } from '../../stop-rules.js';
import { mostVapour_mol_s, rowFaults } from '../../row-room.js';
import { simplifiedFaults } from '../simplified-faults.js';
import { sectionOf } from './column-system.js';
import { heldBy } from './hold-ups.js';

/** Hold-ups below this share of the charge turn over faster than the solver's arithmetic can follow. */
const SMALLEST_SHARE = 1e-10;
/** Rules that are met only while something leaves the still. */
const DRAWING_RULES: readonly StopRule['kind'][] = ['collectedVolume', 'alcoholLeftBelow'];

/** Faults of a complete problem of the right shape. */
export function equalFlowsFaults(problem: CompleteProblem, system: EthanolWater): Fault[] {
  const { still } = problem;
  const faults = simplifiedFaults(problem);
  if (still.column.kind === 'packing') {
    const expected = "plates: the model 'equalFlows' knows no packing";
    faults.push({ argument: 'still.column.kind', value: 'packing', expected });
  }
  if (faults.length > 0) return faults;
  const wrong = [...pressureFaults(problem, system), ...holdUpFaults(problem)];
  const faulty = wrong.length > 0 ? wrong : problem.sheet.flatMap((step, i) => stepFaults(problem, step, i));
  if (faulty.length > 0) return faulty;
  const { ethanol_mol, water_mol } = chargeAmounts(problem.charge);
  return rowFaults(problem.outputs, problem.sheet, ethanol_mol + water_mol, ({ heat = problem.heat }) =>
    heat.kind === 'power' ? mostVapour_mol_s(heat.power_W) : heat.rate_mol_s,
  );
}

function stepFaults(problem: CompleteProblem, { reflux, heat, until }: RunStep, i: number): Fault[] {
  const where = `sheet[${String(i)}]`;
  const head_Pa = problem.still.air.pressure_Pa;
  const { plates, drop_Pa } = sectionOf(problem.still);
  const faults: Fault[] = [];
  if (reflux === 'total' && until.every((rule) => DRAWING_RULES.includes(rule.kind))) {
    const expected = 'a rule that can be met at total reflux, where nothing leaves the still';
    faults.push({ argument: `${where}.until`, value: until.map(({ kind }) => kind), expected });
  }
  if (heat?.kind === 'power' && !(heat.power_W > 0)) {
    const expected = "a power above 0 W: the model 'equalFlows' is moved on by what it boils";
    faults.push({ argument: `${where}.heat.power_W`, value: heat.power_W, expected });
  }
  const most = collectable(problem);
  const rules = until.flatMap((rule, k) => {
    const pressure_Pa = rule.kind === 'headTemperatureAbove' ? head_Pa : head_Pa + plates * drop_Pa;
    return stopRuleFaults(`${where}.until[${String(k)}]`, rule, most, pressure_Pa);
  });
  return [...faults, ...rules];
}

/** What can come over before the kettle is dry: all the ethanol, and water for the rest. */
function collectable(problem: CompleteProblem): Amounts {
  const { ethanol_mol, water_mol } = chargeAmounts(problem.charge);
  const total_mol = ethanol_mol + water_mol;
  const most_mol = (1 - DRY_SHARE) * total_mol - heldAltogether(problem);
  const ethanol = Math.min(ethanol_mol, most_mol);
  return { ethanol_mol: ethanol, water_mol: most_mol - ethanol };
}

function heldAltogether({ still, charge }: CompleteProblem): number {
  const { ethanol_mol, water_mol } = chargeAmounts(charge);
  const { plate_mol, condenser_mol } = heldBy(still, ethanol_mol / (ethanol_mol + water_mol));
  return sectionOf(still).plates * plate_mol + condenser_mol;
}

function pressureFaults({ still, activity }: CompleteProblem, system: EthanolWater): Fault[] {
  const [lowest_Pa, highest_Pa] = system.curve(activity).range_Pa;
  const { pressure_Pa } = still.air;
  const { plates, drop_Pa } = sectionOf(still);
  const expected = `a pressure from ${String(lowest_Pa)} to ${String(highest_Pa)} Pa`;
  const faults = rangeFault('still.air.pressure_Pa', pressure_Pa, lowest_Pa, highest_Pa, expected);
  if (faults.length > 0 || pressure_Pa + plates * drop_Pa <= highest_Pa) return faults;
  const least = `a drop that leaves the kettle at ${String(highest_Pa)} Pa or less`;
  return [{ argument: 'still.column.drop_Pa', value: drop_Pa, expected: least }];
}

/** Plates and condenser must leave most of the charge in the kettle, and not be nothing beside it. */
function holdUpFaults(problem: CompleteProblem): Fault[] {
  const { still, charge } = problem;
  const { ethanol_mol, water_mol } = chargeAmounts(charge);
  const total_mol = ethanol_mol + water_mol;
  const { plate_mol, condenser_mol } = heldBy(still, ethanol_mol / total_mol);
  const { plates } = sectionOf(still);
  const together = heldAltogether(problem);
  if (together >= 0.5 * total_mol) {
    const onPlates = plates * plate_mol > condenser_mol;
    const argument = onPlates ? 'still.column.holdUp' : 'still.refluxCondenser.holdUp';
    const expected = `plates and condenser that hold less than half the charge (${(0.5 * total_mol).toPrecision(3)} mol together, not ${together.toPrecision(3)})`;
    return [{ argument, value: onPlates ? plate_mol : condenser_mol, expected }];
  }
  // Vapour raised is the clock: the more there is of it, the larger the least hold-up whose renewal it can time.
  const raised = problem.sheet.reduce(
    (most, { reflux }) => (typeof reflux === 'number' ? Math.max(most, 1 + reflux) : most),
    1,
  );
  const least = SMALLEST_SHARE * total_mol * raised;
  const expected = `a hold-up of at least ${least.toPrecision(3)} mol for this charge and its reflux (that little is as good as none)`;
  return [
    ...(plates > 0 ? rangeFault('still.column.holdUp', plate_mol, least, 1e9, expected) : []),
    ...rangeFault('still.refluxCondenser.holdUp', condenser_mol, least, 1e9, expected),
  ];
}
