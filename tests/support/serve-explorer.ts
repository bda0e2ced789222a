// Builds the explorer as it ships, into a folder of its own, serves it, starts the one browser that all journeys
// share, and tells them where both are.
// The build runs in a child process: inside vitest NODE_ENV is 'test' and Lit's development files would be bundled.

import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright';
import { preview } from 'vite';
import type { TestProject } from 'vitest/node';
import { launchOptions } from './browser.mjs';

declare module 'vitest' {
  interface ProvidedContext {
    /** Address of the built explorer, ending in '/'. */
    url: string;
    /** The same over plain HTTP under a name that the browser does not trust as it trusts this machine. */
    plainUrl: string;
    /** Where the browser listens. */
    browser: string;
    /** Files of parts that are loaded when first wanted, as 'assets/x.js'. */
    parts: readonly string[];
    /** Why there is no such address, or ''. */
    buildFault: string;
  }
}

const explorer = fileURLToPath(new URL('../../explorer', import.meta.url));
const vite = fileURLToPath(new URL('../../node_modules/vite/bin/vite.js', import.meta.url));

/** Any name but this machine's own: what browsers keep for HTTPS and for 127.0.0.1 is not there. */
const plainHost = 'stillhouse.test';

export default async function serveExplorer(project: TestProject): Promise<() => Promise<void>> {
  const outDir = mkdtempSync(join(tmpdir(), 'kettle-and-plate-'));
  const build = spawnSync(
    process.execPath,
    [vite, 'build', explorer, '--outDir', outDir, '--emptyOutDir', '--manifest', '--logLevel', 'warn'],
    { env: { ...process.env, NODE_ENV: 'production' }, encoding: 'utf8' },
  );
  if (build.status !== 0) {
    // Said by each journey that fails for it, so that the other projects still run and are counted.
    project.provide('url', '');
    project.provide('plainUrl', '');
    project.provide('parts', []);
    project.provide('browser', '');
    project.provide('buildFault', `The explorer does not build:\n${build.stdout}${build.stderr}`);
    rmSync(outDir, { recursive: true, force: true });
    return () => Promise.resolve();
  }
  project.provide('buildFault', '');
  project.provide('parts', partsOf(outDir));

  const server = await preview({
    root: explorer,
    configFile: join(explorer, 'vite.config.ts'),
    logLevel: 'warn',
    build: { outDir },
    preview: { host: '127.0.0.1', port: 0, open: false, allowedHosts: [plainHost] },
  });
  const url = server.resolvedUrls?.local[0];
  if (url === undefined) throw new Error('The preview server has no address.');
  project.provide('url', url);
  project.provide('plainUrl', url.replace('127.0.0.1', plainHost));
  const options = launchOptions();
  const args = [...options.args, `--host-resolver-rules=MAP ${plainHost} 127.0.0.1`];
  const browser = await chromium.launchServer({ ...options, args });
  project.provide('browser', browser.wsEndpoint());

  return async () => {
    await browser.close();
    await server.close();
    rmSync(outDir, { recursive: true, force: true });
  };
}

interface ManifestChunk {
  readonly file: string;
  readonly css?: readonly string[];
  readonly imports?: readonly string[];
}

/** Scripts and style sheets that do not come with the page itself. */
function partsOf(outDir: string): readonly string[] {
  const manifest = JSON.parse(readFileSync(join(outDir, '.vite/manifest.json'), 'utf8')) as Record<
    string,
    ManifestChunk
  >;
  const withPage = new Set<string>();
  const add = (name: string): void => {
    const { file, css = [], imports = [] } = manifest[name]!;
    if (withPage.has(file)) return;
    [file, ...css].forEach((one) => withPage.add(one));
    imports.forEach(add);
  };
  add('index.html');
  const all = readdirSync(join(outDir, 'assets')).map((name) => `assets/${name}`);
  return all.filter((name) => /\.(?:js|css)$/u.test(name) && !withPage.has(name));
}
