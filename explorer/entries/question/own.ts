// A question that a reader or a leader writes: a sentence with a blank, a number or a result of the page for an
// answer, how near is near enough, and two hints.

import { trimmed } from '../../text/format.js';
import { readText } from '../../text/parse.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import type { PageResult } from '../entry.js';
import type { PosedQuestion } from './definition.js';

/** Plain data; numbers are in the unit the sentence names. */
export interface OwnQuestion {
  readonly lead: string;
  readonly tail: string;
  /** A number, or the name of a result of the page. */
  readonly answer: number | string;
  /** How far from the answer is near enough, per cent of it. */
  readonly within: number;
  readonly hints: readonly [string, string];
}

export const noQuestion: OwnQuestion = { lead: '', tail: '', answer: 0, within: 2, hints: ['', ''] };

/** Digits of an answer that is computed. */
const digits = 4;

/** The question ready to be answered; null where it is not finished or its result is not there yet. */
export function poseOwn(own: OwnQuestion, results: readonly PageResult[], units: UnitSystem): PosedQuestion | null {
  const found = typeof own.answer === 'string' ? resultNamed(own.answer, results) : undefined;
  const quantity = found === undefined || found.quantity === null ? undefined : units[found.quantity];
  const si = typeof own.answer === 'string' ? (found?.value ?? null) : own.answer;
  if (si === null || own.lead.trim() === '') return null;
  const toShown = (value: number): number => (quantity === undefined ? value : quantity.toShown(value));
  const say = (value: number): string =>
    quantity === undefined ? trimmed(Number(value.toPrecision(digits)), digits) : quantity.withUnit(value);
  return {
    lead: own.lead,
    tail: own.tail === '' ? '.' : own.tail,
    read: (text) =>
      readText(text, { fromShown: quantity?.fromShown ?? ((shown) => shown), units: new Map(), engine: false }),
    asked: {
      answer: si,
      tolerance: { relative: own.within / 100 },
      reached: (given) =>
        `${say(given)} is ${trimmed(Number(Math.abs(toShown(given) - toShown(si)).toPrecision(2)), digits)} too ${given > si ? 'high' : 'low'}.`,
      answerWords: `It is ${say(si)}.`,
      hints: own.hints,
    },
  };
}

function resultNamed(name: string, results: readonly PageResult[]): PageResult | undefined {
  return results.find((result) => result.name === name);
}
