// Published numbers have a source that can be found (reference/README.md says what a file must hold).

import { describe, expect, it } from 'vitest';
import { filesUnder, read } from '../support/tree.js';

interface Coefficient {
  readonly name: string;
  readonly value: string;
  readonly unit: string;
}

interface Parameters {
  readonly key: string;
  readonly source: string;
  readonly coefficients: readonly Coefficient[];
  readonly constants: readonly Coefficient[];
  readonly range: readonly { quantity: string; low: string; high: string; unit: string }[];
  readonly [field: string]: unknown;
}

const required = [
  'key',
  'title',
  'equation',
  'substances',
  'coefficients',
  'constants',
  'range',
  'error',
  'source',
  'place',
  'checked',
];
const digits = /^[-+]?\d+(\.\d+)?(e[-+]?\d+)?$/i;
const sets = filesUnder('reference/parameters', /\.json$/);
const bibliography = read('reference/bibliography.bib');
const keys = [...bibliography.matchAll(/^@\w+\s*\{\s*([^,\s]+)\s*,/gm)].map((match) => match[1] ?? '');

describe.each(sets)('%s', (path) => {
  const set = JSON.parse(read(path)) as Parameters;

  it('has every field', () => {
    const empty = required.filter((field) => set[field] === undefined || set[field] === '');
    expect(empty).toEqual([]);
    expect(path).toBe(`reference/parameters/${set.key}.json`);
  });

  it('gives each number as printed digits with a unit', () => {
    const bare = [...set.coefficients, ...set.constants].filter(
      ({ name, value, unit }) => !name || typeof value !== 'string' || !digits.test(value) || !unit,
    );
    expect(bare).toEqual([]);
    expect(set.coefficients.length).toBeGreaterThan(0);
  });

  it('gives its range with units', () => {
    const bare = set.range.filter(
      ({ quantity, low, high, unit }) => !quantity || !unit || !(Number(low) <= Number(high)),
    );
    expect(bare).toEqual([]);
  });

  it('cites a source in the bibliography', () => {
    expect(keys).toContain(set.source);
  });
});

describe('the bibliography', () => {
  it('has entries, each under a key of its own', () => {
    expect(keys.length).toBeGreaterThan(0);
    expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
  });

  it('has no DOI twice', () => {
    const dois = [...bibliography.matchAll(/\bdoi\s*=\s*[{"]([^}"]+)/gi)].map((match) =>
      (match[1] ?? '').toLowerCase(),
    );
    expect(dois.filter((doi, i) => dois.indexOf(doi) !== i)).toEqual([]);
  });

  it('has no entry that nothing cites', () => {
    const texts = [
      ...filesUnder('reference').filter((path) => !path.endsWith('.bib')),
      ...['lib', 'tests', 'docs', 'explorer'].flatMap((folder) => filesUnder(folder, /\.(ts|md|mjs)$/)),
    ]
      .map(read)
      .join('\n');
    const uncited = keys.filter((key) => !citesKey(key).test(texts) && !citesAuthor(key).test(texts));
    expect(uncited).toEqual([]);
  });
});

function citesKey(key: string): RegExp {
  return new RegExp(`(?<![\\w-])${key}(?![\\w-])`);
}

/** The first author's name with the year close behind it, as a doc comment's Source: cites. */
function citesAuthor(key: string): RegExp {
  const entry = bibliography.split(/^(?=@)/m).find((text) => text.startsWith(`@`) && citesKey(key).test(text)) ?? '';
  const author = /author\s*=\s*\{+(?:Lord )?([^,{}]+)/.exec(entry)?.[1] ?? '';
  const year = /year\s*=\s*\{?(\d{4})/.exec(entry)?.[1] ?? '';
  return new RegExp(author === '' || year === '' ? '(?!)' : `\\b${author}\\b[^;]{0,250}\\b${year}\\b`);
}
