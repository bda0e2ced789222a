// A question that somebody wrote: with a number or with a result of the page for an answer, in the units in use.

import { describe, expect, it } from 'vitest';
import type { PageResult } from '../../../../explorer/entries/entry.js';
import type { PosedQuestion } from '../../../../explorer/entries/question/definition.js';
import { judged } from '../../../../explorer/entries/question/judge.js';
import { noQuestion, poseOwn, type OwnQuestion } from '../../../../explorer/entries/question/own.js';
import { unitSystems } from '../../../../explorer/text/unit-systems.js';

const { metric, us } = unitSystems;
const collected: PageResult = {
  entry: 'run',
  name: 'collected',
  label: 'collected in all',
  quantity: 'volume',
  value: 0.0127,
};
const asking: OwnQuestion = {
  lead: 'In all the column brings over',
  tail: 'L.',
  answer: 'collected',
  within: 5,
  hints: ['Look at the end of the curve.', 'The curve ends between 12 and 13 L.'],
};

const says = (question: PosedQuestion, text: string, attempt = 1): string => {
  const reading = question.read(text);
  if (reading.kind !== 'value') throw new Error(`'${text}' is no number`);
  return judged(reading.si, question.asked, attempt).reply.replaceAll('\u00a0', ' ');
};

describe('a question somebody wrote', () => {
  it('takes a result of the page for its answer, in the units in use', () => {
    expect(says(poseOwn(asking, [collected], metric)!, '12.5')).toBe('Yes. It is 12.7 L.');
    expect(says(poseOwn(asking, [collected], us)!, '3.4')).toBe('Yes. It is 3.35 US gal.');
    expect(says(poseOwn(asking, [collected], metric)!, '10')).toBe(
      'Not yet. 10.0 L is 2.7 too low. Look at the end of the curve.',
    );
    expect(says(poseOwn(asking, [collected], metric)!, '20', 2)).toContain('The curve ends between 12 and 13 L.');
  });

  it('takes a plain number as well', () => {
    const question = poseOwn({ ...asking, answer: 12, within: 0 }, [], metric)!;
    expect(says(question, '12')).toBe('Yes. It is 12.');
    expect(says(question, '12,5')).toContain('12.5 is 0.5 too high.');
  });

  it('is left out until it is finished and its result is there', () => {
    expect(poseOwn(noQuestion, [], metric)).toBeNull();
    expect(poseOwn(asking, [], metric)).toBeNull();
    expect(poseOwn(asking, [{ ...collected, value: null }], metric)).toBeNull();
  });
});
