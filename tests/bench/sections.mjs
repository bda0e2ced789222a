// What the benchmark measures, in the order of the page: one file each, one line each. A section is an object
// { title, run(bench) } whose run gives lines of Markdown; `bench` holds the built library, a system and the activity model.

import { allocation } from './sections/allocation.mjs';
import { batch, fullBatch } from './sections/batch.mjs';
import { calls } from './sections/calls.mjs';
import { firstRun } from './sections/first-run.mjs';
import { page } from './sections/page.mjs';
import { perPlate } from './sections/per-plate.mjs';
import { train } from './sections/train.mjs';
import { yardstick } from './sections/yardstick.mjs';

export const SECTIONS = [yardstick, perPlate, train, batch, fullBatch, calls, firstRun, allocation, page];
