// Ideal plates: each vapour is its liquid's, the Jacobian is tridiagonal. Entries: lower | diagonal | upper, see tridiagonal.ts.

import { TridiagonalMatrix } from '../../../numerics/linear/tridiagonal.js';
import { readVapourFrom, vapourSlopeFrom } from '../../../equilibrium/slice-tables.js';
import { ColumnEquations } from './column-equations.js';

export class IdealPlates extends ColumnEquations {
  override readonly matrix = new TridiagonalMatrix(this.size);

  override rightHandSide(b: number, u: Float64Array, out: Float64Array): void {
    const { alphas, offsets, intervals, condenser } = this;
    const { returned, drawn } = this.flows;
    let below = this.kettleSide(b, u, out);
    let x = u[2]!;
    for (let i = 2; i < condenser; i++) {
      const above = u[i + 1]!;
      const y = readVapourFrom(alphas, offsets[i - 2]!, intervals, x);
      out[i] = returned * (above - x) + below - y;
      below = y;
      x = above;
    }
    out[condenser] = below - x;
    out[condenser + 1] = drawn * x;
  }

  override evaluate(b: number, u: Float64Array, out: Float64Array): void {
    const { alphas, offsets, intervals, condenser, size } = this;
    const { returned, drawn } = this.flows;
    const { entries } = this.matrix;
    let below = this.lineariseKettle(b, u, out);
    entries[2 * size] = this.time_K;
    entries[size + 1] = -this.kettleSlope;
    entries[2 * size + 1] = returned;
    let slopeBelow = this.kettleSlope;
    let x = u[2]!;
    for (let i = 2; i < condenser; i++) {
      const above = u[i + 1]!;
      const offset = offsets[i - 2]!;
      // One piece of the spline of α gives both, here and not in a call: y = α x q, y′ = (α + α′ x (1 − x)) q², q = 1/(1 + (α − 1) x).
      let y: number;
      let y_x: number;
      if (x >= 0 && x < 1) {
        const position = x * intervals;
        const k = position | 0;
        const s = position - k;
        const at = offset + 4 * k;
        const c1 = alphas[at + 1]!;
        const c2 = alphas[at + 2]!;
        const c3 = alphas[at + 3]!;
        const alpha = alphas[at]! + s * (c1 + s * (c2 + s * c3));
        const alpha_x = (c1 + s * (2 * c2 + 3 * s * c3)) * intervals;
        const q = 1 / (1 + (alpha - 1) * x);
        y = alpha * x * q;
        y_x = (alpha + alpha_x * x * (1 - x)) * q * q;
      } else {
        y = readVapourFrom(alphas, offset, intervals, x);
        y_x = vapourSlopeFrom(alphas, offset, intervals, x);
      }
      out[i] = returned * (above - x) + below - y;
      entries[i] = slopeBelow;
      entries[size + i] = -returned - y_x;
      entries[2 * size + i] = returned;
      below = y;
      slopeBelow = y_x;
      x = above;
    }
    out[condenser] = below - x;
    out[condenser + 1] = drawn * x;
    entries[condenser] = slopeBelow;
    entries[size + condenser] = -1;
    entries[condenser + 1] = drawn;
  }

  protected override passOn(): void {
    // Nothing to write: the first plate's vapour is its own liquid's alone.
  }

  protected override loosen(weights: Float64Array): void {
    const { condenser } = this;
    const { returned, drawn } = this.flows;
    const { entries } = this.matrix;
    let gain = 1;
    for (let i = condenser - 1; i > 1; i--) {
      gain = Math.min(this.loosest, Math.max(1, (returned * gain + drawn) / entries[i + 1]!));
      weights[i]! *= gain;
    }
  }
}
