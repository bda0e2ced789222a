// The bare pot from its first vapour on as an engine, by quadrature along the path of its kettle (path.ts): a named simplification in which
// everything that rises is condensed and collected, nothing runs back in the head, and of the heat given only the latent heat counts.
// Its independent variable is s = ln(n0/n); its state [ln(x/(1 − x)), time].

import type { EthanolWater } from '../../../equilibrium/ethanol-water.js';
import type { Path, StepView } from '../../../numerics/stiff/path.js';
import { bracketedRoot } from '../../../numerics/root.js';
import { chargeAmounts, DRY_SHARE } from '../../charge.js';
import type { CompleteProblem } from '../../complete.js';
import type { Engine, RunHolder, StepEnd, StepTask, Unmet } from '../../engine.js';
import { paceOf, type PathPoint, type PathWalker, pathWalker } from './path.js';
import { PotMoment } from './pot-moment.js';

const END_OF_PATH = -Math.log(DRY_SHARE);

/** The engine of a checked problem. */
export function rayleighEngine(problem: CompleteProblem, system: EthanolWater): Engine {
  return new RayleighEngine(problem, system);
}

/** The bare pot by quadrature. */
export class RayleighEngine implements Engine {
  readonly holders: readonly RunHolder[];
  readonly moment: PotMoment;
  readonly clock = 1;
  readonly climbs = false;
  readonly path = new Panels();
  readonly equations = null;
  readonly ownEvents = [];
  readonly #problem: CompleteProblem;
  readonly #walkers: readonly PathWalker[];
  readonly #start: PathPoint;
  #walker: PathWalker;
  #task: StepTask | undefined;
  #panels = 0;

  constructor(problem: CompleteProblem, system: EthanolWater) {
    const { still, charge, sheet, heat } = problem;
    const { ethanol_mol, water_mol } = chargeAmounts(charge);
    const pressure_Pa = still.air.pressure_Pa;
    const slice = system.curve(problem.activity).at(pressure_Pa);
    this.#problem = problem;
    this.#start = { u: Math.log(ethanol_mol / water_mol), s: 0, time_s: 0 };
    this.#walkers = sheet.map((step) => pathWalker(slice, ethanol_mol + water_mol, paceOf(step.heat ?? heat, slice)));
    this.#walker = this.#walkers[0]!;
    this.moment = new PotMoment(slice, { ethanol_mol, water_mol }, heat);
    this.holders = [{ kind: 'kettle', number: 1, pressure_Pa }];
  }

  /** The path of the present step of the sheet. */
  get walker(): PathWalker {
    return this.#walker;
  }

  start(): Float64Array {
    return Float64Array.of(this.#start.u, 0);
  }

  beginStep(step: number, s: number, state: Float64Array): Float64Array {
    this.moment.heat = this.#problem.sheet[step]!.heat ?? this.#problem.heat;
    this.#walker = this.#walkers[step]!;
    this.moment.look(s, state).beginStep();
    return state;
  }

  rework(_s: number, state: Float64Array): Float64Array {
    return state;
  }

  reach(): number {
    return END_OF_PATH;
  }

  integrate(task: StepTask): StepEnd {
    this.#task = task;
    return this.#walk({ u: task.start[0]!, s: task.from, time_s: task.start[1]! });
  }

  resume(): StepEnd {
    return this.#walk(this.path.last);
  }

  unmet(): Unmet {
    return { kind: 'kettleDry', words: '' };
  }

  between(view: StepView, _mark: number, s: number, out: Float64Array): void {
    view.state(s, out);
  }

  /** Share of the charge that has been distilled. */
  progress(s: number): number {
    return -Math.expm1(-s);
  }

  atProgress(progress: number): number {
    return -Math.log1p(-progress);
  }

  counts(): ReturnType<Engine['counts']> {
    const panels = this.#panels;
    return {
      acceptedSteps: panels,
      rejectedSteps: 0,
      rightHandSides: 5 * panels,
      jacobians: 0,
      factorisations: 0,
    };
  }

  /** Walks panel by panel until a rule is met or the path ends. */
  #walk(start: PathPoint): StepEnd {
    const { rules, to: reach, onStep, leave, pauseAfter = Infinity } = this.#task!;
    const walker = this.#walker;
    const valueAt = (i: number, { u, s, time_s }: PathPoint): number => rules[i]!.value(s, Float64Array.of(u, time_s));
    let from = start;
    let before = rules.map((_rule, i) => valueAt(i, from));
    for (let panels = 0; from.s < reach;) {
      let to = walker.next(from);
      if (to.s > reach) to = walker.within(from, reach - from.s);
      const after = rules.map((_rule, i) => valueAt(i, to));
      let met = -1;
      let first = Infinity;
      rules.forEach((_rule, i) => {
        if (!(before[i]! > 0 && after[i]! <= 0)) return;
        const rise = bracketedRoot((r) => valueAt(i, walker.within(from, r)), 0, to.s - from.s, 1e-15);
        if (rise < first) [met, first] = [i, rise];
      });
      if (met >= 0) to = walker.within(from, first);
      if (to.s > from.s) {
        this.#panels++;
        this.path.add(walker, from, to);
        onStep(this.path.step(this.path.steps - 1));
      }
      before = after;
      from = to;
      if (met >= 0) return ended('rule', to, met);
      if (leave()) return ended('reachedEnd', to, -1);
      if (++panels >= pauseAfter && from.s < reach) return ended('paused', from, -1);
    }
    return ended('reachedEnd', from, -1);
  }
}

function ended(kind: StepEnd['kind'], { u, s, time_s }: PathPoint, rule: number): StepEnd {
  return { kind, s, state: Float64Array.of(u, time_s), rule };
}

interface Panel {
  readonly walker: PathWalker;
  readonly from: PathPoint;
  readonly to: PathPoint;
}

/** The panels walked so far. */
class Panels implements Path {
  readonly size = 2;
  readonly #panels: Panel[] = [];

  get steps(): number {
    return this.#panels.length;
  }
  get last(): PathPoint {
    return this.#panels.at(-1)!.to;
  }
  from(i: number): number {
    return this.#panels[i]!.from.s;
  }
  to(i: number): number {
    return this.#panels[i]!.to.s;
  }
  kind(): number {
    return 0;
  }
  add(walker: PathWalker, from: PathPoint, to: PathPoint): void {
    this.#panels.push({ walker, from, to });
  }
  step(i: number): StepView {
    const { walker, from, to } = this.#panels[i]!;
    const at = (s: number): PathPoint => (s >= to.s ? to : walker.within(from, s - from.s));
    return {
      from: from.s,
      to: to.s,
      start: Float64Array.of(from.u, from.time_s),
      end: Float64Array.of(to.u, to.time_s),
      state: (s, out) => {
        const point = at(s);
        out[0] = point.u;
        out[1] = point.time_s;
      },
      component: (s, k) => (k === 0 ? at(s).u : at(s).time_s),
    };
  }
  /** Panels are never changed: the copy may share them. */
  copy(): Path {
    const copy = new Panels();
    copy.#panels.push(...this.#panels);
    return copy;
  }
}
