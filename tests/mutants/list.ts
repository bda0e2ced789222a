// All mutants, in the order they are tried.

import { explorer } from './explorer.js';
import { library } from './library.js';
import type { Mutant } from './mutant.js';

export const mutants: readonly Mutant[] = [...library, ...explorer];
