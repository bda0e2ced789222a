// What a column solve carries from its problem: amounts, slices of the equilibrium curve at each
// holder's pressure, and the flows of the present step of the run sheet.
//
// The independent variable is not time but b, the vapour raised from the kettle in mol. At constant
// molar overflow every flow is a fixed share of the boil-up, so boil-up cancels from all compositions:
//
//   L = r V,  D = (1 − r) V,  r = R / (R + 1)        R reflux ratio; r = 1 at total reflux
//   S(b) = S₀ − (1 − r)(b − b₀)                      kettle amount, known in closed form within a step
//   dt/db = λ(x_kettle) / power                      time is a quadrature that nothing depends on

import type { CurveSlice, EquilibriumCurve } from '../../../equilibrium/equilibrium-curve.js';
import { chargeAmounts } from '../../charge.js';
import type { CompleteProblem } from '../../complete.js';
import type { Heat } from '../../problem.js';
import { heldBy } from './hold-ups.js';
import { columnLayout, type ColumnLayout } from './layout.js';

/** A column ready to be integrated; `flows` and `heat` are set anew at each step of the run sheet. */
export interface ColumnSystem {
  readonly layout: ColumnLayout;
  readonly plateHoldUp_mol: number;
  readonly condenserHoldUp_mol: number;
  readonly efficiency: number;
  heat: Heat;
  readonly chargeEthanol_mol: number;
  readonly chargeTotal_mol: number;
  readonly kettleSlice: CurveSlice;
  /** Slices of plates 1 … N. */
  readonly plateSlices: readonly CurveSlice[];
  /** Slice at the head's pressure. */
  readonly headSlice: CurveSlice;
  readonly flows: ColumnFlows;
}

/** Flows per mole of vapour raised and the kettle's amount where the step began. */
export interface ColumnFlows {
  /** r: liquid returned per mole of vapour raised. */
  returned: number;
  /** 1 − r: distillate per mole of vapour raised. */
  drawn: number;
  /** b₀, mol. */
  since_mol: number;
  /** S₀, mol. */
  kettleStart_mol: number;
}

/** Kettle amount S(b), mol. */
export function kettleAmount(flows: ColumnFlows, boiledUp_mol: number): number {
  return flows.kettleStart_mol - flows.drawn * (boiledUp_mol - flows.since_mol);
}

/** Turns a checked problem into a column system on a compiled curve. */
export function columnSystem(problem: CompleteProblem, curve: EquilibriumCurve): ColumnSystem {
  const { still, heat } = problem;
  const { plates, efficiency, drop_Pa } = sectionOf(still);
  const { ethanol_mol, water_mol } = chargeAmounts(problem.charge);
  const total_mol = ethanol_mol + water_mol;
  const { plate_mol, condenser_mol } = heldBy(still, ethanol_mol / total_mol);
  const head_Pa = still.air.pressure_Pa;
  return {
    layout: columnLayout(plates, efficiency < 1 && plates > 0),
    plateHoldUp_mol: plate_mol,
    condenserHoldUp_mol: condenser_mol,
    efficiency,
    heat,
    chargeEthanol_mol: ethanol_mol,
    chargeTotal_mol: total_mol,
    kettleSlice: curve.at(head_Pa + plates * drop_Pa),
    plateSlices: Array.from({ length: plates }, (_none, i) => curve.at(head_Pa + (plates - 1 - i) * drop_Pa)),
    headSlice: curve.at(head_Pa),
    flows: {
      returned: 1,
      drawn: 0,
      since_mol: 0,
      kettleStart_mol: total_mol - plates * plate_mol - condenser_mol,
    },
  };
}

/** Plates above the kettle, their efficiency and pressure drop; a pot has none. */
export function sectionOf({ column }: CompleteProblem['still']): {
  readonly plates: number;
  readonly efficiency: number;
  readonly drop_Pa: number;
} {
  if (column.kind !== 'plates') return { plates: 0, efficiency: 1, drop_Pa: 0 };
  return { plates: column.count, efficiency: column.efficiency, drop_Pa: column.drop_Pa };
}
