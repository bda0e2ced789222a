// npm run bench: times with their errors, on the built library. A time without an error is no result.
// Words after it choose sections by their title and only print, `npm run bench -- yardstick`; with --write they take the place of the same
// sections of the page.

import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { fileURLToPath } from 'node:url';
import { picturesOf } from './pictures.mjs';
import { SECTIONS } from './sections.mjs';

const page = new URL('../../docs/benchmarks.md', import.meta.url);
const program = fileURLToPath(new URL('section.mjs', import.meta.url));
const words = process.argv.slice(2).map((word) => word.toLowerCase());
const asked = words.filter((word) => word !== '--write');
const chosen = SECTIONS.filter(({ title }) => asked.every((word) => title.toLowerCase().includes(word)));

const head = `# Benchmarks

Written by \`npm run bench\`; do not edit. Node ${process.versions.node}, ${cpus()[0].model}, ${cpus().length} cores. Times are after warm-up, in ms: the median of many, and the least, which other work on the machine disturbs least. Errors and counts do not move. Each section is measured in a process of its own, so that code compiled for one neither slows nor speeds another, and says when it was measured, and the load average of the machine when it began: more than the number of cores means that others were at work.
`;
const texts = new Map();
for (const { title } of chosen) {
  const options = { encoding: 'utf8', stdio: ['ignore', 'pipe', 'inherit'], maxBuffer: 1 << 24 };
  texts.set(title, execFileSync(process.execPath, [program, title], options));
  console.log(texts.get(title));
}
if (asked.length === 0 || words.includes('--write')) {
  const known = existsSync(page) ? sectionsOf(readFileSync(page, 'utf8')) : new Map();
  const parts = SECTIONS.map(({ title }) => texts.get(title) ?? known.get(title)).filter((text) => text !== undefined);
  const text = [head, ...parts].join('\n');
  writeFileSync(page, text);
  for (const [file, picture] of picturesOf(text)) writeFileSync(new URL(file, page), picture);
}

/** The sections of the page as it stands, by title. */
function sectionsOf(text) {
  const parts = text.split(/^(?=## )/m).slice(1);
  return new Map(parts.map((part) => [part.slice(3, part.indexOf('\n')), `${part.trimEnd()}\n`]));
}
