// The guesses there are. A new one is one file and one line here.

import { ceiling } from './ceiling.js';
import { defined, type GuessDefinition } from './definition.js';
import { reflux } from './reflux.js';
import { steps } from './steps.js';
import { vapour } from './vapour.js';

export const guesses: readonly GuessDefinition[] = [defined(vapour), defined(steps), reflux, ceiling];

/** The guess of this name; undefined where there is none. */
export function guessNamed(name: string): GuessDefinition | undefined {
  return guesses.find((guess) => guess.name === name);
}
