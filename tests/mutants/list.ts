// All mutants, in the order they are tried.

import { explorer } from './explorer.js';
import { formulas } from './formulas.js';
import { library } from './library.js';
import type { Mutant } from './mutant.js';
import { pages } from './pages.js';

export const mutants: readonly Mutant[] = [library, explorer, formulas, pages].flat();
