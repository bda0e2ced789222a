// The list of mutants is looked after: each changes a text that stands in its file once (tests/mutants).

import { describe, expect, it } from 'vitest';
import { mutants } from '../mutants/list.js';
import { read } from '../support/tree.js';

describe('each mutant', () => {
  it.each(mutants)('finds the text it changes: $name', ({ file, from, to }) => {
    expect(read(file).split(from)).toHaveLength(2);
    expect(to).not.toBe(from);
  });

  it('is named once', () => {
    expect(new Set(mutants.map(({ name }) => name)).size).toBe(mutants.length);
  });
});
