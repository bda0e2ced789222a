// Prose rots first: its links must resolve, its commands must exist, its words must be the product's own.

import { existsSync } from 'node:fs';
import { join, posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import * as lib from '#lib/index.js';
import { filesUnder, read, root } from '../support/tree.js';

const pages = ['README.md', 'DEVELOPERS.md', ...filesUnder('docs', /\.md$/), ...filesUnder('reference', /\.md$/)];
const { scripts } = JSON.parse(read('package.json')) as { scripts: Record<string, string> };
const npmOwn = new Set(['ci', 'cit', 'install', 'i', 'run', 'exec', 'pack', 'ls']);

describe.each(pages)('%s', (page) => {
  it('has links and anchors that resolve', () => {
    const links = [...prose(page).matchAll(/\]\(([^)\s]+)(?:\s+"[^"]*")?\)/g)].map((match) => match[1] ?? '');
    expect(links.filter((link) => !resolves(page, link))).toEqual([]);
  });

  it('names npm scripts that exist', () => {
    const named = [...read(page).matchAll(/(?<=^|`|&& )npm (?:run (?:-s )?)?([a-z][\w:-]*)/gm)].map(
      (match) => match[1] ?? '',
    );
    expect(named.filter((name) => !npmOwn.has(name) && !(name in scripts))).toEqual([]);
  });
});

describe('README.md', () => {
  it('opens with two commands that package.json knows', () => {
    const blocks = [...read('README.md').matchAll(/^```sh\n([\s\S]*?)^```/gm)].map((match) => match[1]?.trim());
    expect(blocks).toEqual(['npm ci && npm start', 'npm cit']);
    expect(Object.keys(scripts)).toEqual(expect.arrayContaining(['start', 'test', 'pretest']));
  });
});

describe('library example in README.md', () => {
  const block = /```ts\n([\s\S]*?)```/.exec(read('README.md'))?.[1] ?? '';
  const code = block
    .replace(/^import .*$/m, '')
    .replace(
      /^(.+); \/\/ → (.+)$/gm,
      (_line, call: string, shown: string) => `shown.push([${call}, ${JSON.stringify(shown)}]);`,
    );
  const shown: [unknown, string][] = [];
  // The block is our own text; running it is the point.
  // eslint-disable-next-line @typescript-eslint/no-implied-eval
  new Function('shown', ...Object.keys(lib), code)(shown, ...Object.values(lib));

  it('shows several results', () => expect(shown.length).toBeGreaterThan(4));

  it.each(shown)('gives %s where it says %s', (value, text) => {
    const printed = /^'(.*)'|^(-?[\d.]+)/.exec(text);
    if (typeof value === 'string') expect(value).toBe(printed?.[1]);
    else expect(Number(value).toFixed(printed?.[2]?.split('.')[1]?.length ?? 0)).toBe(printed?.[2]);
  });
});

describe('decisions', () => {
  const files = filesUnder('docs/decisions', /\.md$/);

  it('are numbered from 1 without gaps, in name and title', () => {
    const numbers = files.map((page) => Number(/(\d{4})-/.exec(page)?.[1])).sort((a, b) => a - b);
    expect(numbers).toEqual(files.map((_page, k) => k + 1));
    expect(files.filter((page) => !read(page).startsWith(`# ${String(Number(/(\d{4})-/.exec(page)?.[1]))}. `))).toEqual(
      [],
    );
  });

  it('are indexed each with its title, in order', () => {
    const listed = [...read('docs/index.md').matchAll(/^- \[(.+)\]\(decisions\/(.+)\)$/gm)].map(([, title, file]) => [
      title,
      file,
    ]);
    const titled = files.map((page) => [/^# (.+)$/m.exec(read(page))?.[1], posix.basename(page)]);
    expect(listed).toEqual(titled.sort(([, a], [, b]) => (a! < b! ? -1 : 1)));
  });

  it.each(filesUnder('docs/decisions', /\.md$/))('%s is dated and has its four headings', (page) => {
    const text = read(page);
    expect(text).toMatch(/^Date: \d{4}-\d{2}-\d{2}$/m);
    expect([...text.matchAll(/^## (.+)$/gm)].map((match) => match[1])).toEqual([
      'Context',
      'Decision',
      'Why',
      'Consequences',
    ]);
  });
});

describe('every file', () => {
  // Written so that this file does not match itself.
  const strangers =
    /\/wor[k]\/|\/far[m]\/|\/tm[p]\/|\.\.\/share[d]\b|\bseed documen[t]\b|\btranscrip[t]\b|\bsubagen[t]\b/i;

  it('is free of paths and words that are not the product’s', () => {
    const texts = filesUnder('.', /\.(ts|mts|js|mjs|md|json|css|html|py|csv|bib|c|sh)$|^run$/);
    expect(texts).toContain('package.json');
    expect(texts.filter((path) => strangers.test(read(path)))).toEqual([]);
  });
});

function resolves(page: string, link: string): boolean {
  if (/^[a-z]+:/.test(link)) return true;
  const [path = '', anchor] = link.split('#');
  const file = path === '' ? page : posix.join(posix.dirname(page), path);
  if (!existsSync(join(root, file))) return false;
  return anchor === undefined || anchorsOf(file).includes(anchor);
}

/** Anchors of a page's headings, as the usual Markdown readers make them. */
function anchorsOf(page: string): string[] {
  return [...prose(page).matchAll(/^#+ (.+)$/gm)].map((match) =>
    (match[1] ?? '')
      .toLowerCase()
      .replace(/[^\p{L}\p{N}\s_-]/gu, '')
      .trim()
      .replace(/\s/g, '-'),
  );
}

/** A page without its code. */
function prose(page: string): string {
  return read(page)
    .replace(/^```[\s\S]*?^```/gm, '')
    .replace(/`[^`\n]*`/g, (code) => code.replace(/[()[\]#]/g, ''));
}
