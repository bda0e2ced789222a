// Runs scripts of package.json side by side and says of each what it said, whole, as soon as it ends:
// node tests/support/side-by-side.mjs types lint. Ends with an error where one of them did.

import { Buffer } from 'node:buffer';
import { spawn } from 'node:child_process';
import { argv, exit, platform, stdout } from 'node:process';

const ended = await Promise.all(
  argv.slice(2).map(
    (name) =>
      new Promise((resolve) => {
        const began = performance.now();
        const said = [];
        const child = spawn('npm', ['run', '--silent', name], {
          stdio: ['ignore', 'pipe', 'pipe'],
          shell: platform === 'win32',
        });
        for (const stream of [child.stdout, child.stderr]) stream.on('data', (part) => said.push(part));
        child.on('close', (code) => {
          const took_s = ((performance.now() - began) / 1000).toFixed(0);
          stdout.write(`\n${name}: ${code === 0 ? 'passed' : 'FAILED'} in ${took_s} s\n`);
          stdout.write(said.length === 0 ? '' : Buffer.concat(said.map((part) => Buffer.from(part))));
          resolve(code === 0);
        });
      }),
  ),
);
if (ended.includes(false)) exit(1);
