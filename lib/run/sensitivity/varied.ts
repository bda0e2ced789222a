// A problem beside itself: what the engine of the same problem gives with one number a little larger and a little smaller, for derivatives of
// functions (right-hand sides, start states, jumps, margins of rules) at one state. Runs are not compared.

import type { EthanolWater } from '../../equilibrium/ethanol-water.js';
import { InputError } from '../../errors.js';
import type { BothSides } from '../../numerics/stiff/stiff-system.js';
import type { CompleteProblem } from '../complete.js';
import type { Engine } from '../engine.js';
import { engineOf } from '../engines/registry.js';
import { stopMargin, type StopMargin } from '../stop-rules.js';
import type { NumberOfProblem } from './paths.js';

/** Share of a number's size by which it is varied: small beside every corner that is rounded off, large beside round-off. */
const SHARE = 3e-8;
/** The same where no corner is near and small parts of large amounts count. */
const WIDE_SHARE = 1e-4;

/** One side of a number: its problem, and an engine that follows the run. */
export interface Side {
  readonly sign: 1 | -1;
  readonly problem: CompleteProblem;
  readonly engine: Engine;
  readonly margins: readonly (readonly StopMargin[])[];
}

/** A number of the problem and both sides of it. */
export class Varied {
  readonly path: string;
  readonly size: number;
  readonly step: number;
  readonly sides: readonly [Side, Side];
  /** The same farther apart, for what no corner is near of: start, constants, tables. They do not follow the run. */
  readonly wide: BothSides<Engine>;

  constructor(number: NumberOfProblem, main: Engine, system: EthanolWater) {
    this.path = number.path;
    this.size = number.size;
    this.step = SHARE * number.size;
    const side = (sign: 1 | -1): Side => {
      const problem = number.at(number.value + sign * this.step);
      const engine = engineOf(problem, system);
      if (engine.path.size !== main.path.size || engine.holders.length !== main.holders.length) {
        const expected = 'a number beside which the still is built alike: at this one a part appears or goes';
        throw new InputError({ argument: number.path, value: number.value, expected });
      }
      const margins = problem.sheet.map(({ until }) => until.map((rule) => stopMargin(rule)));
      return { sign, problem, engine, margins };
    };
    this.sides = [side(1), side(-1)];
    const far = WIDE_SHARE * number.size;
    this.wide = {
      plus: engineOf(number.at(number.value + far), system),
      minus: engineOf(number.at(number.value - far), system),
      apart: 2 * far,
    };
  }

  /** Derivative of the state a run starts in. */
  start(): Float64Array {
    const { plus, minus, apart } = this.wide;
    const other = minus.start();
    return plus.start().map((one, i) => (one - other[i]!) / apart);
  }

  /** Derivative of a number that each side gives; `by` is the signed change of the number. */
  slope(of: (side: Side, by: number) => number): number {
    const [plus, minus] = this.sides;
    return (of(plus, this.step) - of(minus, -this.step)) / (2 * this.step);
  }

  /** The same of a state. */
  slopes(of: (side: Side, by: number) => Float64Array, out: Float64Array): Float64Array {
    const [plus, minus] = this.sides;
    out.set(of(plus, this.step));
    const other = of(minus, -this.step);
    const per = 1 / (2 * this.step);
    for (let i = 0; i < out.length; i++) out[i] = per * (out[i]! - other[i]!);
    return out;
  }
}
