// What a formula entry is in a file, and what of a page formulas may name.

import { describe, expect, it } from 'vitest';
import { checkFormula, formulasIn } from '../../../../explorer/entries/formula/data.js';
import { faultWords } from '../../../../explorer/entries/formula/fault-words.js';
import { firstPlot } from '../../../../explorer/entries/formula/first-plot.js';
import { offeredFrom } from '../../../../explorer/entries/formula/offered.js';
import { numbersOf } from '../../../../explorer/entries/formula/page-names.js';
import { isFunctionName, constantNamed } from '../../../../explorer/formula/functions/registry.js';
import { unitNamed } from '../../../../explorer/formula/units.js';
import { startingScenario } from '../../../../explorer/state/scenario.js';
import { resultsOf } from '../../../support/formulas.js';

describe('a formula in a file', () => {
  it.each([
    [{ text: 'a = 1' }, { text: 'a = 1', plot: null }],
    [
      { text: 'import("x")', plot: null, more: 3 },
      { text: 'import("x")', plot: null },
    ],
    [
      { text: 'a', plot: { against: 'b', from: '0', to: '1' } },
      { text: 'a', plot: { against: 'b', from: '0', to: '1' } },
    ],
  ])('%j is kept as text and nothing else', (written, data) => {
    expect(checkFormula(written)).toEqual({ good: true, data });
  });

  it.each([[{}], [{ text: 3 }], [{ text: 'a', plot: 'b' }], [{ text: 'a', plot: { against: 'b', from: 0, to: 1 } }]])(
    '%j is refused in words',
    (written) => {
      expect(checkFormula(written)).toMatchObject({
        good: false,
        why: expect.stringMatching(/^(a|the `plot`) .*entry needs/u) as string,
      });
    },
  );

  it('that is damaged leaves the other formulas of its page alone', () => {
    const entries = [
      { id: 'a', kind: 'formula', data: { text: 3 } },
      { id: 'b', kind: 'text', data: { text: 'words' } },
      { id: 'c', kind: 'formula', data: { text: '1 + 1' } },
    ];
    expect(formulasIn(entries).map(({ id }) => id)).toEqual(['c']);
  });
});

describe('the numbers of a page', () => {
  const results = [
    { entry: 'x', name: 'collected', label: 'collected in all', quantity: 'volume', value: 0.006 },
    { entry: 'x', name: 'volume', label: 'another', quantity: 'volume', value: 1 },
    { entry: 'x', name: 'unknown', label: 'not there yet', quantity: null, value: null },
  ] as const;
  const numbers = numbersOf(startingScenario, results);

  it('have names that mean nothing else in a formula', () => {
    const names = numbers.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) {
      expect(name).toMatch(/^[A-Za-z][A-Za-z\d_]*$/u);
      expect([isFunctionName(name), constantNamed(name), unitNamed(name)], name).toEqual([false, undefined, undefined]);
    }
  });

  it('are those that are set, then those that entries offer; what is set keeps its name', () => {
    expect(numbers.slice(0, 2)).toMatchObject([
      { name: 'volume', kind: 'volume', si: 0.12 },
      { name: 'strength', kind: 'strength', si: 0.095 },
    ]);
    expect(numbers.at(-1)).toMatchObject({ name: 'collected', si: 0.006 });
  });

  it('are drawn around where they stand', () => {
    expect(firstPlot('volume', numbers)).toEqual({ against: 'volume', from: '0', to: '2 * volume' });
    expect(firstPlot('strength', numbers)).toEqual({ against: 'strength', from: '1%', to: '95%' });
    expect(firstPlot('x', numbers)).toEqual({ against: 'x', from: '0', to: '1' });
  });
});

describe('a named formula', () => {
  const offered = (text: string): unknown => offeredFrom(resultsOf([text])[0]!);

  it('offers what pages have a quantity for, and bare numbers', () => {
    expect(offered('a = volume / 2')).toEqual([{ name: 'a', label: 'a', quantity: 'volume', value: 0.06 }]);
    expect(offered('a = boilingPoint(0, 1 atm)')).toMatchObject([{ quantity: 'temperature' }]);
    expect(offered('a = 2 * plates')).toEqual([{ name: 'a', label: 'a', quantity: null, value: 24 }]);
  });

  it.each(['volume / 2', 'a = heat * 1 h', 'a = volume * heat', 'a = 1 < 2', 'a(x) = x', 'a = oops'])(
    '%s offers nothing that would lose its unit or has no number',
    (text) => {
      expect(offered(text)).toEqual([]);
    },
  );
});

describe('a fault in words', () => {
  it.each([
    ['What', '', 'What.'],
    ['What', 'do this', 'What: do this.'],
    ['What', 'did you mean that?', 'What: did you mean that?'],
  ])('%s, %s: %s', (wrong, right, words) => {
    expect(faultWords({ kind: 'grammar', wrong, right, at: null, instead: null })).toBe(words);
  });
});
