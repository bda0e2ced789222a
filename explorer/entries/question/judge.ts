// A question with a number for an answer: whether a number meets it, and the reply. A reply never just says
// right or wrong; it says what the given number would come to, and hints, first in general, then with the
// page's own numbers.

/** How near is near enough: so much of the answer, or so much in its own unit (SI). */
export type Tolerance = { readonly relative: number } | { readonly absolute: number };

/** A question with its answer, SI, and its words. */
export interface AskedNumber {
  readonly answer: number;
  readonly tolerance: Tolerance;
  /** What a number that misses would come to: 'A vapour of 60 % vol rises from a liquid of 11.8 % vol.' */
  readonly reached: (given: number) => string;
  /** The answer in a sentence, with its number. */
  readonly answerWords: string;
  /** In general, then with the page's numbers. */
  readonly hints: readonly [string, string];
}

/** What is said to a number. */
export interface Verdict {
  readonly met: boolean;
  readonly reply: string;
}

/** Rounding of numbers that are meant to be equal, relative. */
const rounding = 1e-9;

/** Whether a number meets the answer. */
export function meets(given: number, { answer, tolerance }: Pick<AskedNumber, 'answer' | 'tolerance'>): boolean {
  const allowed = 'relative' in tolerance ? tolerance.relative * Math.abs(answer) : tolerance.absolute;
  return Math.abs(given - answer) <= allowed + rounding * Math.abs(answer);
}

/** The verdict on a number given at this attempt, the first being 1. */
export function judged(given: number, asked: AskedNumber, attempt: number): Verdict {
  if (meets(given, asked)) return { met: true, reply: `Yes. ${asked.answerWords}` };
  const hint = attempt <= 1 ? asked.hints[0] : asked.hints[1];
  return { met: false, reply: `Not yet. ${asked.reached(given)} ${hint}` };
}
