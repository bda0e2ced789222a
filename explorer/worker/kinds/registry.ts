// The kinds of question there are: one line each. What the first page does without is loaded when first asked for.

import { equilibrium } from './equilibrium.js';
import { late } from './kind.js';
import { run } from './run.js';
import { stages } from './stages.js';

export const kinds = {
  run,
  equilibrium,
  stages,
  sureness: late(async () => (await import('./sureness.js')).sureness),
  drift: late(async () => (await import('./drift.js')).drift),
};
