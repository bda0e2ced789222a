// Integrates a stiff system of index 0 or 1 from one s to another, with error control, dense output and
// events located on the dense output and then hit by a step that ends exactly there.

import { checkRange, InputError } from '../../errors.js';
import { bracketedRoot } from '../root.js';
import type { StepCompanion } from './companion.js';
import type { StepView } from './path.js';
import type { Recording } from './recording.js';
import { RODAS4 } from './rodas4.js';
import type { WorkCounts } from './step-method.js';
import { stepMethod, type StiffMethod } from './stiff-method.js';
import type { FallingEvent, StiffSystem } from './stiff-system.js';

/** What to integrate. Events fire when they fall through zero; one that starts below must first rise. */
export interface IntegrationTask {
  readonly from: number;
  readonly to: number;
  /** State at `from`; algebraic components must be consistent. Not changed. */
  readonly start: Float64Array;
  readonly events: readonly FallingEvent[];
  readonly firstStep: number;
  readonly onStep: (step: StepView) => void;
  /** Asked after every step: whether to leave off there, as if it were the end, for another method to go on. */
  readonly leave?: (step: StepView) => boolean;
  readonly maxSteps?: number;
  /** Accepted steps after which the task pauses, so that others have their turn; `resume` goes on. */
  readonly pauseAfter?: number;
  /** Where steps are recorded, with a mark. */
  readonly recording?: Recording;
  readonly mark?: number;
  /** What goes along, step by step. */
  readonly companion?: StepCompanion;
}

/** How an integration ended and where. `state` is the integrator's own storage: copy it before the next run. */
export interface IntegrationEnd {
  readonly kind: 'reachedEnd' | 'event' | 'stepLimit' | 'stepTooSmall' | 'paused';
  readonly s: number;
  readonly state: Float64Array;
  /** Index of the event that fired, −1 otherwise. */
  readonly event: number;
}

/** An integrator with its storage; runs of the same system reuse it. */
export interface StiffIntegrator {
  run(task: IntegrationTask): IntegrationEnd;
  /** Goes on with a task that was paused, as if it had not been. */
  resume(): IntegrationEnd;
  readonly counts: { accepted: number; rejected: number } & WorkCounts;
}

/** Where a task stands. */
interface Progress {
  readonly task: IntegrationTask;
  /** Values of the events at the start of a step and at its end. */
  readonly before: number[];
  readonly after: number[];
  readonly origin: number;
  readonly s: number;
  readonly h: number;
  readonly attempts: number;
  readonly cut: number;
}

const DEFAULT_MAX_STEPS = 100_000;
const SMALLEST_SHARE = 1e-14;
/** Steps shorter than this share of s have ends that round-off blurs. */
const FINE_SHARE = 1e-7;
/** So many steps may be cut short for what a method thinks worth trying; more often, and it is mistaken about what lies ahead. */
const MOST_CUT = 3000;
/** An event is located to this share of its step. */
const CLOSE_SHARE = 1e-12;

/** Makes an integrator for a system; the default method is RODAS4. */
export function createIntegrator(system: StiffSystem, method: StiffMethod = RODAS4): StiffIntegrator {
  const step = stepMethod(system, method);
  const current = new Float64Array(system.size);
  const probe = new Float64Array(system.size);
  const tally = { accepted: 0, rejected: 0 };
  let present: Progress | undefined;
  /** Attempts that ending a step at an event took. */
  let closing = 0;
  const view = { from: 0, to: 0, start: current, end: step.end, state, component };
  return {
    run,
    resume,
    get counts() {
      return { ...tally, ...step.work };
    },
  };

  function run(task: IntegrationTask): IntegrationEnd {
    checkTask(task, system.size);
    current.set(task.start);
    const { events } = task;
    const before = events.map((event) => event.value(task.from, current));
    const after = before.slice();
    const h = Math.min(task.firstStep, task.to - task.from);
    if (h > 0) {
      step.begin(task.from, current, h);
      task.recording?.begin(step, task.from, current);
      task.companion?.begin(step, task.from, current);
    }
    present = { task, before, after, origin: 0, s: task.from, h, attempts: 0, cut: 0 };
    return resume();
  }

  function resume(): IntegrationEnd {
    if (present === undefined)
      throw new InputError({ argument: 'resume', value: undefined, expected: 'a paused task' });
    const { task, before, after } = present;
    const { events, recording, mark, pauseAfter = Infinity } = task;
    // Where nothing depends on s it is counted anew once steps are too short beside it for their ends to be told apart.
    let { origin, s, h, attempts, cut } = present;
    let last = task.to - origin;
    let steps = 0;
    while (s < last) {
      if (system.autonomous && h < FINE_SHARE * s) {
        step.shift(s);
        origin += s;
        last = task.to - origin;
        s = 0;
      }
      const worth = step.prepare(s, current);
      if (worth < h && cut++ < MOST_CUT) h = worth;
      let error: number;
      for (;;) {
        if (++attempts > (task.maxSteps ?? DEFAULT_MAX_STEPS)) return end('stepLimit', origin + s, -1);
        if (!(h > SMALLEST_SHARE * Math.max(1, Math.abs(s)))) return end('stepTooSmall', origin + s, -1);
        error = attempt(s, h);
        if (error <= 1) break;
        tally.rejected++;
        h = step.afterRejected(h, error);
      }
      let reached = s + h >= last ? last : s + h;
      let fired = -1;
      let share = 1;
      for (let i = 0; i < events.length; i++) {
        after[i] = events[i]!.value(origin + reached, step.end);
        if (before[i]! > 0 && after[i]! <= 0) {
          const crossing = after[i] === 0 ? 1 : locate(events[i]!, origin + s, h);
          if (fired < 0 || crossing < share) {
            fired = i;
            share = crossing;
          }
        }
      }
      if (fired >= 0 && share < 1) {
        share = closeStep(events[fired]!, s, h, share, before[fired]!, origin);
        attempts += closing;
        if (!(share > 0)) {
          // No step ends well at the event: come nearer first.
          tally.rejected++;
          h = step.afterRejected(h, Infinity);
          continue;
        }
        reached = s + share * h;
      }
      for (let i = 0; i < events.length; i++) before[i] = after[i]!;
      let next = step.afterAccepted(h, error);
      tally.accepted++;
      view.from = origin + s;
      view.to = reached === last ? task.to : origin + reached;
      recording?.add(step, view.from, view.to, mark);
      task.companion?.step(step, view.from, view.to, current, mark ?? 0);
      task.onStep(view);
      const left = s + h < last && task.leave?.(view) === true;
      current.set(step.end);
      step.advance();
      s = reached;
      if (fired >= 0) return end('event', view.to, fired);
      if (left) return end('reachedEnd', view.to, -1);
      if (s + next > last) next = last - s;
      else if (s + 2 * next > last) next = (last - s) / 2;
      h = next;
      if (++steps >= pauseAfter && s < last) {
        present = { task, before, after, origin, s, h, attempts, cut };
        return end('paused', view.to, -1);
      }
    }
    return end('reachedEnd', task.to, -1);
  }

  /** Scaled error of a step, Infinity where it ends in a state that cannot be. */
  function attempt(s: number, h: number): number {
    const error = step.attempt(s, current, h);
    return error <= 1 && system.admit?.(step.end) === false ? Infinity : error;
  }

  function end(kind: IntegrationEnd['kind'], s: number, event: number): IntegrationEnd {
    return { kind, s, state: current, event };
  }

  function state(s: number, out: Float64Array): void {
    step.denseState(current, (s - view.from) / (view.to - view.from), out);
  }

  function component(s: number, k: number): number {
    return step.denseComponent(current, (s - view.from) / (view.to - view.from), k);
  }

  /**
   * Takes the step that ends at an event: the share found on the dense output is mended until the state the step
   * itself reaches lies on the event or a hair beyond, never before it. Leaves that state in `step`. NaN when such a step fails.
   */
  function closeStep(event: FallingEvent, s: number, h: number, guess: number, above: number, origin: number): number {
    closing = 0;
    const valueAt = (share: number): number => {
      closing++;
      return attempt(s, share * h) <= 1 ? event.value(origin + s + share * h, step.end) : NaN;
    };
    let [last, valueLast] = [0, above];
    let share = guess;
    let value = valueAt(share);
    for (let i = 0; i < 8 && value !== valueLast && Math.abs(share - last) > CLOSE_SHARE; i++) {
      const next = Math.min(1, Math.max(CLOSE_SHARE, share + (value * (share - last)) / (valueLast - value)));
      [last, valueLast] = [share, value];
      share = next;
      value = valueAt(share);
    }
    for (let nudge = CLOSE_SHARE; value > 0 && share < 1; nudge *= 2) {
      share = Math.min(1, share + nudge);
      value = valueAt(share);
    }
    return Number.isNaN(value) ? NaN : share;
  }

  /** Share of the step at which an event falls through zero on the dense output. */
  function locate(event: FallingEvent, s: number, h: number): number {
    const value = (share: number): number => {
      step.denseState(current, share, probe);
      return event.value(s + share * h, probe);
    };
    return bracketedRoot(value, 0, 1, CLOSE_SHARE);
  }
}

function checkTask(task: IntegrationTask, size: number): void {
  if (!(task.to > task.from)) {
    throw new InputError({ argument: 'to', value: task.to, expected: `an end beyond the start ${task.from}` });
  }
  checkRange('firstStep', task.firstStep, Number.MIN_VALUE, Number.MAX_VALUE, 'a first step above 0');
  if (task.start.length !== size) {
    throw new InputError({ argument: 'start', value: task.start.length, expected: `a state of ${size} components` });
  }
  const bad = task.start.findIndex((value) => !Number.isFinite(value));
  if (bad >= 0)
    throw new InputError({ argument: `start[${bad}]`, value: task.start[bad], expected: 'a finite number' });
}
