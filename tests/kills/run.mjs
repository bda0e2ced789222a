// npm run kills: kills the browser 50 times at random moments while a reader types without a rest, and tells how much
// typing was lost each time. At most a second may be. `-- 10` kills ten times.

import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { argv, exit, stdout } from 'node:process';
import { setTimeout as pause } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { preview } from 'vite';
import { killable, lost_ms } from './killed.mjs';

const kills = Number(argv[2] ?? 50);
const most_ms = 1000;
const explorer = fileURLToPath(new URL('../../explorer', import.meta.url));
const vite = fileURLToPath(new URL('../../node_modules/vite/bin/vite.js', import.meta.url));

const outDir = mkdtempSync(join(tmpdir(), 'kettle-and-plate-'));
const built = spawnSync(
  process.execPath,
  [vite, 'build', explorer, '--outDir', outDir, '--emptyOutDir', '--logLevel', 'warn'],
  {
    stdio: 'inherit',
  },
);
if (built.status !== 0) exit(1);
const server = await preview({
  root: explorer,
  configFile: join(explorer, 'vite.config.ts'),
  logLevel: 'warn',
  build: { outDir },
  preview: { host: '127.0.0.1', port: 0, open: false },
});
const address = `${server.resolvedUrls.local[0]}#page-1`;

const lost = [];
try {
  for (let kill = 1; kill <= kills; kill++) {
    const browser = await killable(address);
    try {
      const typed = await browser.typeAndKill(() => pause(500 + 6000 * Math.random()));
      const there = await browser.reopened();
      lost.push(lost_ms(typed, there));
      stdout.write(
        `kill ${String(kill)}: ${String(typed.text.length)} letters typed, ${String(there.length)} there, ${lost.at(-1).toFixed(0)} ms lost\n`,
      );
    } finally {
      await browser.remove();
    }
  }
} finally {
  await server.close();
  rmSync(outDir, { recursive: true, force: true });
}
lost.sort((a, b) => a - b);
stdout.write(
  `${String(lost.length)} kills: median ${lost[Math.floor(lost.length / 2)].toFixed(0)} ms, most ${lost.at(-1).toFixed(0)} ms lost; at most ${String(most_ms)} may be\n`,
);
exit(lost.at(-1) <= most_ms ? 0 : 1);
