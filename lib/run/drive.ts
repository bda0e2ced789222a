// Drives an engine through a run sheet: steps one after the other, each integrated until the first of its rules is met, to the solver's
// tolerance and never before. What happened is kept as a course: the path of every step, and where the steps of the sheet meet.

import { bracketedRoot } from '../numerics/root.js';
import type { Path, StepView } from '../numerics/stiff/path.js';
import type { FallingEvent } from '../numerics/stiff/stiff-system.js';
import type { CompleteProblem } from './complete.js';
import { roomForRows } from './row-room.js';
import { endingOf, metBefore } from './endings.js';
import type { Engine, StepEnd, StepTask, TaskCompanion } from './engine.js';
import { RuleWatch } from './rule-watch.js';
import { FIRST_VAPOUR } from './stop-rules.js';
import type { Ending, SolveStatistics } from './solution.js';

/** One step of the sheet as it was run. */
export interface SheetStretch {
  /** Where it began and ended, and the states there. */
  readonly from: number;
  readonly start: Float64Array;
  readonly to: number;
  readonly end: Float64Array;
  /** Its recorded steps: the first, and the first after them. */
  readonly first: number;
  readonly after: number;
}

/** A run as it was driven. */
export interface Course {
  readonly path: Path;
  readonly stretches: readonly SheetStretch[];
  readonly ending: Ending;
  readonly statistics: SolveStatistics;
  readonly firstVapour_s: number | null;
}

/** What watches a run while it goes on. A step is valid only during the call. */
export interface RunObserver {
  /** After every accepted step of the solver, with the engine that took it and the step of the sheet it belongs to. */
  step(step: StepView, engine: Engine, sheetStep: number): void;
}

/** Goes along with a run from its beginning to its end, and changes nothing of it: sensitivities. */
export interface RunCompanion extends TaskCompanion {
  start(state: Float64Array): void;
  /** A step of the sheet has begun: the state before and the one it begins with. */
  begun(sheetStep: number, s: number, before: Float64Array, after: Float64Array): void;
  /** It has ended, after so many recorded steps of the run; `end` is null where one of its rules was met before it began. */
  ended(sheetStep: number, end: StepEnd | null, recorded: number): void;
}

/** Runs the sheet; pauses after so many steps of the solver, and then wants to be called again. */
export function* drive(
  problem: CompleteProblem,
  engine: Engine,
  observers: readonly RunObserver[],
  pauseAfter?: number,
  companion?: RunCompanion,
): Generator<number, Course, void> {
  const { sheet, outputs } = problem;
  const { moment, path, clock } = engine;
  const room = roomForRows(sheet);
  /** The last moment whose rows still fit, where s is the time. */
  const last = outputs.kind === 'every' && clock === null ? room * outputs.interval_s : Infinity;
  /** Whether what one step of the solver may yet add would no more fit into the rows of a solution. */
  const full = (): boolean =>
    outputs.kind === 'every'
      ? moment.time_s >= room * outputs.interval_s
      : outputs.kind === 'perStep' && path.steps * outputs.points >= room;
  const watch = new RuleWatch(sheet, engine.climbs);
  const stretches: SheetStretch[] = [];
  let state = engine.start();
  companion?.start(state);
  let s = 0;
  let ending: Ending | undefined;
  let events = 0;
  let firstVapour_s: number | null = moment.look(0, state).vapourShare > FIRST_VAPOUR ? 0 : null;

  for (const [index, step] of sheet.entries()) {
    const before = state;
    state = engine.beginStep(index, s, state);
    companion?.begun(index, s, before, state);
    const [from, start, first] = [s, state, path.steps];
    moment.look(s, state).beginStep();
    watch.look(moment);
    const met = watch.met(index, moment);
    if (met >= 0) {
      stretches.push({ from, start, to: s, end: state, first, after: first });
      companion?.ended(index, null, path.steps);
      ending = metBefore(index, step, met);
      continue;
    }
    const rules = watch.rules(index);
    const task: StepTask = {
      step: index,
      from: s,
      to: Math.max(s, Math.min(last, engine.reach(index, s, state))),
      start: state,
      rules: rules.map(({ margin }): FallingEvent => ({ value: (at, u) => margin(moment.look(at, u)) })),
      armed: (i) => rules[i]!.armed,
      onStep: (view) => {
        watch.look(moment.look(view.to, view.end));
        if (firstVapour_s === null && moment.vapourShare > FIRST_VAPOUR) {
          firstVapour_s = vapourFrom(engine, view, path.kind(path.steps - 1));
          moment.look(view.to, view.end);
        }
        for (const observer of observers) observer.step(view, engine, index);
      },
      leave: full,
      ...(pauseAfter === undefined ? {} : { pauseAfter }),
      ...(companion === undefined ? {} : { companion }),
    };
    let end: StepEnd = engine.integrate(task);
    while (end.kind === 'paused') {
      yield moment.look(end.s, end.state).time_s;
      end = engine.resume();
    }
    s = end.s;
    state = Float64Array.from(end.state);
    companion?.ended(index, end, path.steps);
    stretches.push({ from, start, to: s, end: state, first, after: path.steps });
    events += end.kind === 'rule' || end.kind === 'kettleDry' ? 1 : 0;
    ending = endingOf(engine, end, index, step, moment.look(s, state).time_s, rules, full());
    if (ending.kind !== 'stopped') break;
  }
  return {
    path,
    stretches,
    ending: ending!,
    statistics: { ...engine.counts(), events },
    firstVapour_s,
  };
}

/** When the vapour reached the condenser in a step at whose end it has. */
export function vapourFrom(engine: Engine, view: StepView, mark: number): number {
  const { moment } = engine;
  const probe = new Float64Array(view.end.length);
  const beyond = (at: number): number => {
    engine.between(view, mark, at, probe);
    return moment.look(at, probe).vapourShare - FIRST_VAPOUR;
  };
  let at = view.to;
  if (beyond(view.from) >= 0) at = view.from;
  else if (beyond(view.to) > 0) at = bracketedRoot(beyond, view.from, view.to);
  engine.between(view, mark, at, probe);
  return moment.look(at, probe).time_s;
}
