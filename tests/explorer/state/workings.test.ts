// What a file may hold of workings, and what stands where it holds nothing.

import { describe, expect, it } from 'vitest';
import { faultInShared } from '../../../explorer/state/shared-values.js';
import { workingNumbers } from '../../../explorer/state/working-numbers.js';
import { valuesOf, workingsIn, workingsName } from '../../../explorer/state/workings.js';
import type { Json } from '../../../explorer/state/notebook-record.js';

const fault = (value: Json): string | undefined => faultInShared(workingsName, value);
const deep = (rows: Json): Json => ({ rows });

describe('workings from a file', () => {
  it.each<[string, Json]>([
    ['nothing', {}],
    ['a number', { numbers: { steps: 5 } }],
    ['a clause', { said: { parrot: false } }],
    ['rows', deep({ books: [{ choice: 'spent', numbers: { jarVolume: 0.1, jarStrength: 0.01 } }] })],
    ['a number of a later version', { numbers: { somethingNew: 3 } }],
  ])('are taken: %s', (_name, value) => {
    expect(fault(value)).toBeUndefined();
  });

  it.each<[string, Json, string]>([
    ['a list', [], 'a record'],
    ['null', null, 'a record'],
    ['a number in words', { numbers: { steps: 'four' } }, 'record of numbers'],
    ['a number beyond its limits', { numbers: { steps: 5000 } }, '‘steps’ of workings is 5000'],
    ['a negative volume in a row', deep({ books: [{ numbers: { jarVolume: -1 } }] }), '‘jarVolume’'],
    ['said in words', { said: { parrot: 'yes' } }, '`said`'],
    ['rows that are no list', deep({ books: { 0: {} } }), 'a list of at most'],
    ['too many rows', deep({ books: Array.from({ length: 41 }, () => ({ numbers: {} })) }), 'a list of at most 40'],
    ['a row that is none', deep({ books: ['spent'] }), 'has `numbers`'],
    ['a choice that is a novel', deep({ books: [{ numbers: {}, choice: 'x'.repeat(100) }] }), '`choice`'],
  ])('are refused with a reason: %s', (_name, value, says) => {
    expect(fault(value)).toContain(says);
  });

  it('stand as they start where the page has none, or has some that cannot be used', () => {
    for (const common of [{}, { [workingsName]: { numbers: { steps: -3 } } }]) {
      expect(valuesOf(workingsIn(common)).steps).toBe(workingNumbers.steps.start);
    }
    expect(valuesOf(workingsIn({ [workingsName]: { numbers: { steps: 7 } } })).steps).toBe(7);
  });
});

describe('the numbers of workings', () => {
  it.each(Object.entries(workingNumbers))(
    '%s starts within its limits, and each ruler stays within them',
    (_name, row) => {
      expect(row.start).toBeGreaterThanOrEqual(row.low);
      expect(row.start).toBeLessThanOrEqual(row.high);
    },
  );
});
