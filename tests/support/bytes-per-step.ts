// What a step of a solve leaves to the garbage collector, measured in a process of its own on a bundle of the library: the
// difference between two runs that differ in their tolerance alone, over the difference in their steps.

import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import type { RunProblem } from '#lib/index.js';

const CHILD = `
const { createEthanolWater, ran } = await import(process.argv[1]);
const { getHeapStatistics } = await import('node:v8');
const system = createEthanolWater();
const bytesOf = (problem) => {
  for (let i = 0; i < 2000; i++) ran(problem, system);
  const windows = Array.from({ length: 15 }, () => {
    gc();
    const before = getHeapStatistics().used_heap_size;
    for (let i = 0; i < 8; i++) ran(problem, system);
    return (getHeapStatistics().used_heap_size - before) / 8;
  });
  return windows.sort((a, b) => a - b)[7];
};
const [coarse, fine] = process.argv.slice(2).map((text) => JSON.parse(text));
const steps = (problem) => ran(problem, system).statistics.acceptedSteps;
console.log((bytesOf(fine) - bytesOf(coarse)) / (steps(fine) - steps(coarse)));
`;

/** Bytes of garbage a step, from two problems that differ in their tolerance. */
export async function bytesPerStep(coarse: RunProblem, fine: RunProblem): Promise<number> {
  const outDir = mkdtempSync(join(tmpdir(), 'kettle-bytes-'));
  try {
    const entry = fileURLToPath(new URL('./bytes-entry.ts', import.meta.url));
    await build({
      configFile: false,
      logLevel: 'error',
      build: { lib: { entry, formats: ['es'], fileName: 'library' }, outDir, minify: false, emptyOutDir: false },
    });
    // One thread: what is compiled when, and with it what is boxed, then does not hang on what else the machine does.
    // Room for all that is left in a window: a collector that also looks at how fast the machine is does not come.
    const flags = [
      '--expose-gc',
      '--single-threaded',
      '--min-semi-space-size=64',
      '--max-semi-space-size=64',
      '--input-type=module',
      '-e',
      CHILD,
    ];
    const args = [...flags, join(outDir, 'library.js'), JSON.stringify(coarse), JSON.stringify(fine)];
    return Number(execFileSync(process.execPath, args, { encoding: 'utf8' }));
  } finally {
    rmSync(outDir, { recursive: true, force: true });
  }
}
