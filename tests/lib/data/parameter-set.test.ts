import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { OIML_R22 } from '#lib/data/oiml-r22.js';
import { coefficientSeries, parameterSet } from '#lib/data/parameter-set.js';
// @ts-expect-error the generator is plain JavaScript
import { dataModules, moduleOf, toSI } from '../../../reference/parameters/build-data.mjs';

const modules = (await dataModules()) as { name: string; text: string }[];
const root = new URL('../../../', import.meta.url);

describe('lib/data', () => {
  it.each(modules)('$name is what the generator writes today', ({ name, text }) => {
    expect(readFileSync(new URL(`lib/data/${name}`, root), 'utf8')).toBe(text);
  });

  it('holds nothing but the contract and generated files', () => {
    const expected = [...modules.map((module) => module.name), 'parameter-set.ts'].sort();
    expect(readdirSync(new URL('lib/data/', root)).sort()).toEqual(expected);
  });

  it('is frozen through and through', () => {
    for (const part of [OIML_R22, OIML_R22.coefficients, OIML_R22.range, OIML_R22.range.temperature]) {
      expect(Object.isFrozen(part)).toBe(true);
    }
  });

  it('cites a source that the bibliography knows', () => {
    const keys = readFileSync(new URL('reference/bibliography.bib', root), 'utf8').matchAll(/^@\w+\{([^,]+),/gm);
    const known = [...keys].map((match) => match[1]);
    expect(new Set(known).size).toBe(known.length);
    for (const name of readdirSync(new URL('reference/parameters/', root)).filter((file) => file.endsWith('.json'))) {
      const set = JSON.parse(readFileSync(new URL(`reference/parameters/${name}`, root), 'utf8')) as { source: string };
      expect(known, name).toContain(set.source);
    }
  });
});

describe('the generator', () => {
  it.each([
    ['1.5', 'cal mol-1', 6.276],
    ['58.68', 'cm3 mol-1', 58.68e-6],
    ['102640', 'J kmol-1 K-1', 102.64],
    ['15', 'degC', 288.15],
    ['789.24', 'kg m-3', 789.24],
    ['-1.2e-3', '1', -0.0012],
  ])('converts %s %s exactly', (digits, unit, si) => {
    expect(toSI('test', digits, unit)).toBe(si);
  });

  it.each([
    ['12 K', 'K'],
    ['1,5', 'K'],
    ['', 'K'],
    [1.5, 'K'],
    ['1.5', 'furlong'],
    ['1.5', ''],
    ['1.5', 'm-1x'],
  ])('refuses %s in %s', (digits, unit) => {
    expect(() => toSI('test', digits, unit) as number).toThrow();
  });

  it('refuses a set without a source or with a name that is not the file’s', async () => {
    const set = {
      ...{ key: 'a', title: 't', equation: 'e', substances: [], coefficients: [], constants: [], range: [] },
      ...{ error: 'none', source: 's', place: 'p', checked: 'c' },
    };
    await expect(moduleOf('a.json', set)).resolves.toHaveProperty('name', 'a.ts');
    await expect(moduleOf('a.json', { ...set, source: '' })).rejects.toThrow('no source');
    await expect(moduleOf('b.json', set)).rejects.toThrow('its key is a');
  });
});

describe('coefficientSeries', () => {
  it('reads the 54 coefficients of R 22 in the counts the recommendation states', () => {
    const counts = ['A', 'B', 'C1_', 'C2_', 'C3_', 'C4_', 'C5_'].map(
      (prefix) => coefficientSeries(OIML_R22, prefix).length,
    );
    expect(counts).toEqual([12, 6, 11, 10, 9, 4, 2]);
  });

  it('says so when there is no such series', () => {
    const empty = parameterSet({ ...OIML_R22, coefficients: {} });
    expect(() => coefficientSeries(empty, 'A')).toThrow("prefix is 'A'; expected a series of coefficients of oiml-r22");
  });
});
