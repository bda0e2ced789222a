// What a hand feels of the built explorer in Chromium: a value dragged for five seconds on every page, the first figure from a cold start,
// bytes of script before it, memory over a thousand changes.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { openBuiltExplorer } from '../page/explorer.mjs';
import { latencies, longTasks, missedFrames, quantile } from '../page/reading.mjs';
import { watchPage } from '../page/watch.mjs';
import { table } from '../timing.mjs';

/** Pages, and the number that is dragged on each. */
const PAGES = [
  ['the-ceiling', 'plates'],
  ['one-charge-three-stills', 'plates'],
  ['the-doubler', 'strength of the doubler’s charge'],
  ['the-stills-limits', null],
  ['what-boils', null],
  ['one-plate-more', null],
  ['reflux', null],
  ['why-it-stops', null],
];
const DRAG_MS = 5000;
const STEP_PX = 6;
const REACH_STEPS = 15;
const CHANGES = 1000;
/** The engine keeps code and counters of what has run; they are there after so many. */
const WARM_UP_CHANGES = 600;

export const page = { title: 'On the page', run };

async function run() {
  const explorer = await openBuiltExplorer();
  try {
    const drags = [];
    const starts = [];
    for (const [name, label] of PAGES) {
      drags.push(await dragRow(explorer, name, label));
      starts.push(await startRow(explorer, name));
    }
    return [
      'The built explorer in Chromium, 1440 by 900. On each page a value is dragged for 5 s, to and fro by 15 steps, a step at every move of the pointer. Latency: from the input to the last write to the DOM that belongs to it, worker included, the number under the hand itself apart; goals 12 ms at the median, 40 ms at the 98th percentile. Script and layout an answer: time of the page’s thread in scripts, in styles and layout, over the number of answers shown, ms. Frames missed: goal at most one. Long tasks (over 50 ms on the page’s thread): goal none.',
      table(
        [
          'page',
          'dragged',
          'answers',
          'median, ms',
          '98 %, ms',
          'script an answer',
          'layout an answer',
          'frames missed',
          'long tasks, ms',
        ],
        drags,
      ),
      'Cold start: nothing cached, the processor slowed down four times by the browser; goal 1000 ms. Script before the first figure, gzip; goal 125 kB.',
      table(['page', 'first figure, ms', 'script, kB'], starts),
      `Memory over ${CHANGES} changes of the number of plates on the first page, after ${WARM_UP_CHANGES} to warm up and after collection; goal: flat.`,
      table(['changes', 'heap, kB', 'DOM nodes', 'listeners'], await memoryRows(explorer)),
    ];
  } finally {
    await explorer.close();
  }
}

async function opened({ browser, url }, name) {
  const context = await browser.newContext({
    viewport: { width: 1440, height: 900 },
    locale: 'en-GB',
    serviceWorkers: 'block',
  });
  const tab = await context.newPage();
  await tab.addInitScript(watchPage);
  const devtools = await context.newCDPSession(tab);
  return { tab, devtools, context, open: () => tab.goto(`${url}#${name}`) };
}

async function blankOf(tab, label) {
  const blanks = tab.locator('main').getByRole('spinbutton', label === null ? {} : { name: label, exact: true });
  await blanks.first().waitFor();
  return blanks.first();
}

async function dragRow(explorer, name, label) {
  const { tab, devtools, context, open } = await opened(explorer, name);
  await open();
  await tab.locator('main figure svg path').first().waitFor();
  const blank = await blankOf(tab, label);
  await blank.scrollIntoViewIfNeeded();
  await tab.waitForTimeout(1500); // what a page asks for after its first figure
  const { x, y, width, height } = await blank.boundingBox();
  const [cx, cy] = [x + width / 2, y + height / 2];
  await tab.mouse.move(cx, cy);
  await tab.mouse.down();
  // Half a second to warm up, then the five.
  await drag(tab, cx, cy, 500);
  await devtools.send('Performance.enable');
  const before = await busy(devtools);
  const from = await tab.evaluate(() => performance.now());
  await drag(tab, cx, cy, DRAG_MS);
  const after = await busy(devtools);
  const to = await tab.evaluate(() => performance.now());
  await tab.waitForTimeout(300);
  await tab.mouse.up();
  const notes = await tab.evaluate(() => globalThis.benchNotes);
  const said = await blank.getAttribute('aria-label');
  await context.close();
  const felt = latencies(notes, from, to);
  const long = longTasks(notes, from, to);
  return [
    name,
    label ?? said ?? 'first number',
    felt.length,
    quantile(felt, 0.5).toFixed(1),
    quantile(felt, 0.98).toFixed(1),
    ...['ScriptDuration', 'StyleAndLayout'].map((key) =>
      ((after[key] - before[key]) / Math.max(1, felt.length)).toFixed(1),
    ),
    missedFrames(notes, from, to),
    long.length === 0 ? 'none' : `${long.length}, up to ${Math.max(...long).toFixed(0)}`,
  ];
}

/** What the page's thread has done so far, ms. */
async function busy(devtools) {
  const { metrics } = await devtools.send('Performance.getMetrics');
  const of = (key) => 1000 * metrics.find((one) => one.name === key).value;
  return { ScriptDuration: of('ScriptDuration'), StyleAndLayout: of('RecalcStyleDuration') + of('LayoutDuration') };
}

/** To and fro by so many steps, one at each move, for so long; a move waits for the next frame. */
async function drag(tab, x, y, ms) {
  const end = Date.now() + ms;
  for (let step = 0, way = 1; Date.now() < end; step += way) {
    if (Math.abs(step + way) > REACH_STEPS) way = -way;
    await tab.mouse.move(x + STEP_PX * step + 1, y);
    await tab.evaluate(() => new Promise((done) => globalThis.requestAnimationFrame(done)));
  }
}

async function startRow(explorer, name) {
  const { tab, devtools, context, open } = await opened(explorer, name);
  await devtools.send('Network.enable');
  await devtools.send('Network.setCacheDisabled', { cacheDisabled: true });
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  const scripts = [];
  tab.on('request', (request) => {
    if (/\.js$/.test(new URL(request.url()).pathname)) scripts.push([request.url(), Date.now()]);
  });
  await open();
  await tab.waitForFunction(() => globalThis.benchNotes.firstFigure !== null, null, { polling: 50 });
  const { first, origin } = await tab.evaluate(() => ({
    first: globalThis.benchNotes.firstFigure,
    origin: performance.timeOrigin,
  }));
  await context.close();
  const before = new Set(scripts.filter(([, time]) => time <= origin + first).map(([address]) => address));
  const bytes = [...before].reduce((sum, address) => sum + gzipped(explorer, address), 0);
  return [name, first.toFixed(0), (bytes / 1024).toFixed(0)];
}

function gzipped({ outDir }, address) {
  return gzipSync(readFileSync(join(outDir, new URL(address).pathname))).length;
}

async function memoryRows(explorer) {
  const { tab, devtools, context, open } = await opened(explorer, 'the-ceiling');
  await open();
  await tab.locator('main figure svg path').first().waitFor();
  const blank = await blankOf(tab, 'plates');
  const rows = [];
  await devtools.send('Performance.enable');
  const read = async (changes) => {
    await tab.waitForTimeout(500);
    // The bench's own notes are not the page's memory.
    await tab.evaluate(() => Object.values(globalThis.benchNotes).forEach((list) => list?.splice?.(0)));
    await devtools.send('HeapProfiler.collectGarbage');
    const { metrics } = await devtools.send('Performance.getMetrics');
    const of = (key) => metrics.find((one) => one.name === key).value;
    rows.push([changes, (of('JSHeapUsedSize') / 1024).toFixed(0), of('Nodes'), of('JSEventListeners')]);
  };
  await blank.focus();
  const change = (i) => tab.keyboard.press(i % 20 < 10 ? 'ArrowUp' : 'ArrowDown');
  for (let i = 0; i < WARM_UP_CHANGES; i++) await change(i);
  await read(0);
  for (let i = 0; i < CHANGES; i++) {
    await change(i);
    if (i === CHANGES / 2 - 1) await read(CHANGES / 2);
  }
  await read(CHANGES);
  await context.close();
  return rows;
}
