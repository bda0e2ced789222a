// npm run mutants [-- part of a name]: tries every mutant on the tests in Node, says which are noticed, and ends with an
// error where one without a reason is not. Those that should notice are asked first, then all.

import { spawn } from 'node:child_process';
import { argv, env, execPath, exit, stdout } from 'node:process';
import { fileURLToPath } from 'node:url';
import { createServer } from 'vite';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const server = await createServer({
  configFile: false,
  root: here('../..'),
  server: { middlewareMode: true },
  appType: 'custom',
  logLevel: 'error',
});
const { mutants } = await server.ssrLoadModule(here('list.ts'));
await server.close();

/** Whether the tests pass with a mutant in the code. */
const pass = (number, paths) =>
  new Promise((resolve, reject) => {
    const words = [
      'run',
      '--config',
      here('../vitest.config.ts'),
      '--project',
      'unit',
      '--bail',
      '1',
      '--passWithNoTests',
    ];
    const child = spawn(execPath, [here('../../node_modules/vitest/vitest.mjs'), ...words, ...paths], {
      env: { ...env, MUTANT: String(number) },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let said = '';
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (part) => (said += String(part)));
    child.on('close', (code) => {
      // Where no test failed the run itself went wrong, and says nothing of the mutant.
      const failed = Number(/^tests: \d+ passed, (\d+) failed/mu.exec(said)?.[1] ?? Number.NaN);
      if (Number.isNaN(failed)) reject(new Error(`The tests did not run:\n${said}`));
      else resolve(code === 0 && failed === 0);
    });
  });

const wanted = argv[2] ?? '';
const tried = mutants
  .map((mutant, number) => ({ ...mutant, number }))
  .filter(({ name, file }) => `${file} ${name}`.includes(wanted));
const alive = [];
for (const { name, file, number, tests, survives } of tried) {
  const survived = (await pass(number, tests)) && (await pass(number, []));
  if (survived) alive.push({ name, survives });
  stdout.write(
    `${survived ? 'ALIVE  ' : 'noticed'}  ${file}: ${name}${survived && survives ? ` (${survives})` : ''}\n`,
  );
}
const noticed = tried.length - alive.length;
stdout.write(
  `${String(noticed)} of ${String(tried.length)} mutants noticed, ${((100 * noticed) / tried.length).toFixed(0)} %\n`,
);
if (alive.some(({ survives }) => survives === undefined)) exit(1);
