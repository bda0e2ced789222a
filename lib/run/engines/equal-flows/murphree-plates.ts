// Plates of an efficiency: each vapour is an algebraic unknown, blended of the one below and its liquid's. The Jacobian is
// pentadiagonal. Entries: row i holds J[i][i−2 .. i+2] at 5 i, see pentadiagonal.ts.

import { pentadiagonalMatrix } from '../../../numerics/linear/pentadiagonal.js';
import { readVapourFrom, vapourSlopeFrom } from '../../../equilibrium/slice-tables.js';
import { ColumnEquations } from './column-equations.js';
import type { ColumnSystem } from './column-system.js';

export class MurphreePlates extends ColumnEquations {
  override readonly matrix = pentadiagonalMatrix(this.size);
  #efficiency = 1;

  override setUp(column: ColumnSystem, tolerance: number): void {
    super.setUp(column, tolerance);
    this.#efficiency = column.efficiency;
  }

  override rightHandSide(b: number, u: Float64Array, out: Float64Array): void {
    const { alphas, offsets, intervals, condenser } = this;
    const { returned, drawn } = this.flows;
    const efficiency = this.#efficiency;
    let below = this.kettleSide(b, u, out);
    for (let j = 0, i = 2; i < condenser; j++, i += 2) {
      const x = u[i]!;
      const y = u[i + 1]!;
      out[i] = returned * (u[i + 2]! - x) + below - y;
      out[i + 1] = below + efficiency * (readVapourFrom(alphas, offsets[j]!, intervals, x) - below) - y;
      below = y;
    }
    out[condenser] = below - u[condenser]!;
    out[condenser + 1] = drawn * u[condenser]!;
  }

  override evaluate(b: number, u: Float64Array, out: Float64Array): void {
    const { alphas, offsets, intervals, condenser } = this;
    const { returned, drawn } = this.flows;
    const { entries } = this.matrix;
    const efficiency = this.#efficiency;
    let below = this.lineariseKettle(b, u, out);
    entries[3] = this.time_K;
    entries[7] = -this.kettleSlope;
    entries[8] = returned;
    for (let j = 0, i = 2, at = 10; i < condenser; j++, i += 2, at += 10) {
      const x = u[i]!;
      const y = u[i + 1]!;
      const offset = offsets[j]!;
      const below_ = j === 0 ? this.kettleSlope : 1;
      out[i] = returned * (u[i + 2]! - x) + below - y;
      out[i + 1] = below + efficiency * (readVapourFrom(alphas, offset, intervals, x) - below) - y;
      entries[at + 1] = below_;
      entries[at + 2] = -returned;
      entries[at + 3] = -1;
      entries[at + 4] = returned;
      entries[at + 5] = (1 - efficiency) * below_;
      entries[at + 6] = efficiency * vapourSlopeFrom(alphas, offset, intervals, x);
      entries[at + 7] = -1;
      below = y;
    }
    out[condenser] = below - u[condenser]!;
    out[condenser + 1] = drawn * u[condenser]!;
    const last = 5 * condenser;
    entries[last + 1] = 1;
    entries[last + 2] = -1;
    entries[last + 6] = drawn;
  }

  protected override passOn(slope: Float64Array, vapour_b: number): void {
    slope[3] = (1 - this.#efficiency) * vapour_b;
  }

  protected override loosen(weights: Float64Array): void {
    const { condenser } = this;
    const { returned, drawn } = this.flows;
    const { entries } = this.matrix;
    const passed = 1 - this.#efficiency;
    let vapour = 1; // δy_j over δ of the spout
    for (let i = condenser - 2; i > 1; i -= 2) {
      const gain = (vapour - passed * drawn) / (passed * returned + entries[5 * i + 6]!);
      const liquid = Math.min(this.loosest, Math.max(1, gain));
      weights[i + 1]! *= Math.max(1, vapour);
      weights[i]! *= liquid;
      vapour = returned * liquid + drawn;
    }
  }
}
