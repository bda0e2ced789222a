// Four kinds of test: `unit` in Node, `browser` for single elements in Chromium, `journeys` for whole
// paths through the built explorer, `package` for the library as it is taken away. No retries: a test that fails now and then is a bug.

import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { playwright } from '@vitest/browser-playwright';
import { defineConfig } from 'vitest/config';
import { launchOptions } from './support/browser.mjs';
import { mutantPlugin } from './mutants/plugin.js';
import { patience_ms, slowness, wholeTest_ms } from './support/patience.js';

declare module 'vitest' {
  interface ProvidedContext {
    /** The limits of support/patience.ts, for tests that have no access to the process. */
    patience_ms: number;
    slowness: number;
  }
}

// Numbers are written as the reader's system writes them; the tests read them as an English one does.
process.env.LC_ALL = 'en_GB.UTF-8';

const inBrowser = '**/*.browser.test.ts';
const noBenchmarks = { include: [] };
const support = (name: string): string => fileURLToPath(new URL(`support/${name}.ts`, import.meta.url));
const limits = { testTimeout: wholeTest_ms, hookTimeout: wholeTest_ms, teardownTimeout: wholeTest_ms };

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  plugins: mutantPlugin(),
  test: {
    reporters: ['default', support('closing-line')],
    provide: { patience_ms, slowness },
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
          setupFiles: [support('leaves-nothing')],
          ...limits,
        },
      },
      {
        extends: true,
        // Found late; without this a cold cache reloads the page in the middle of a test.
        optimizeDeps: {
          include: [
            'axe-core',
            '@observablehq/plot',
            'd3-dsv',
            'fast-check',
            'lit',
            'lit/directives/keyed.js',
            'lit/directives/live.js',
            'lit/directives/repeat.js',
            'mathjs',
            'valibot',
          ],
        },
        test: {
          name: 'browser',
          include: [`tests/explorer/${inBrowser}`],
          benchmark: noBenchmarks,
          setupFiles: [support('leaves-nothing'), support('leaves-no-page')],
          ...limits,
          browser: {
            enabled: true,
            connectTimeout: wholeTest_ms,
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
          // After the others, which keep all processors busy.
          sequence: { groupOrder: 1 },
          include: ['tests/journeys/**/*.test.ts'],
          benchmark: noBenchmarks,
          globalSetup: support('serve-explorer'),
          setupFiles: [support('leaves-nothing')],
          ...limits,
        },
      },
      {
        extends: true,
        test: {
          name: 'package',
          environment: 'node',
          sequence: { groupOrder: 1 },
          include: ['tests/package/**/*.test.ts'],
          benchmark: noBenchmarks,
          ...limits,
        },
      },
    ],
    retry: 0,
    // All processors, and two where there is one: tests in a browser wait for it more than they work.
    maxWorkers: Math.max(2, availableParallelism()),
    expect: { requireAssertions: true, poll: { timeout: patience_ms } },
    // Worker files stay thin: what runs in a worker never shows here.
    coverage: { include: ['lib/**/*.ts', 'explorer/**/*.ts'], reporter: ['text-summary', 'html'] },
  },
});
