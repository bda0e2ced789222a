// Three kinds of test: `unit` in Node, `browser` for single elements in Chromium, `journeys` for whole
// paths through the built explorer. No retries: a test that fails now and then is a bug.

import { fileURLToPath } from 'node:url';
import { playwright } from '@vitest/browser-playwright';
import { defineConfig } from 'vitest/config';
import { launchOptions } from './support/browser.mjs';

// Numbers are written as the reader's system writes them; the tests read them as an English one does.
process.env.LC_ALL = 'en_GB.UTF-8';

const inBrowser = '**/*.browser.test.ts';
const noBenchmarks = { include: [] };

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    reporters: ['default', fileURLToPath(new URL('support/closing-line.ts', import.meta.url))],
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          environment: 'node',
          // These tests are pure and share nothing, so files may share a worker: a third of the time.
          isolate: false,
          include: ['tests/{lib,laws,house,explorer,reference}/**/*.test.ts'],
          exclude: [inBrowser],
          benchmark: noBenchmarks,
          testTimeout: 20_000,
        },
      },
      {
        extends: true,
        // Found late; without this a cold cache reloads the page in the middle of a test.
        optimizeDeps: {
          include: [
            'axe-core',
            'comlink',
            'd3-format',
            'd3-scale',
            'd3-shape',
            'lit',
            'lit/directives/keyed.js',
            'lit/directives/live.js',
            'lit/directives/repeat.js',
            'mathjs',
          ],
        },
        test: {
          name: 'browser',
          include: [`tests/explorer/${inBrowser}`],
          benchmark: noBenchmarks,
          testTimeout: 20_000,
          browser: {
            enabled: true,
            headless: true,
            screenshotFailures: false,
            provider: playwright({ launchOptions: launchOptions(), contextOptions: { locale: 'en-GB' } }),
            instances: [{ browser: 'chromium' }],
          },
        },
      },
      {
        extends: true,
        test: {
          name: 'journeys',
          environment: 'node',
          // Journeys wait for the browser more than they work. They come after the others: a project with workers of its own needs a turn of its own.
          maxWorkers: 2,
          sequence: { groupOrder: 1 },
          include: ['tests/journeys/**/*.test.ts'],
          benchmark: noBenchmarks,
          globalSetup: fileURLToPath(new URL('support/serve-explorer.ts', import.meta.url)),
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
    ],
    retry: 0,
    // Far more than anything takes, for slow machines.
    expect: { requireAssertions: true, poll: { timeout: 10_000 } },
    // Worker files stay thin: what runs in a worker never shows here.
    coverage: { include: ['lib/**/*.ts', 'explorer/**/*.ts'], reporter: ['text-summary', 'html'] },
  },
});
