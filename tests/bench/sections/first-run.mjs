// The first run in a fresh process: what compiling the tables costs it, and what is left after warm().

import { execFileSync } from 'node:child_process';
import { table } from '../timing.mjs';

export const firstRun = { title: 'First run of a process', run };

const library = new URL('../../../dist/lib/index.js', import.meta.url).href;
const program = (before) => `
  import { solve, warm } from ${JSON.stringify(library)};
  const cpu = () => { const { user, system } = process.cpuUsage(); return (user + system) / 1000; };
  ${before}
  const from = cpu();
  const still = { kettle: { volume_m3: 0.1 } };
  const charge = { kind: 'volume', volume_m3: 0.06, strength: 0.1 };
  solve({ still, charge, sheet: [{ reflux: 'none', until: [{ kind: 'alcoholLeftBelow', share: 0.5 }] }] });
  console.log(cpu() - from);
`;

const median = (numbers) => numbers.sort((a, b) => a - b)[numbers.length >> 1];

function run() {
  const cpu_ms = (before) =>
    median(
      Array.from({ length: 9 }, () =>
        Number(execFileSync(process.execPath, ['--input-type=module', '-e', program(before)], { encoding: 'utf8' })),
      ),
    );
  const rows = [
    ['as it is', cpu_ms('')],
    ['after warm()', cpu_ms('warm();')],
  ];
  return [
    'A pot of 60 L by the full model, from lighting up, in a process that has run nothing: CPU time, median of nine; goal 50 ms after `warm()`.',
    '',
    table(
      ['', 'CPU, ms'],
      rows.map(([name, ms]) => [name, ms.toFixed(0)]),
    ),
  ];
}
