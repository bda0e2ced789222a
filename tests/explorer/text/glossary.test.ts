// The glossary: every word once, one line each, in words that say something; and every word a lesson opens
// is in it.

import { describe, expect, it } from 'vitest';
import { termsIn } from '../../../explorer/components/term/prose.js';
import { glossary, termOf } from '../../../explorer/text/glossary/glossary.js';
import { filesUnder, read } from '../../support/tree.js';

const terms = glossary.flatMap((part) => part.terms);
/** One line of the margin or two: longer is no line. */
const longest = 140;

describe('the glossary', () => {
  it('has some fifty words or more, each form of each only once', () => {
    const forms = terms.flatMap(({ name, also }) => [name, ...(also ?? [])]).map((form) => form.toLowerCase());
    expect(terms.length).toBeGreaterThan(50);
    expect(forms.filter((form, k) => forms.indexOf(form) !== k)).toEqual([]);
  });

  it.each(terms.map((term) => [term.name, term] as const))('explains %s in one line', (name, { means }) => {
    expect(means.length).toBeLessThanOrEqual(longest);
    expect(means).toMatch(/^[A-Z].*\.$/u);
    expect(means.toLowerCase().startsWith(name.toLowerCase())).toBe(false);
  });

  it('finds a word in any of its forms and however it is written', () => {
    expect(termOf('Reflux ratio')?.name).toBe('reflux ratio');
    expect(termOf('plates')?.name).toBe('plate');
    expect(termOf('condensed')?.name).toBe('condense');
    expect(termOf('spectrometer')).toBeUndefined();
  });

  it('holds every word that a lesson opens', () => {
    const sources = filesUnder('explorer/pages/course', /\.ts$/).map(read);
    const opened = sources.flatMap(termsIn);
    expect(opened.length).toBeGreaterThanOrEqual(15);
    expect(opened.filter((word) => termOf(word) === undefined)).toEqual([]);
  });
});
