// A reader who types without a rest, and a browser that is killed while they do: the built explorer in a Chromium of its
// own with a profile of its own, ended by SIGKILL, started again on the same profile and read. Plain JavaScript: it also
// runs as a command, see run.mjs.

import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { chromium } from 'playwright';
import { findBrowser, launchOptions } from '../support/browser.mjs';

/** A browser that can be killed, on a profile. */
async function startBrowser(profile) {
  const { args } = launchOptions();
  const own = ['--headless=new', '--no-sandbox', '--remote-debugging-port=0', `--user-data-dir=${profile}`];
  // A group of its own: what the killed browser leaves behind is ended with it.
  const browser = spawn(findBrowser(), [...own, ...args, 'about:blank'], {
    detached: true,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  const ended = once(browser, 'exit');
  const endpoint = await endpointOf(browser);
  const connection = await chromium.connectOverCDP(endpoint);
  const [context] = connection.contexts();
  const page = context.pages()[0] ?? (await context.newPage());
  return {
    page,
    /** Ends the browser itself, which all storage goes through, and then what is left of it. */
    kill: async () => {
      process.kill(browser.pid, 'SIGKILL');
      await ended;
      try {
        process.kill(-browser.pid, 'SIGKILL');
      } catch {
        // nothing is left of it
      }
      await connection.close().catch(() => undefined);
    },
  };
}

async function endpointOf(browser) {
  let said = '';
  for await (const part of browser.stderr) {
    said += part;
    const found = /DevTools listening on (ws:\S+)/.exec(said)?.[1];
    if (found !== undefined) {
      browser.stderr.resume();
      return found;
    }
  }
  throw new Error(`The browser did not start:\n${said}`);
}

const letters = 'abcdefghijklmnopqrstuvwxyz';

/** Stands before what is typed, so that it is found again. */
const mark = 'qqqq';

/** Begins a page of one's own with a text, and begins to write it. */
async function beginText(page) {
  await page.getByRole('button', { name: 'Blank page' }).click();
  await page.getByLabel('Title', { exact: true }).press('Enter');
  await page.getByRole('button', { name: 'Add the first entry' }).click();
  await page.locator('.add-list').getByRole('button', { name: 'Text', exact: true }).click();
  await page.locator('main textarea').fill(mark);
}

/** Begins a page of one's own in a profile of its own, and says where one types and what is typed. */
export async function killable(address) {
  const profile = await mkdtemp(join(tmpdir(), 'kettle-and-plate-profile-'));
  let going;
  const start = async () => {
    going = await startBrowser(profile);
    await going.page.goto(address);
    return going.page;
  };
  const kill = async () => {
    await going?.kill();
    going = undefined;
  };
  return {
    /** Opens the explorer, types until `enough` says so, kills the browser, and tells each letter with the moment at which
     * the page had it, and the moment of the kill, ms. */
    async typeAndKill(enough) {
      const page = await start();
      await beginText(page);
      let typed = '';
      const moments = [];
      let over = false;
      const typing = (async () => {
        while (!over) {
          const letter = letters[Math.floor(Math.random() * letters.length)];
          try {
            await page.keyboard.press(letter);
          } catch {
            break; // the browser is gone
          }
          if (over) break;
          typed += letter;
          moments.push(performance.now());
        }
      })();
      await enough(page, () => typed);
      const text = typed;
      const killed_ms = performance.now();
      const done = kill();
      over = true;
      await done;
      await typing;
      return { text, moments: moments.slice(0, text.length), killed_ms };
    },
    /** What is there when the explorer is opened again. */
    async reopened() {
      const page = await start();
      const there = page.getByRole('group', { name: 'This page' }).or(page.locator('.complaint'));
      await there.first().waitFor();
      // Letters that take time to be drawn are waited for as long as the page is not drawn.
      await page.locator('main .entry').first().waitFor();
      const text = new RegExp(`${mark}([a-z]*)`).exec(await page.locator('main').innerText())?.[1] ?? '';
      await kill();
      return text;
    },
    /** Ends what still runs. */
    async remove() {
      await kill();
      await rm(profile, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}

/** How long before the kill the first letter was typed that is not there again, ms; 0 where all are. */
export function lost_ms({ text, moments, killed_ms }, there) {
  let same = 0;
  while (same < text.length && there[same] === text[same]) same += 1;
  return same === text.length ? 0 : killed_ms - moments[same];
}
