// Sensitivities of runs that are integrated: carried by the solver, step by step, with the matrix it has factorised (numerics/stiff/tangents.ts).

import type { EthanolWater } from '../../equilibrium/ethanol-water.js';
import type { ParameterSlopes } from '../../numerics/stiff/parameters.js';
import type { Path } from '../../numerics/stiff/path.js';
import type { StepMethod } from '../../numerics/stiff/step-method.js';
import type { StateSlopes, StiffSystem } from '../../numerics/stiff/stiff-system.js';
import { Tangents } from '../../numerics/stiff/tangents.js';
import type { CompleteProblem } from '../complete.js';
import type { Engine } from '../engine.js';
import { engineOf } from '../engines/registry.js';
import { Carry } from './carry.js';
import type { NumberOfProblem } from './paths.js';
import type { Varied } from './varied.js';

/** A step of the implicit Euler method this short gives the slope itself. */
const INSTANT = 1e-9;

/** Carries the sensitivities of one run of an integrated engine. */
export class StiffCarry extends Carry implements ParameterSlopes {
  readonly system: StiffSystem;
  /** The same engine once more, with storage that is free. */
  readonly #same: Engine;
  readonly #tangents: Tangents;
  readonly #masses: readonly (Float64Array | null)[];
  readonly #slopes: readonly (StateSlopes | null)[];
  readonly #here: Float64Array;
  readonly #unused: Float64Array;
  readonly #probe: Float64Array;
  #s = 0;
  #u: Float64Array;

  constructor(
    problem: CompleteProblem,
    numbers: readonly NumberOfProblem[],
    engine: Engine,
    equations: StiffSystem,
    system: EthanolWater,
  ) {
    super(numbers, engine, system);
    const { size } = equations;
    this.#same = engineOf(problem, system);
    this.system = this.#same.equations!;
    this.#tangents = new Tangents(this);
    this.#masses = this.varied.map((one) => massSlope(one, size));
    this.#slopes = this.varied.map(({ sides: [plus, minus], step, wide }) => {
      const near = { plus: plus.engine.equations!, minus: minus.engine.equations!, apart: 2 * step };
      const far = { plus: wide.plus.equations!, minus: wide.minus.equations!, apart: wide.apart };
      return this.system.slopesBy?.(far, near) ?? null;
    });
    this.#here = new Float64Array(size);
    this.#unused = new Float64Array(size);
    this.#probe = new Float64Array(size);
    this.#u = this.#here;
  }

  override slopes(k: number): Path {
    return this.#tangents.recordings[k]!;
  }

  override begun(sheetStep: number, s: number, before: Float64Array, after: Float64Array): void {
    super.begun(sheetStep, s, before, after);
    this.#same.moment.look(s, this.#same.beginStep(sheetStep, s, before)).beginStep();
  }

  override jumped(event: number, s: number, before: Float64Array): void {
    super.jumped(event, s, before);
    this.#same.rework(s, before);
  }

  override begin(method: StepMethod, s: number, start: Float64Array): void {
    this.#tangents.begin(method, s, start);
  }

  override step(method: StepMethod, from: number, to: number, start: Float64Array, mark: number): void {
    this.#tangents.step(method, from, to, start, mark);
  }

  massSlope(k: number): Float64Array | null {
    return this.#masses[k]!;
  }

  look(s: number, u: Float64Array, withJacobian: boolean): void {
    const { system } = this;
    this.#s = s;
    this.#u = u;
    if (!withJacobian) system.rightHandSide(s, u, this.#here);
    else if (system.evaluate) system.evaluate(s, u, this.#here);
    else {
      system.rightHandSide(s, u, this.#here);
      system.linearise(s, u, this.#unused);
    }
  }

  byParameter(k: number, out: Float64Array): void {
    const slopes = this.#slopes[k];
    if (slopes) {
      slopes.write(this.#u, out);
      return;
    }
    const { sides, step } = this.varied[k]!;
    const here = this.#here;
    sides[0].engine.equations!.rightHandSide(this.#s + step * this.shift[k]!, this.#u, out);
    for (let i = 0; i < out.length; i++) out[i] = (out[i]! - here[i]!) / step;
  }

  turn(k: number, s: number, u: Float64Array, v: Float64Array): void {
    const { sides, step } = this.varied[k]!;
    for (const { engine, sign } of sides) {
      const by = sign * step;
      const probe = this.#probe;
      for (let i = 0; i < u.length; i++) probe[i] = u[i]! + by * v[i]!;
      engine.equations!.linearise(s + by * this.shift[k]!, probe, this.#unused);
    }
    // The difference takes the place of one side's Jacobian, which nothing else asks for.
    const [plus, minus] = sides.map(({ engine }) => engine.equations!.matrix.entries);
    const per = 1 / (2 * step);
    for (let i = 0; i < plus!.length; i++) plus![i] = per * (plus![i]! - minus![i]!);
  }

  turned(k: number, w: Float64Array, out: Float64Array): void {
    this.varied[k]!.sides[0].engine.equations!.matrix.multiply(w, out);
  }

  /** Sets the algebraic unknowns of every sensitivity to what its others make them. */
  protected override refine(s: number, state: Float64Array): void {
    const { mass, matrix } = this.system;
    const found = new Float64Array(state.length);
    this.look(s, state, true);
    if (!matrix.factor(mass, 1 / INSTANT)) return;
    this.#tangents.now.forEach((own, k) => {
      this.byParameter(k, found);
      for (let i = 0; i < own.length; i++) found[i]! += (mass[i]! * own[i]!) / INSTANT;
      matrix.solve(found);
      for (let i = 0; i < own.length; i++) if (mass[i] === 0) own[i] = found[i]!;
    });
  }

  protected override now(k: number): Float64Array {
    return this.#tangents.now[k]!;
  }

  /** u' where it is read off f: of algebraic unknowns, too. */
  protected override slopeAt(s: number, state: Float64Array): Float64Array {
    const { mass, matrix } = this.system;
    const slope = new Float64Array(state.length);
    const unused = this.#unused;
    this.system.linearise(s, state, unused);
    this.system.rightHandSide(s, state, slope);
    for (let i = 0; i < slope.length; i++) slope[i] = (mass[i] === 0 ? 0 : slope[i]!) + INSTANT * unused[i]!;
    if (!matrix.factor(mass, 1 / INSTANT)) return slope.fill(0);
    matrix.solve(slope);
    for (let i = 0; i < slope.length; i++) slope[i]! /= INSTANT;
    return slope;
  }
}

/** ∂M/∂p, null where there is none. */
function massSlope(one: Varied, size: number): Float64Array | null {
  const slope = one.slopes(({ engine }) => engine.equations!.mass, new Float64Array(size));
  return slope.some((value) => value !== 0) ? slope : null;
}
