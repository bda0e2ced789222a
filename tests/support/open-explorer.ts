// For journeys: the built explorer in a real browser. Call `explorerInBrowser()` once in a test file;
// it joins the browser that all journeys share and hands out fresh pages, each for one test, that note everything
// that goes wrong.

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults, RunOptions } from 'axe-core';
import { type Browser, type BrowserContext, type BrowserContextOptions, chromium, type Page } from 'playwright';
import { afterAll, afterEach, beforeAll, inject } from 'vitest';

export interface OpenPage {
  readonly page: Page;
  /** Errors on the console, exceptions, failed requests, requests to anywhere else and whatever the content policy
   * refuses, as they happen. */
  readonly problems: readonly string[];
}

export interface ExplorerBrowser {
  /** Opens the explorer at an address below its root, for instance '#the-ceiling'; at another host where one is given. */
  open(address?: string, options?: BrowserContextOptions & { readonly host?: string }): Promise<OpenPage>;
}

export function explorerInBrowser(): ExplorerBrowser {
  let browser: Browser | undefined;
  beforeAll(async () => {
    if (inject('buildFault') === '') browser = await chromium.connect(inject('browser'));
  });
  afterEach(async () => {
    await Promise.all((browser?.contexts() ?? []).map((context) => context.close()));
  });
  afterAll(async () => {
    await browser?.close();
  });
  return {
    async open(address = '', { host = inject('url'), ...options } = {}) {
      if (inject('buildFault') !== '') throw new Error(inject('buildFault'));
      if (browser === undefined) throw new Error('open() is for use inside a test');
      const context = await browser.newContext({
        viewport: { width: 1440, height: 900 },
        locale: 'en-GB',
        // Only a journey that goes offline wants the service worker to fetch everything.
        serviceWorkers: 'block',
        ...options,
      });
      context.setDefaultTimeout(inject('patience_ms'));
      context.on('page', (each) => void slowDown(context, each));
      const page = await context.newPage();
      await slowDown(context, page);
      const problems = noteProblems(page, host);
      await page.addInitScript(tellOfRefusals);
      await page.goto(host + address);
      return { page, problems };
    },
  };
}

/** Makes a page as slow as the tests are told to (support/patience.ts). */
async function slowDown(context: BrowserContext, page: Page): Promise<void> {
  const rate = inject('slowness');
  if (rate === 1) return;
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate });
}

/** What axe finds wrong on a page, one line a rule, sizes of targets included; empty when nothing is. */
export function accessibilityFaults(page: Page): Promise<string[]> {
  return faults(page, { rules: { 'target-size': { enabled: true } } });
}

/** What axe finds wrong with the colours alone, which are all that differs by night. */
export function contrastFaults(page: Page): Promise<string[]> {
  return faults(page, { runOnly: { type: 'rule', values: ['color-contrast'] } });
}

async function faults(page: Page, options: RunOptions): Promise<string[]> {
  await page.evaluate(readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8'));
  const results = await page.evaluate<AxeResults>(`axe.run(${JSON.stringify(options)})`);
  return results.violations.map((rule) => `${rule.id}: ${rule.nodes.map((node) => node.target.join(' ')).join(', ')}`);
}

/** On the page: says on the console what the content policy refused, whether the browser does so or not. */
function tellOfRefusals(): void {
  addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) => {
    console.error(`refused by ${violatedDirective}: ${blockedURI}`);
  });
}

function noteProblems(page: Page, home: string): string[] {
  const problems: string[] = [];
  page.on('console', (message) => {
    // The tests' server sends one set of headers by either of its names; over plain HTTP this one means nothing.
    if (message.text().startsWith('The Cross-Origin-Opener-Policy header has been ignored')) return;
    if (message.type() === 'error') problems.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => problems.push(`exception: ${error.message}`));
  page.on('requestfailed', (request) => {
    // What was still on its way when the page was left is no fault.
    if (request.failure()?.errorText !== 'net::ERR_ABORTED') problems.push(`failed: ${request.url()}`);
  });
  page.on('response', (response) => {
    if (response.status() >= 400) problems.push(`status ${String(response.status())}: ${response.url()}`);
  });
  page.on('request', (request) => {
    if (!/^(data|blob):/.test(request.url()) && !request.url().startsWith(home)) {
      problems.push(`elsewhere: ${request.url()}`);
    }
  });
  return problems;
}
