// Stills of the reader's own beside the three of 'One charge, three stills': what the entries of the page share.

import type { Common, Json } from '../../state/notebook-record.js';
import { faultInOwnStills, ownStillsName as name } from '../../state/own-stills-check.js';
import { columnOf, type OwnStill } from '../../state/column-of.js';
import { stillsQuestions, type StillsQuestions } from './questions.js';
import type { Scenario } from '../../state/scenario.js';
import type { Here } from '../../entries/entry.js';

const none: readonly OwnStill[] = [];

/** The stills set beside the others, the very list that is kept; none where a file holds something else. */
export function ownStills(common: Common | undefined): readonly OwnStill[] {
  const kept = common?.[name];
  return kept === undefined || faultInOwnStills(kept) !== undefined ? none : (kept as unknown as readonly OwnStill[]);
}

/** What the pieces of the page ask. */
export function stillsAsks(scenario: Scenario, common: Common): StillsQuestions {
  return stillsQuestions(scenario, ownStills(common));
}

/** Sets the column as it stands beside the others. */
export function keepColumn({ common, scenario, setCommon }: Pick<Here, 'common' | 'scenario' | 'setCommon'>): void {
  const next: Json = [...ownStills(common), columnOf(scenario)].map((still) => ({ ...still }));
  setCommon(name, next, { says: 'column set beside the others' });
}

/** Takes one of them away. */
export function takeAway({ common, setCommon }: Pick<Here, 'common' | 'setCommon'>, place: number): void {
  const next = ownStills(common).filter((_still, at) => at !== place);
  const left: Json = next.map(({ plates, efficiency, reflux }) => ({ plates, efficiency, reflux }));
  setCommon(name, next.length === 0 ? undefined : left, { says: 'column taken away' });
}
