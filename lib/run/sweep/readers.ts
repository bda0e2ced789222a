// Readers every worker of a sweep knows by name: what is kept of a run. One of your own is an export of a module, or is given to serveSweep.

import { choiceFault } from '../../arguments.js';
import { InputError } from '../../errors.js';
import type { EnergySolution, Ending, Jar, PlainSolution, RunSolution } from '../solution.js';
import { type EnergyAccount, energyAccount } from '../readers/account.js';
import { type StepSummary, stepSummaries } from '../readers/steps.js';

/** Keeps of a run what is wanted of it: plain data. */
export type SweepReader = (run: RunSolution, argument: unknown) => unknown;

/** A run at its end. */
export interface RunEnd {
  readonly ending: Ending;
  readonly time_s: number;
  readonly firstVapour_s: number | null;
  /** Distillate and its pure alcohol at 20 °C, m³. */
  readonly collectedVolume_m3: number;
  readonly pureAlcoholCollected_m3: number;
  readonly pureAlcoholLeft_m3: number;
  readonly spoutStrength: number;
  readonly kettleStrength: number;
}

/** What each name keeps. */
export interface SweepReaders {
  readonly end: RunEnd;
  readonly jars: readonly Jar[];
  readonly steps: readonly StepSummary[];
  readonly account: EnergyAccount;
  readonly plain: PlainSolution;
}

export const SWEEP_READERS: { readonly [Name in keyof SweepReaders]: (run: RunSolution) => SweepReaders[Name] } = {
  end: (run) => ({
    ending: run.ending,
    time_s: run.time_s.at(-1)!,
    firstVapour_s: run.firstVapour_s,
    collectedVolume_m3: run.collectedVolume_m3.at(-1)!,
    pureAlcoholCollected_m3: run.pureAlcoholCollected_m3.at(-1)!,
    pureAlcoholLeft_m3: run.pureAlcoholLeft_m3.at(-1)!,
    spoutStrength: run.spoutStrength.at(-1)!,
    kettleStrength: run.kettleStrength.at(-1)!,
  }),
  jars: (run) => run.jars,
  steps: (run) => stepSummaries(run),
  account: (run) => energyAccount(run as EnergySolution),
  plain: (run) => run.plain(),
};

/** The reader of a name among these; an InputError says which there are. */
export function readerNamed(readers: Readonly<Record<string, SweepReader>>, name: string): SweepReader {
  if (typeof name === 'string' && Object.hasOwn(readers, name) && typeof readers[name] === 'function')
    return readers[name];
  throw new InputError(...choiceFault('options.read', name, Object.keys(readers)));
}
