// Measures one section of the benchmark, named by its title, and prints it as Markdown. A process of its own for each (run.mjs): code that
// was compiled for one section neither slows nor speeds another.

import * as lib from '../../dist/lib/index.js';
import { loadavg } from 'node:os';
import { SECTIONS } from './sections.mjs';

const { title, run } = SECTIONS.find((section) => section.title === process.argv[2]);
const bench = { lib, system: lib.createEthanolWater(), activity: lib.DEFAULT_ACTIVITY };
const today = new Date().toISOString().slice(0, 10);
const begun = `${today}, load average ${loadavg()[0].toFixed(1)}.`;
console.log(`## ${title}\n\n${begun}\n\n${(await run(bench)).join('\n\n')}`);
