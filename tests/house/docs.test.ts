// Prose rots first: its links must resolve, its commands must exist, its words must be the product's own.

import { existsSync } from 'node:fs';
import { join, posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import * as lib from '#lib/index.js';
import { agrees } from '../support/doc-comments.js';
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

describe('library examples in README.md', () => {
  const examples = [...read('README.md').matchAll(/^(\w+)\(([\d., ]+)\); \/\/ → ([-\d.e]+)/gm)];

  it('are there', () => {
    expect(examples.length).toBeGreaterThan(0);
  });

  it.each(examples.map(([, name = '', args = '', printed = '']) => ({ name, args, printed })))(
    '$name($args) is $printed',
    ({ name, args, printed }) => {
      const call = (lib as unknown as Record<string, (...numbers: number[]) => unknown>)[name];
      expect(agrees(call?.(...args.split(',').map(Number)), printed)).toBe(true);
    },
  );
});

describe('decisions', () => {
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
