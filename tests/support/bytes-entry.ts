// What the measure of garbage runs: the solver alone, without the copy of its course that a solution keeps.

import type { EthanolWater, RunProblem } from '#lib/index.js';
import { checkedProblem } from '#lib/run/check-problem.js';
import { type Course, drive } from '#lib/run/drive.js';
import { sharedEngine } from '#lib/run/engines/registry.js';

export { createEthanolWater } from '#lib/index.js';

/** The course of a problem, valid until the next. */
export function ran(problem: RunProblem, system: EthanolWater): Course {
  const complete = checkedProblem(problem, system);
  const turn = drive(complete, sharedEngine(complete, system), []).next();
  if (turn.done !== true) throw new Error('a run that pauses');
  return turn.value;
}
