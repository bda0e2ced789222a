// The questions there are. A new one is one file and one line here.

import { overAzeotrope, refluxForNinetySix } from './at-the-ceiling.js';
import { defined, type QuestionDefinition } from './definition.js';
import { platesToNinety, platesToNinetySix } from './plates-needed.js';
import { boiledPerKept, timeAtRatio } from './reflux-paid.js';
import { whatBoilsAt, whatRises } from './what-rises.js';

export const questions: readonly QuestionDefinition[] = [
  defined(whatRises),
  defined(whatBoilsAt),
  defined(platesToNinety),
  defined(platesToNinetySix),
  defined(boiledPerKept),
  defined(timeAtRatio),
  defined(overAzeotrope),
  refluxForNinetySix,
];

/** The question of this name; undefined where there is none. */
export function questionNamed(name: string): QuestionDefinition | undefined {
  return questions.find((question) => question.name === name);
}
