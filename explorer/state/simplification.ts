// How a run was simplified, for the sentence that gives its numbers.

import type { PlainSolution } from '#lib/index.js';

/** 'without heat-up and losses'; null for a run with its account of energy. */
export function simplification({ problem }: Pick<PlainSolution, 'problem'>): string | null {
  switch (problem.model) {
    case 'energy':
      return null;
    case 'equalHeats':
      return 'with one heat for every mole of vapour';
    case 'equalFlows':
    case 'rayleigh':
      return 'without heat-up and losses';
  }
}
