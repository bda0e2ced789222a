// The derivatives of anything read off a run by any numbers of its problem.

import { listFault, refuse } from '../../arguments.js';
import type { EthanolWater } from '../../equilibrium/ethanol-water.js';
import { OWN_SYSTEM } from '../../equilibrium/own-system.js';
import { checkedProblem } from '../check-problem.js';
import { type Course, drive, vapourFrom } from '../drive.js';
import type { Engine } from '../engine.js';
import { engineOf } from '../engines/registry.js';
import type { EnergySolution, RunSolution } from '../solution.js';
import { solutionOf } from '../solved.js';
import type { RunProblem } from '../problem.js';
import { FIRST_VAPOUR } from '../stop-rules.js';
import type { Carry } from './carry.js';
import { MovedPath } from './moved-path.js';
import { numberAt, type NumberOfProblem } from './paths.js';
import { differenceOf, type Slopes } from './difference.js';
import { PathCarry } from './path-carry.js';
import { StiffCarry } from './stiff-carry.js';

/** What is read, and its derivatives by each number, under the number's path. */
export interface Sensitivity<Read> {
  readonly value: Read;
  readonly by: Readonly<Record<string, Slopes<Read>>>;
}

/** A run with its sensitivities. */
export interface RunSensitivities {
  /** The run, to the same bits as solve gives it. */
  readonly run: RunSolution;
  /** Paths of the numbers. */
  readonly to: readonly string[];
  /** Reads a number, or numbers in lists and records, off the run, and gives their derivatives. */
  of<Read>(read: (run: RunSolution) => Read): Sensitivity<Read>;
}

/** Share of a number's size by which runs are moved to read them. */
const READ_SHARE = 1e-4;

/**
 * A run with the derivatives of anything read off it by numbers of its problem.
 *
 * Equation: M S′ = J S + ∂f/∂p along the run, S = ∂u/∂p; at events dτ = −(g_u S + g_p)/(g_u u′ + g_t).
 * @param problem Still, charge, run sheet and the rest; see RunProblem.
 * @param to Paths of numbers in the problem: 'charge.strength', 'still.column.efficiency', 'sheet[1].reflux', 'sheet[0].until[0].seconds', 'activity.parameters[0]'; what is left out has its completed value.
 * @param system Equilibrium of ethanol and water; default the library's own.
 * @returns The run, and `of`, which takes a function that reads it and gives value and derivatives by path.
 * @throws InputError when a part of the problem cannot be used, or a path is none of a number that has a derivative.
 * @example sensitivities({ model: 'rayleigh', still: { kettle: { volume_m3: 0.1 } }, charge: { kind: 'amount', amount_mol: 100, moleFraction: 0.18 }, heat: { kind: 'power', power_W: 1000 }, sheet: [{ reflux: 'none', until: [{ kind: 'duration', seconds: 600 }] }] }, ['sheet[0].until[0].seconds']).of((run) => run.time_s.at(-1)).by['sheet[0].until[0].seconds'] // → 1
 * Source: M. Caracotsios, W. E. Stewart, Comput. Chem. Eng. 9 (1985) 359-365; docs/theory/sensitivities.md.
 */
export function sensitivities(
  problem: RunProblem,
  to: readonly string[],
  system: EthanolWater = OWN_SYSTEM,
): RunSensitivities {
  const complete = checkedProblem(problem, system);
  refuse(listFault('to', to, 'paths of numbers of the problem', 0, 1000));
  const numbers = to.map((path) => numberAt(path, problem, system));
  const engine = engineOf(complete, system);
  const { equations } = engine;
  const carry: Carry =
    equations === null
      ? new PathCarry(numbers, engine, system)
      : new StiffCarry(complete, numbers, engine, equations, system);
  const running = drive(complete, engine, [], undefined, carry);
  let turn = running.next();
  while (turn.done !== true) turn = running.next();
  const course = turn.value;
  const run = solutionOf(complete, system, course, engine.holders);
  return {
    run,
    to,
    of(read) {
      const value = read(run);
      const by: Record<string, Slopes<ReturnType<typeof read>>> = {};
      numbers.forEach((number, k) => {
        const step = READ_SHARE * number.size;
        const [more, less] = [step, -step].map((change) => read(movedRun(number, k, change, course, carry, system)));
        by[number.path] = differenceOf(more!, less!, 2 * step);
      });
      return { value, by };
    },
  };
}

/** The run as it would be, to first order, with number k changed by `by`. */
function movedRun(
  number: NumberOfProblem,
  k: number,
  by: number,
  course: Course,
  carry: Carry,
  system: EthanolWater,
): EnergySolution {
  const problem = number.at(number.value + by);
  const engine = engineOf(problem, system);
  const path = new MovedPath(course.path, carry.slopes(k), carry.segments, k, by);
  const moved = (state: Float64Array, slope: Float64Array): Float64Array =>
    state.map((value, i) => value + by * slope[i]!);
  const stretches = course.stretches.map((stretch, i) => {
    const { from, start, to, end } = carry.stretches[i]!;
    return {
      ...stretch,
      from: stretch.from + by * from[k]!,
      start: moved(stretch.start, start[k]!),
      to: stretch.to + by * to[k]!,
      end: moved(stretch.end, end[k]!),
    };
  });
  const firstVapour_s = course.firstVapour_s === null ? null : firstVapourOf({ ...course, path, stretches }, engine);
  return solutionOf(problem, system, { ...course, path, stretches, firstVapour_s }, engine.holders);
}

/** When the vapour first reached the condenser, looked for in the recorded steps. */
function firstVapourOf({ path, stretches }: Course, engine: Engine): number | null {
  for (const [k, { from, start, first, after }] of stretches.entries()) {
    engine.beginStep(k, from, start);
    if (k === 0 && engine.moment.look(from, start).vapourShare > FIRST_VAPOUR) return engine.moment.time_s;
    for (let i = first; i < after; i++) {
      const view = path.step(i);
      if (engine.moment.look(view.to, view.end).vapourShare > FIRST_VAPOUR)
        return vapourFrom(engine, view, path.kind(i));
    }
  }
  // Where it came with the end of a step of the sheet.
  const last = stretches.at(-1)!;
  return engine.moment.look(last.to, last.end).time_s;
}
