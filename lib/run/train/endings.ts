// How a step of a train's run sheet ended, in words.

import type { IntegrationEnd } from '../../numerics/stiff/integrate.js';
import type { Ending } from '../solution.js';
import { describeRule, describeUnarmedRule } from '../stop-rules.js';
import type { TrainStep } from './problem.js';

/** The ending of a step that was integrated; `armed` tells which of its rules could have been met. The event after its rules is a dry kettle. */
export function endingOf(end: IntegrationEnd, index: number, step: TrainStep, armed: readonly boolean[]): Ending {
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
    case 'reachedEnd':
      return { kind: 'neverMet', step: index, message: `${name} went on without end: ${why}` };
    case 'stepLimit':
    case 'stepTooSmall': {
      const message = `the solver stopped in ${name} after ${(end.s / 60).toFixed(1)} min (${end.kind})`;
      return { kind: end.kind, step: index, message };
    }
  }
}
