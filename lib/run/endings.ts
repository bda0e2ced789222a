// How a step of the run sheet ended, in words.

import { MOST_ROWS } from './check.js';
import type { Engine, StepEnd } from './engine.js';
import type { RunStep } from './problem.js';
import type { WatchedRule } from './rule-watch.js';
import type { Ending } from './solution.js';
import { describeMetRule, describeRule, describeUnarmedRule } from './stop-rules.js';

/** The solver's own limits, in words. */
const GAVE_UP = {
  stepLimit: 'the run takes more work than one may; larger hold-ups or a looser tolerance take less',
  stepTooSmall: 'no step was short enough',
} as const;

/** The ending of a step whose rule was met before it began. */
export function metBefore(index: number, step: RunStep, met: number): Ending {
  const rule = step.until[met]!;
  return {
    kind: 'stopped',
    step: index + 1,
    rule,
    message: `${nameOf(index)} ended at once: ${describeMetRule(rule)}`,
  };
}

/** The ending of a step that was integrated; `full` where it was left because no more rows fit. */
export function endingOf(
  engine: Engine,
  end: StepEnd,
  index: number,
  step: RunStep,
  time_s: number,
  rules: readonly WatchedRule[],
  full: boolean,
): Ending {
  const name = nameOf(index);
  if (end.kind === 'rule') {
    const rule = step.until[end.rule]!;
    return { kind: 'stopped', step: index + 1, rule, message: `${name} ended: ${describeRule(rule)}` };
  }
  if (end.kind === 'stepLimit' || end.kind === 'stepTooSmall') {
    const when = `the solver stopped in ${name} after ${(time_s / 60).toFixed(1)} min`;
    return { kind: end.kind, step: index + 1, message: `${when}: ${GAVE_UP[end.kind]}` };
  }
  if (full && end.kind === 'reachedEnd') {
    const left = `${name} was left after ${(time_s / 3600).toFixed(1)} h of the run, which then had ${String(MOST_ROWS)} rows`;
    return { kind: 'neverMet', step: index + 1, message: `${left}: outputs farther apart would show more of it` };
  }
  const waiting = step.until.filter((_rule, i) => !rules[i]!.armed).map((rule) => describeUnarmedRule(rule));
  const why = [`none of its rules was met`, ...waiting.filter((words) => words !== '')].join('; ');
  if (end.kind === 'kettleDry') return dry(index, why);
  const { kind, words } = engine.unmet(index, end);
  if (kind === 'kettleDry') return dry(index, why);
  return { kind, step: index + 1, message: `${name} ${words}: ${why}` };
}

function dry(index: number, why: string): Ending {
  return { kind: 'kettleDry', step: index + 1, message: `the kettle ran dry in ${nameOf(index)}: ${why}` };
}

function nameOf(index: number): string {
  return `step ${String(index + 1)}`;
}
