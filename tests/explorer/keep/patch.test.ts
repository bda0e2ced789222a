// Changes between two states of a notebook: whatever they are, applied to the one they give the other, after they were
// written down and read again, too; and they stay small.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changesBetween, withChanges, type Step } from '../../../explorer/keep/patch.js';
import type { Json } from '../../../explorer/state/notebook-record.js';

/** Any JSON, names that mean something to every object included. */
const anyJson: fc.Arbitrary<Json> = fc
  .letrec<{ value: unknown }>((tie) => ({
    value: fc.oneof(
      { depthSize: 'small' },
      fc.constantFrom(null, true, false, 0, 1, 'a', ''),
      fc.string({ unit: 'binary' }),
      fc.array(tie('value'), { maxLength: 4 }),
      fc.dictionary(fc.constantFrom('a', 'b', 'c', '__proto__', 'constructor', 'length', '0'), tie('value'), {
        noNullPrototype: true,
      }),
    ),
  }))
  .value.map((value) => JSON.parse(JSON.stringify(value)) as Json);

const copied = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

describe('changes between two values', () => {
  it('lead from the one to the other, after they were written down and read again', () => {
    fc.assert(
      fc.property(anyJson, anyJson, (before, after) => {
        const steps = copied(changesBetween(before, after));
        expect(JSON.stringify(sorted(withChanges(copied(before), steps)))).toBe(JSON.stringify(sorted(after)));
      }),
      { numRuns: 2000 },
    );
  });

  it('are none between a value and its copy', () => {
    fc.assert(
      fc.property(anyJson, (value) => {
        expect(changesBetween(value, copied(value))).toEqual([]);
      }),
    );
  });

  it('hold one letter where one was typed, however long the text is', () => {
    const text = 'a long story. '.repeat(10_000);
    const before = { pages: [{ entries: [{ data: { text } }] }] };
    const after = { pages: [{ entries: [{ data: { text: `${text.slice(0, 70_000)}x${text.slice(70_000)}` } }] }] };
    expect(JSON.stringify(changesBetween(before, after)).length).toBeLessThan(100);
  });

  it('hold one entry where one was put in, moved out or copied', () => {
    const entries = Array.from({ length: 500 }, (_, i) => ({ id: `e${String(i)}`, text: 'as it was' }));
    const more = entries.toSpliced(250, 0, { id: 'new', text: 'put in' });
    expect(changesBetween(entries, more)).toEqual([
      { at: [], from: 250, cut: 0, put: [{ id: 'new', text: 'put in' }] },
    ]);
    expect(changesBetween(more, entries)).toEqual([{ at: [], from: 250, cut: 1, put: [] }]);
  });

  it('do not look into what is the very same object in both', () => {
    const page = new Proxy(
      {},
      {
        ownKeys: () => {
          throw new Error('looked into');
        },
      },
    );
    expect(changesBetween({ pages: [page, 1] }, { pages: [page, 2] })).toEqual([{ at: ['pages', 1], set: 2 }]);
  });

  it.each<[string, Json, Step]>([
    ['a field that is not there', {}, { at: ['a'], drop: true }],
    ['a place beyond the end of a list', [1], { at: [4], set: 2 }],
    ['a piece beyond the end of a text', 'abc', { at: [], from: 2, cut: 4, put: '' }],
    ['a piece of a number', 4, { at: [], from: 0, cut: 0, put: 'x' }],
    ['a field of a number', { a: 4 }, { at: ['a', 'b'], set: 1 }],
    ['what every object has', {}, { at: ['constructor', 'x'], set: 1 }],
  ])('that are about %s are an error, and change nothing by mistake', (_, value, step) => {
    expect(() => withChanges(value, [step])).toThrow('A change');
  });
});

/** Fields by name: their order is no part of a value. */
function sorted(value: Json): Json {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== 'object' || value === null) return value;
  const fields = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(fields.map(([name, inside]) => [name, sorted(inside)]));
}
