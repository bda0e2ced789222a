// The built explorer carries the licences of what it ships, and the page leads to them. What it ships is read from the
// maps of the built files.

import { describe, expect, inject, it } from 'vitest';
import { listedFiles } from '../support/next-version.js';
import { explorerInBrowser } from '../support/open-explorer.js';
import { read } from '../support/tree.js';

const explorer = explorerInBrowser();
const fonts = ['@fontsource-variable/stix-two-text', '@fontsource-variable/source-sans-3'];

/** Packages whose files are in the built scripts. */
async function shipped(): Promise<readonly string[]> {
  const names = (await listedFiles(inject('url'))).map(([name]) => name).filter((name) => name.endsWith('.js'));
  const sources = await Promise.all(
    names.map(async (name) => {
      const answer = await fetch(`${inject('url')}${name}.map`);
      // Files of one line that only hand on have no map.
      if (answer.headers.get('content-type')?.includes('json') !== true) return [];
      return ((await answer.json()) as { sources: string[] }).sources;
    }),
  );
  const packages = sources.flat().flatMap((source) => /node_modules\/((?:@[^/]+\/)?[^/]+)/u.exec(source)?.[1] ?? []);
  return [...new Set(packages)];
}

describe('licences', () => {
  it('of everything that ships are one press away, with their texts', async () => {
    const { page } = await explorer.open('#words');
    await page.getByRole('link', { name: 'Licences' }).click();
    await page.waitForURL(`${inject('url')}licences.txt`);
    const text = await page.locator('body').innerText();
    const lock = JSON.parse(read('package-lock.json')) as {
      packages: Record<string, { version: string; license?: string }>;
    };
    const packages = [...(await shipped()), ...fonts];
    expect(packages).toContain('lit-html');
    expect(packages).toContain('mathjs');
    for (const name of packages) {
      const { version, license = '' } = lock.packages[`node_modules/${name}`]!;
      const at = text.indexOf(`\n${name} ${version} (${license})\n`);
      expect([name, at]).toEqual([name, expect.toSatisfy((place: number) => place > 0)]);
      const own = text.slice(at).split(/\n-{80}\n/u, 1)[0]!;
      expect([name, own]).toEqual([
        name,
        expect.stringMatching(/copyright[^]*(permission|redistribution|licensed? under|terms and conditions)/iu),
      ]);
    }
  });
});
