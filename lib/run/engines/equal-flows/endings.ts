// How a step of a column's run sheet ended, in words.

import { MOST_ROWS } from '../../check.js';
import type { IntegrationEnd } from '../../../numerics/stiff/integrate.js';
import type { RunStep } from '../../problem.js';
import type { Ending } from '../../solution.js';
import { describeMetRule, describeRule, describeUnarmedRule } from '../../stop-rules.js';

/** The ending of a step whose rule was met before it began. */
export function metBefore(index: number, step: Pick<RunStep, 'until'>, met: number): Ending {
  const rule = step.until[met]!;
  return {
    kind: 'stopped',
    step: index,
    rule,
    message: `step ${String(index + 1)} ended at once: ${describeMetRule(rule)}`,
  };
}

/** The ending of a step that was integrated; `armed` tells which of its rules could have been met, `full` whether no more rows fit. */
export function endingOf(
  end: IntegrationEnd,
  index: number,
  step: RunStep,
  armed: readonly boolean[],
  full: boolean,
): Ending {
  const name = `step ${String(index + 1)}`;
  switch (end.kind) {
    case 'event': {
      const rule = step.until[end.event]!;
      return { kind: 'stopped', step: index, rule, message: `${name} ended: ${describeRule(rule)}` };
    }
    case 'reachedEnd': {
      if (full) return { kind: 'neverMet', step: index, message: outOfRows(name) };
      const waiting = step.until.filter((_rule, i) => !armed[i]).map((rule) => describeUnarmedRule(rule));
      const why = [`none of its rules was met`, ...waiting.filter((words) => words !== '')].join('; ');
      return step.reflux === 'total'
        ? { kind: 'neverMet', step: index, message: `${name} settled at total reflux: ${why}` }
        : { kind: 'kettleDry', step: index, message: `the kettle ran dry in ${name}: ${why}` };
    }
    case 'stepLimit': {
      const message = `the solver stopped in ${name} after ${end.s.toFixed(1)} mol boiled up: the run takes more work than one may; larger hold-ups or a looser tolerance take less`;
      return { kind: end.kind, step: index, message };
    }
    case 'stepTooSmall': {
      const message = `the solver stopped in ${name} after ${end.s.toFixed(1)} mol boiled up: no step was short enough`;
      return { kind: end.kind, step: index, message };
    }
  }
}

/** What to say of a step that was left because no more rows fit. */
export function outOfRows(name: string): string {
  return `${name} was left when the run had ${String(MOST_ROWS)} rows: outputs farther apart would show more of it`;
}
