// 'Change the reflux now': a run sheet overruled at a moment of its run.

import { fieldFaults, listFault, refuse, shapeFault } from '../arguments.js';
import { checkRange, type Fault } from '../errors.js';
import type { Second } from '../units/quantities.js';
import { rangeFault } from './check.js';
import type { RunStep, StopRule } from './problem.js';
import { MOST_STEPS, stepFaults } from './shape.js';
import type { RunColumns, RunFacts } from './solution.js';

/** What is changed from the moment on. */
export type Overruling = Partial<Pick<RunStep, 'reflux' | 'heat'>>;

/**
 * The run sheet that does what was done up to a moment and something else from there on, until the step ends as it would have.
 *
 * Equation: the step that runs at t is cut in two: its first part also ends t − t_start after it began, its second keeps all rules, clocks shortened by as much.
 * @param sheet The run sheet that was run.
 * @param run The run of it, for when its steps began.
 * @param at_s Moment from which the change holds, t, [s]; within the run; outside, an InputError.
 * @param change Reflux or heat from then on.
 * @returns The new sheet; run it again from the start.
 * @throws InputError when the moment is outside the run, or the sheet, the run or the change is none.
 * @example overruled([{ reflux: 'total', until: [{ kind: 'duration', seconds: 600 }] }], { time_s: Float64Array.of(0, 600), stepStarts: [0] }, 200, { reflux: 5 }).length // → 2
 * Source: definition.
 */
export function overruled(
  sheet: readonly RunStep[],
  run: Pick<RunColumns & RunFacts, 'time_s' | 'stepStarts'>,
  at_s: Second,
  change: Overruling,
): readonly RunStep[] {
  refuse(listFault('sheet', sheet, 'steps', 1, MOST_STEPS));
  refuse(sheet.flatMap((step, i) => stepFaults(`sheet[${String(i)}]`, step)));
  const shape = { time_s: 'numbers', stepStarts: 'list' };
  refuse(shapeFault('run', run, shape, 'a solution as solve gives it, or its plain copy'));
  refuse(sheet.flatMap((step, i) => numberFaults(`sheet[${String(i)}]`, step)));
  refuse(changeFaults(change));
  const end_s = run.time_s.at(-1)!;
  checkRange('at_s', at_s, 0, end_s, `a moment of the run, 0 to ${end_s.toFixed(0)} s`);
  const starts = run.stepStarts.map((row) => run.time_s[row]!);
  const index = Math.max(
    0,
    starts.findLastIndex((start_s) => start_s <= at_s),
  );
  const step = sheet[index]!;
  const since_s = at_s - starts[index]!;
  const changed = { ...step, ...change };
  if (since_s <= 0) return sheet.map((other, i) => (i === index ? changed : other));
  const cut: RunStep = { ...step, until: [...step.until, { kind: 'duration', seconds: since_s }] };
  const rest: RunStep = { ...changed, until: step.until.map((rule) => shortened(rule, since_s)) };
  return [...sheet.slice(0, index), cut, rest, ...sheet.slice(index + 1)];
}

function changeFaults(change: Overruling): Fault[] {
  const faults = fieldFaults('change', change, ['reflux', 'heat']);
  if (faults.length > 0) return faults;
  const { reflux = 'none', heat } = change;
  const shape = stepFaults('change', {
    reflux,
    ...(heat === undefined ? {} : { heat }),
    until: [{ kind: 'firstVapour' }],
  });
  return shape.length > 0 ? shape : numberFaults('change', { reflux });
}

/** Numbers that no run sheet of any still has. */
function numberFaults(where: string, { reflux, until }: Partial<RunStep>): Fault[] {
  return [
    ...(typeof reflux === 'number' ? rangeFault(`${where}.reflux`, reflux, 0, 1e6, 'a reflux ratio from 0 up') : []),
    ...(until ?? []).flatMap((rule, i) =>
      Object.entries(rule)
        .filter(([name]) => name !== 'kind')
        .flatMap(([name, value]) =>
          rangeFault(`${where}.until[${String(i)}].${name}`, value as number, 0, 1e9, 'a number of 0 or more'),
        ),
    ),
  ];
}

function shortened(rule: StopRule, by_s: Second): StopRule {
  return rule.kind === 'duration' ? { ...rule, seconds: Math.max(1e-3, rule.seconds - by_s) } : rule;
}
