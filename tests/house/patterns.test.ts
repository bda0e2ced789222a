// No regular expression of the product can be made slow by a text: the steps of a backtracking matcher grow with the
// length of the text, not with its square. Tried are texts made for each pattern, of what it looks for, again and
// again, and something at the end that it does not: a way to find faults, no proof that there are none.

import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { patternOf, samples, type Pattern } from '../support/pattern-steps.js';
import { filesUnder, parse, walk } from '../support/tree.js';

interface Found {
  readonly where: string;
  readonly source: string;
  readonly flags: string;
}

/** Patterns of a file; one that is put together as the program runs has no source. */
function patternsIn(path: string): Found[] {
  const found: Found[] = [];
  walk(parse(path), (node) => {
    if (ts.isRegularExpressionLiteral(node)) {
      const end = node.text.lastIndexOf('/');
      found.push({ where: path, source: node.text.slice(1, end), flags: node.text.slice(end + 1) });
    }
    if (!ts.isNewExpression(node) || node.expression.getText() !== 'RegExp') return;
    const [source, flags] = node.arguments ?? [];
    const written = source !== undefined && ts.isStringLiteralLike(source) ? source.text : '';
    found.push({
      where: path,
      source: written,
      flags: flags !== undefined && ts.isStringLiteralLike(flags) ? flags.text : '',
    });
  });
  return found;
}

const most = 30_000;
/** Times a part is repeated; twice as often may take twice the steps, and somewhat more where there is little to do. */
const times = 24;
const allowed = 2.8;

/** A text that makes a pattern slow; undefined where none was found. */
function slowText(pattern: Pattern): string | undefined {
  if (!pattern.unbounded) return undefined;
  const kinds = new Map<string, string>();
  for (const character of samples) {
    const kind = pattern.atoms.map(({ accepts }) => (accepts(character) ? '1' : '0')).join('');
    if (!kinds.has(kind)) kinds.set(kind, character);
  }
  const letters = [...kinds.values()].slice(0, 8);
  const { example } = pattern;
  const cuts = Array.from({ length: Math.min(example.length, 10) + 1 }, (_, at) => at);
  const parts = cuts.flatMap((from) => [1, 2, 3, 4].map((length) => example.slice(from, from + length)));
  const pumps = new Set([...letters, ...letters.flatMap((one) => letters.map((other) => one + other)), ...parts]);
  pumps.delete('');
  for (const before of new Set(['', ...cuts.map((to) => example.slice(0, to))])) {
    for (const pump of pumps) {
      for (const after of ['', '\u0001', ' ']) {
        const text = (count: number): string => before + pump.repeat(count) + after;
        const short = pattern.steps(text(times), most);
        const grows = pattern.steps(text(2 * times), most) > allowed * short + 60;
        if (short >= most || grows) return text(3);
      }
    }
  }
  return undefined;
}

/** What only the build runs, on our own files, is not the product. */
const all = [...filesUnder('explorer', /\.ts$/), ...filesUnder('lib', /\.ts$/)]
  .filter((path) => !path.startsWith('explorer/build/'))
  .flatMap(patternsIn);

describe('a pattern that can be made slow', () => {
  it.each([
    [String.raw`\[\[([^\]]+)\]\]`, 'gu'],
    [String.raw`\s*\n\s*`, 'gu'],
    [String.raw`^(?:https?:\/\/\S*?)?#([a-z][a-z0-9-]*(?:\?\S*)?)$`, 'u'],
    [String.raw`\s+$`, 'u'],
    [String.raw`(a+)+$`, 'u'],
    [String.raw`^(a|a)*b`, 'u'],
    [String.raw`^\d*[\d.]*x`, 'u'],
    [String.raw`<[^>]*>`, 'gu'],
    [String.raw`M(\S+) (\d)`, 'gu'],
  ])('is found: /%s/%s', (source, flags) => {
    expect(slowText(patternOf(source, flags))).toBeDefined();
  });

  it.each([
    [String.raw`^[a-z][a-z0-9-]*$`, 'u'],
    [String.raw`\d+`, 'gu'],
    [String.raw`[^<>]*x?`, 'gu'],
    [String.raw`<[^<>]*>`, 'gu'],
    [String.raw`^\s*\n`, 'u'],
  ])('is not seen in one that cannot: /%s/%s', (source, flags) => {
    expect(slowText(patternOf(source, flags))).toBeUndefined();
  });
});

describe('the patterns of the product', () => {
  it('are found, and are all written out', () => {
    expect(all.length).toBeGreaterThan(50);
    expect(all.filter(({ source }) => source === '')).toEqual([]);
  });

  it('cannot be made slow by any of the texts that are tried', () => {
    const slow = all.flatMap(({ where, source, flags }) => {
      const text = slowText(patternOf(source, flags));
      return text === undefined ? [] : [`${where}: /${source}/${flags} by ${JSON.stringify(text)}`];
    });
    expect(slow).toEqual([]);
  });
});
