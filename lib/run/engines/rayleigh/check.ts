// What of a problem the bare pot by quadrature cannot run.

import type { EthanolWater } from '../../../equilibrium/ethanol-water.js';
import type { Fault } from '../../../errors.js';
import { chargeAmounts } from '../../charge.js';
import { rangeFault } from '../../check.js';
import type { CompleteProblem } from '../../complete.js';
import { stopRuleFaults } from '../../stop-rules.js';
import { mostVapour_mol_s, rowFaults } from '../../row-room.js';
import { simplifiedFaults } from '../simplified-faults.js';

/** Faults of a complete problem of the right shape. */
export function rayleighFaults(problem: CompleteProblem, system: EthanolWater): Fault[] {
  const { still, sheet } = problem;
  const faults = simplifiedFaults(problem);
  if (still.column.kind !== 'none') {
    const expected = "'none': the model 'rayleigh' is a bare pot by quadrature";
    faults.push({ argument: 'still.column.kind', value: still.column.kind, expected });
  }
  const [lowest, highest] = system.curve(problem.activity).range_Pa;
  const { pressure_Pa } = still.air;
  const expected = `a pressure from ${String(lowest)} to ${String(highest)} Pa`;
  faults.push(...rangeFault('still.air.pressure_Pa', pressure_Pa, lowest, highest, expected));
  if (faults.length > 0) return faults;
  const charge = chargeAmounts(problem.charge);
  const faulty = sheet.flatMap(({ reflux, until }, i) => {
    const where = `sheet[${String(i)}]`;
    const none = "'none': a bare pot by quadrature has no reflux";
    return [
      ...(reflux === 'none' || reflux === 0 ? [] : [{ argument: `${where}.reflux`, value: reflux, expected: none }]),
      ...until.flatMap((rule, k) => stopRuleFaults(`${where}.until[${String(k)}]`, rule, charge, pressure_Pa)),
    ];
  });
  if (faulty.length > 0) return faulty;
  return rowFaults(problem.outputs, sheet, charge.ethanol_mol + charge.water_mol, ({ heat = problem.heat }) =>
    heat.kind === 'power' ? mostVapour_mol_s(heat.power_W) : heat.rate_mol_s,
  );
}
