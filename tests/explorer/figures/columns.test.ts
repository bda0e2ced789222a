// Rows that are drawn.

import { describe, expect, it } from 'vitest';
import { risingRows } from '../../../explorer/figures/columns.js';

describe('rows at which x rises', () => {
  it('keep the last of a spell at one place, where its x begins to rise', () => {
    expect(risingRows([0, 0, 0, 1, 2])).toEqual([2, 3, 4]);
  });

  it('begin where x begins, though the next row is too near to be drawn apart', () => {
    expect(risingRows([0, 0, 1e-6, 2e-6, 1, 2])).toEqual([1, 4, 5]);
  });

  it('always end with the last row', () => {
    expect(risingRows([0, 1, 2, 2 + 1e-6])).toEqual([0, 1, 3]);
    expect(risingRows([0, 1, 2, 2])).toEqual([0, 1, 3]);
  });
});
