// The marks of prose: what is one and what is none; and that no text makes finding them slow, told by how many letters
// are looked at.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { marksIn, withMarks, type Letters } from '../../../../explorer/components/term/marks.js';
import { termsIn } from '../../../../explorer/components/term/prose.js';

const found = (text: string): string[] =>
  marksIn(text).map(({ kind, word, tail }) => `${kind} ${word}${tail === '' ? '' : ` ${tail}`}`);

/** What marks are, as a pattern that says it in one line and is slow on many an open bracket. */
const slow = /\[\[([^\]]+)\]\]([.,:;)’]*)|\{\{([^}]+)\}\}|\(\(([^)]+)\)\)|\*([^*]+)\*/gu;

describe('the marks of prose', () => {
  it.each([
    ['[[reflux]]', ['term reflux']],
    ['the [[reflux]], then', ['term reflux ,']],
    ['{{9.5}} and ((3 : 1)) and *so*', ['ink 9.5', 'print 3 : 1', 'stress so']],
    ['[[[reflux]]', ['term [reflux']],
    ['[[]] {{}} (()) **', []],
    ['[[open {{ink}}', ['ink ink']],
    ['[one] (two) {three}', []],
    ['a * b', []],
    ['*a [[b]] c*', ['stress a [[b]] c']],
    ['[[a]b]]', []],
  ])('of %j are %j', (text, marks) => {
    expect(found(text)).toEqual(marks);
  });

  it('are those of the pattern that defines them, in any text', () => {
    const letters = fc.array(fc.constantFrom('[', ']', '{', '}', '(', ')', '*', '.', 'a', ' ', '\n', '’'), {
      maxLength: 40,
    });
    fc.assert(
      fc.property(letters, (parts) => {
        const text = parts.join('');
        const whole = marksIn(text).map(({ from, to }) => text.slice(from, to));
        expect(whole).toEqual([...text.matchAll(slow)].map(([match]) => match));
      }),
      { numRuns: 3000 },
    );
  });

  it('are put otherwise one by one, with what stands between left alone', () => {
    expect(withMarks('a *b* c [[d]]. e', ({ word, tail }) => `<${word}>${tail}`)).toBe('a <b> c <d>. e');
    expect(termsIn('[[a]] *b* [[c]].')).toEqual(['a', 'c']);
  });
});

/** A text that counts the letters looked at. */
function counted(text: string): { text: Letters; looks: () => number } {
  let looks = 0;
  const charAt = (place: number): string => {
    looks += 1;
    return text.charAt(place);
  };
  const slice = (from: number, to: number): string => {
    looks += to - from;
    return text.slice(from, to);
  };
  return { text: { length: text.length, charAt, slice }, looks: () => looks };
}

describe('finding them', () => {
  it.each([
    '[',
    '[[',
    '{{',
    '((',
    '*',
    '[[a',
    '[[a]',
    '{{a}',
    '((*',
    '[[{{((*',
    ']]',
    '[[a]],',
    '*a',
    '[[a]] *b* {{c}} ((d))',
  ])('looks at each letter of %j, again and again, a few times at most', (part) => {
    for (const length of [1000, 100_000]) {
      const { text, looks } = counted(part.repeat(Math.ceil(length / part.length)));
      marksIn(text);
      expect(looks() / text.length).toBeLessThan(8);
    }
  });
});
