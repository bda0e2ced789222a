// npm run bench: times with their errors, on the built library. A time without an error is no result.
// Words after it choose sections by their title and only print: `npm run bench -- yardstick`.

import * as lib from '../../dist/lib/index.js';
import { writeFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import { SECTIONS } from './sections.mjs';

const bench = { lib, system: lib.createEthanolWater(), activity: lib.DEFAULT_ACTIVITY };
const asked = process.argv.slice(2).map((word) => word.toLowerCase());
const chosen = SECTIONS.filter(({ title }) => asked.every((word) => title.toLowerCase().includes(word)));

const page = [
  `# Benchmarks

Written by \`npm run bench\`; do not edit. ${new Date().toISOString().slice(0, 10)}, Node ${process.versions.node}, ${cpus()[0].model}, ${cpus().length} cores. Times are after warm-up, in ms: the median of many, and the least, which other work on the machine disturbs least. Errors and counts do not move. Load average when it began: ${loadavg()[0].toFixed(1)}.
`,
];
for (const { title, run } of chosen) {
  const text = `## ${title}\n\n${(await run(bench)).join('\n\n')}\n`;
  console.log(text);
  page.push(text);
}
if (asked.length === 0) writeFileSync(new URL('../../docs/benchmarks.md', import.meta.url), page.join('\n'));
