// Runs of a still as it stands. Loaded by the worker when first asked for: the first page does without.

import { type EthanolWater, limitsOf, solve } from '#lib/index.js';
import type { TrainAnswer, TrainQuestion } from './questions.js';

export function train({ problem, limits }: TrainQuestion, system: EthanolWater): TrainAnswer {
  const run = solve(problem, system);
  return { kind: 'train', solution: run.plain(), limits: limits === true ? limitsOf(run, system) : [] };
}
