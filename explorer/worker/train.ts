// Runs of a still as it stands. Loaded by the worker when first asked for: the first page does without.

import { type EthanolWater, solve } from '#lib/index.js';
import type { TrainAnswer, TrainQuestion } from './questions.js';

export function train({ problem }: TrainQuestion, system: EthanolWater): TrainAnswer {
  return { kind: 'train', solution: solve(problem, system) };
}
