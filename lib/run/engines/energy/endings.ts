// How a step of a train's run sheet ended, in words.

import type { IntegrationEnd } from '../../../numerics/stiff/integrate.js';
import { MOST_ROWS } from '../../check.js';
import type { Ending } from '../../solution.js';
import { describeRule, describeUnarmedRule } from '../../stop-rules.js';
import type { TrainStep } from './problem.js';

/**
 * The ending of a step that was integrated; `armed` tells which of its rules could have been met, `full` whether it was cut short because no
 * more rows fit. The event after its rules is a dry kettle.
 */
export function endingOf(
  end: IntegrationEnd,
  index: number,
  step: TrainStep,
  armed: readonly boolean[],
  full: boolean,
): Ending {
  const name = `step ${String(index + 1)}`;
  const waiting = step.until.filter((_rule, i) => !armed[i]).map((rule) => describeUnarmedRule(rule));
  const why = [`none of its rules was met`, ...waiting.filter((words) => words !== '')].join('; ');
  switch (end.kind) {
    case 'event': {
      const rule = step.until[end.event];
      return rule === undefined
        ? { kind: 'kettleDry', step: index, message: `the kettle ran dry in ${name}: ${why}` }
        : { kind: 'stopped', step: index, rule, message: `${name} ended: ${describeRule(rule)}` };
    }
    case 'reachedEnd': {
      const left = `${name} was left after ${(end.s / 3600).toFixed(1)} h of the run, which then had ${String(MOST_ROWS)} rows`;
      const message = full
        ? `${left}: outputs farther apart would show more of it`
        : `${name} went on without end: ${why}`;
      return { kind: 'neverMet', step: index, message };
    }
    case 'stepLimit':
    case 'stepTooSmall':
      return gaveUp(end, name, index);
  }
}

/** The solver's own limits, in words. */
function gaveUp({ kind, s }: IntegrationEnd, name: string, index: number): Ending {
  const when = `the solver stopped in ${name} after ${(s / 60).toFixed(1)} min`;
  return kind === 'stepLimit'
    ? {
        kind,
        step: index,
        message: `${when}: the run takes more work than one may; larger hold-ups or a looser tolerance take less`,
      }
    : { kind: 'stepTooSmall', step: index, message: `${when}: no step was short enough` };
}
