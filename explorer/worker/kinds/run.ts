// A run in time of any still by any model. The question names what is kept of it; nothing else is worked out or sent.

import {
  solve,
  type EnergyColumns,
  type Jar,
  type Limit,
  type RunColumns,
  type RunFacts,
  type RunObserver,
  type RunProblem,
} from '#lib/index.js';
import { part, type Answering, type Bench } from './kind.js';

/** What can be kept of a run beside its facts: columns, and what is read off it. */
export interface RunParts extends RunColumns, EnergyColumns {
  readonly jars: readonly Jar[];
  /** The limits of the still it passes. */
  readonly limits: readonly Limit[];
}
export type RunPart = keyof RunParts;

export interface RunQuestion<Kept extends RunPart = RunPart> {
  readonly kind: 'run';
  readonly problem: RunProblem;
  readonly keep: readonly Kept[];
}

/** A run as it was asked for. */
export type KeptRun<Kept extends RunPart = never> = Omit<RunFacts, 'jars'> & Pick<RunParts, Kept>;

export interface RunAnswer<Kept extends RunPart = never> {
  readonly kind: 'run';
  readonly solution: KeptRun<Kept>;
}

/** A run tells of itself once it takes so long, and then so often, ms. */
const tellAfter_ms = 1000;
const tellEvery_ms = 200;

export const run: Answering<RunQuestion, RunAnswer> = async ({ problem, keep }, { system, tell }) => {
  const late = keep.includes('limits') ? await part(() => import('./limits.js')) : undefined;
  const solved = solve(problem, system, { observers: [telling(tell)] });
  const { problem: complete, ending, statistics, rows, plates, holders, stepStarts, firstVapour_s } = solved;
  const facts: KeptRun = { problem: complete, ending, statistics, rows, plates, holders, stepStarts, firstVapour_s };
  const parts = keep.map((name): [string, unknown] => [
    name,
    name === 'limits' ? late!.limitsOf(solved, system) : solved[name as keyof RunColumns],
  ]);
  return { kind: 'run', solution: { ...facts, ...(Object.fromEntries(parts) as object) } };
};

/** Tells how far the run has come, where it takes long. */
function telling(tell: Bench['tell']): RunObserver {
  let next_ms = performance.now() + tellAfter_ms;
  return {
    step: (_view, { moment }) => {
      const now_ms = performance.now();
      if (now_ms < next_ms) return;
      next_ms = now_ms + tellEvery_ms;
      tell(moment.time_s);
    },
  };
}
