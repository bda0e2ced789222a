// What a lesson is: data and texts. All lessons have the same parts in the same order, so that a new one is
// one file like those beside this one and one line in the list. Texts carry the marks of term/prose.ts.

import type { SentencePart } from '../../components/number/kp-setup.js';
import type { Figure } from '../../figures/figure.js';
import type { Asks } from '../../worker/questions.js';
import type { Given } from '../../entries/entry.js';
import type { Path } from '../../state/inputs.js';
import type { Scenario } from '../../state/scenario.js';

/** A figure with its rows; any figure, as long as the rows are those it takes. */
export interface ShownFigure {
  readonly figure: Figure<never>;
  readonly rows: unknown;
  /** Whether earlier runs can be kept on it as pencil lines. */
  readonly keeps: boolean;
}

/** What the reader's settings come to; texts with marks. */
export interface Shown {
  /** One figure, or two side by side. */
  readonly figures: readonly ShownFigure[];
  /** The results in words. */
  readonly words: readonly string[];
}

/** A common saying, and what is true of it. */
export interface Saying {
  readonly says: string;
  readonly answer: string;
}

/** What depends on the numbers of the page. */
export interface LessonNumbers {
  readonly tries: Shown;
  /** Why it is so. */
  readonly why: readonly string[];
  /** A figure under the explanation; null for none. */
  readonly whyFigure: ShownFigure | null;
  readonly sayings: readonly Saying[];
  /** For the margin of the explanation. */
  readonly source: string;
}

/** For whoever leads a group through the lesson. */
export interface LeadersNotes {
  /** What to have at hand and what to say first. */
  readonly before: string;
  /** What apprentices often think, and what to ask them then. */
  readonly listen: readonly string[];
  /** Minutes of guess, try, why, check, own words. */
  readonly minutes: readonly [number, number, number, number, number];
  /** What the steps of the activity should have brought out, one a step. */
  readonly found: readonly string[];
}

export interface Lesson<Asked extends Asks = Asks> {
  /** In the address; never changed once published. */
  readonly name: string;
  readonly title: string;
  /** One sentence, one line. */
  readonly promise: string;
  /** Ends 'After this page you can'. */
  readonly goal: string;
  /** Why it surprises; leads up to the guess. */
  readonly opening: readonly string[];
  /** Name of its guess. */
  readonly guess: string;
  readonly sentence: readonly SentencePart<Path>[];
  /** The number the ruler holds first. */
  readonly inFocus: Path;
  readonly asks: (scenario: Scenario) => Asked;
  readonly numbers: (now: Given<Asked>, kept: readonly Given<Asked>[]) => LessonNumbers;
  /** What to do with the sentence, step by step. */
  readonly steps: readonly string[];
  /** Beside the first entry that shows heat, vapour or spirit. */
  readonly caution: string;
  /** What was assumed, for the margin. */
  readonly assumed: string;
  /** Names of its questions. */
  readonly questions: readonly string[];
  readonly ownWords: { readonly prompt: string; readonly ours: string };
  readonly leader: LeadersNotes;
}

/** A lesson in the list of lessons, which ask different things. */
export function lessonOf<Asked extends Asks>(lesson: Lesson<Asked>): Lesson {
  return lesson as unknown as Lesson;
}
