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
import type { ColumnProblem, Heat } from '../../problem.js';
import { columnLayout, type ColumnLayout } from './layout.js';

/** A column ready to be integrated; `flows` is set anew at each step of the run sheet. */
export interface ColumnSystem {
  readonly layout: ColumnLayout;
  readonly plateHoldUp_mol: number;
  readonly condenserHoldUp_mol: number;
  readonly efficiency: number;
  readonly heat: Heat;
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

/** Share of the condensed vapour that goes back: r = R/(R+1). */
export function returnedShare(reflux: number | 'total'): number {
  return reflux === 'total' ? 1 : reflux / (reflux + 1);
}

/** Turns a checked problem into a column system on a compiled curve. */
export function columnSystem(problem: ColumnProblem, curve: EquilibriumCurve): ColumnSystem {
  const { column } = problem;
  const { ethanol_mol, water_mol } = chargeAmounts(problem.charge);
  const total_mol = ethanol_mol + water_mol;
  const held_mol = column.plates * column.plateHoldUp_mol + column.condenserHoldUp_mol;
  return {
    layout: columnLayout(column.plates, column.efficiency < 1 && column.plates > 0),
    plateHoldUp_mol: column.plateHoldUp_mol,
    condenserHoldUp_mol: column.condenserHoldUp_mol,
    efficiency: column.efficiency,
    heat: problem.heat,
    chargeEthanol_mol: ethanol_mol,
    chargeTotal_mol: total_mol,
    kettleSlice: curve.at(column.headPressure_Pa + column.plates * column.plateDrop_Pa),
    plateSlices: Array.from({ length: column.plates }, (_none, i) =>
      curve.at(column.headPressure_Pa + (column.plates - 1 - i) * column.plateDrop_Pa),
    ),
    headSlice: curve.at(column.headPressure_Pa),
    flows: { returned: 1, drawn: 0, since_mol: 0, kettleStart_mol: total_mol - held_mol },
  };
}
