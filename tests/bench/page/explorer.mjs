// The built explorer on localhost and a browser to look at it with; both end with `close`.

import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright';
import { preview } from 'vite';
import { launchOptions } from '../../support/browser.mjs';

const root = fileURLToPath(new URL('../../../explorer', import.meta.url));
const vite = fileURLToPath(new URL('../../../node_modules/vite/bin/vite.js', import.meta.url));

/** Builds, serves, opens a browser. */
export async function openBuiltExplorer() {
  const outDir = mkdtempSync(join(tmpdir(), 'kettle-bench-page-'));
  const options = ['build', root, '--outDir', outDir, '--emptyOutDir', '--logLevel', 'warn'];
  const build = spawnSync(process.execPath, [vite, ...options], { encoding: 'utf8' });
  if (build.status !== 0) throw new Error(`The explorer does not build:\n${build.stdout}${build.stderr}`);
  const server = await preview({
    root,
    configFile: join(root, 'vite.config.ts'),
    logLevel: 'warn',
    build: { outDir },
    preview: { host: '127.0.0.1', port: Number(process.env.PORT ?? 0), open: false },
  });
  const browser = await chromium.launch(launchOptions());
  return {
    url: server.resolvedUrls.local[0],
    outDir,
    browser,
    close: async () => {
      await browser.close();
      await server.close();
      rmSync(outDir, { recursive: true, force: true });
    },
  };
}
