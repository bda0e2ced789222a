// Sensitivities of the bare pot by quadrature, themselves by quadrature over the same panels. With u = ln(x/(1 − x)), s = ∫ F du and dt/ds = pace(u, s),
// at equal s on the stretch's own clock
//
//   F(u) u̇ = F(u_a) u̇_a + ∫_u^{u_a} F_p dv,      ṫ = ṫ_a + ∫ (pace_u u̇ + pace_p + pace_s shift) ds

import type { EthanolWater } from '../../equilibrium/ethanol-water.js';
import { GAUSS_INNER, GAUSS_NODES, GAUSS_WEIGHTS } from '../../numerics/quadrature.js';
import type { Path, StepView } from '../../numerics/stiff/path.js';
import type { Engine, StepEnd } from '../engine.js';
import { RayleighEngine } from '../engines/rayleigh/engine.js';
import type { PathWalker } from '../engines/rayleigh/path.js';
import { Carry } from './carry.js';
import type { NumberOfProblem } from './paths.js';
import type { Varied } from './varied.js';

/** What a panel begins with: its walkers, the point, its sensitivities, and how far the clock moves. */
interface PanelStart {
  readonly walker: PathWalker;
  readonly beside: readonly [PathWalker, PathWalker];
  readonly u: number;
  readonly s: number;
  readonly shift: number;
  readonly slopes: Float64Array;
}

/** Carries the sensitivities of one run by quadrature. */
export class PathCarry extends Carry {
  readonly #now: readonly Float64Array[];
  readonly #panels: PanelStart[][];

  constructor(numbers: readonly NumberOfProblem[], engine: Engine, system: EthanolWater) {
    super(numbers, engine, system);
    this.#now = numbers.map(() => new Float64Array(2));
    this.#panels = numbers.map(() => []);
  }

  /** Goes over the panels of the step before its end is looked at. */
  override ended(sheetStep: number, end: StepEnd | null): void {
    const { path } = this.engine;
    this.varied.forEach((one, k) => {
      const panels = this.#panels[k]!;
      for (let i = panels.length; i < path.steps; i++) {
        const view = path.step(i);
        const start: PanelStart = {
          walker: walkerOf(this.engine),
          beside: [walkerOf(one.sides[0].engine), walkerOf(one.sides[1].engine)],
          u: view.start[0]!,
          s: view.from,
          shift: this.shift[k]!,
          slopes: Float64Array.from(this.#now[k]!),
        };
        panels.push(start);
        advance(one, start, view.end[0]!, this.#now[k]!);
      }
    });
    super.ended(sheetStep, end);
  }

  override slopes(k: number): Path {
    const { path } = this.engine;
    const panels = this.#panels[k]!;
    const one = this.varied[k]!;
    return {
      size: 2,
      steps: panels.length,
      from: (i) => path.from(i),
      to: (i) => path.to(i),
      kind: (i) => path.kind(i),
      step: (i) => viewOf(one, panels[i]!, path.step(i)),
    };
  }

  protected override now(k: number): Float64Array {
    return this.#now[k]!;
  }

  protected override slopeAt(s: number, state: Float64Array): Float64Array {
    const walker = walkerOf(this.engine);
    return Float64Array.of(-1 / walker.integrand(state[0]!), walker.pace(state[0]!, s));
  }
}

function walkerOf(engine: Engine): PathWalker {
  if (!(engine instanceof RayleighEngine)) throw new Error('an engine by quadrature');
  return engine.walker;
}

/** Sensitivities where the panel has come to u. */
function advance({ step }: Varied, panel: PanelStart, u: number, out: Float64Array): void {
  const { walker, beside, slopes, shift, s } = panel;
  const [plus, minus] = beside;
  const width = panel.u - u;
  const nodes = GAUSS_NODES.map((node) => panel.u - width * node);
  const byNumber = nodes.map((v) => (plus.integrand(v) - minus.integrand(v)) / (2 * step));
  const integrand = nodes.map((v) => walker.integrand(v));
  const atStart = walker.integrand(panel.u) * slopes[0]!;
  let all = 0;
  let seconds = 0;
  nodes.forEach((v, i) => {
    let [rise, inner] = [0, 0];
    for (let j = 0; j < nodes.length; j++) {
      rise += GAUSS_INNER[i]![j]! * integrand[j]!;
      inner += GAUSS_INNER[i]![j]! * byNumber[j]!;
    }
    const moves = (atStart + width * inner) / integrand[i]!;
    const at = s + width * rise;
    const more = plus.pace(v + step * moves, at + step * shift);
    const less = minus.pace(v - step * moves, at - step * shift);
    seconds += (GAUSS_WEIGHTS[i]! * integrand[i]! * (more - less)) / (2 * step);
    all += GAUSS_WEIGHTS[i]! * byNumber[i]!;
  });
  out[0] = (atStart + width * all) / walker.integrand(u);
  out[1] = slopes[1]! + width * seconds;
}

function viewOf(one: Varied, panel: PanelStart, main: StepView): StepView {
  const where = new Float64Array(2);
  const state = (s: number, out: Float64Array): void => {
    main.state(s, where);
    advance(one, panel, where[0]!, out);
  };
  const end = new Float64Array(2);
  advance(one, panel, main.end[0]!, end);
  return {
    from: main.from,
    to: main.to,
    start: panel.slopes,
    end,
    state,
    component: (s, k) => {
      const out = new Float64Array(2);
      state(s, out);
      return out[k]!;
    },
  };
}
