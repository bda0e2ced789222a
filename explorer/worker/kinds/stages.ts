// Ideal stages at total reflux from a kettle of one strength.

import {
  moleFractionFromStrength,
  stagesAtTotalReflux,
  strengthFromMoleFraction,
  vapourOnSlice,
  type ActivityName,
} from '#lib/index.js';
import type { Answering } from './kind.js';

export interface StagesQuestion {
  readonly kind: 'stages';
  readonly activity: ActivityName;
  readonly pressure_Pa: number;
  /** % vol / 100 of the kettle. */
  readonly fromStrength: number;
  /** % vol / 100 to be reached. */
  readonly toStrengths: readonly number[];
}

export interface StagesAnswer {
  readonly kind: 'stages';
  /** Ideal stages, the kettle counted; null where no number of them gets there. */
  readonly stages: readonly (number | null)[];
  /** % vol / 100 of the vapour of each stage, the kettle first; forty of them. */
  readonly ladder: readonly number[];
}

const rungs = 40;

export const stages: Answering<StagesQuestion, StagesAnswer> = (question, { system }) => {
  const slice = system.curve(question.activity).at(question.pressure_Pa);
  const from = moleFractionFromStrength(question.fromStrength);
  const counts = question.toStrengths.map((strength) => {
    const count = stagesAtTotalReflux(slice, from, Math.max(from, moleFractionFromStrength(strength)));
    return count.found ? count.stages : null;
  });
  const ladder: number[] = [];
  let liquid = from;
  while (ladder.length < rungs) {
    liquid = Math.min(1, vapourOnSlice(slice, liquid));
    ladder.push(strengthFromMoleFraction(liquid));
  }
  return { kind: 'stages', stages: counts, ladder };
};
