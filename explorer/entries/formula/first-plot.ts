// The range a plot begins with, as formulas a reader may change: around where the variable stands.

import type { PlotData } from './data.js';
import type { NamedNumber } from './page-names.js';

export function firstPlot(against: string, numbers: readonly NamedNumber[]): PlotData {
  const number = numbers.find(({ name }) => name === against);
  switch (number?.kind) {
    case undefined:
      return { against, from: '0', to: '1' };
    case 'strength':
    case 'percent':
    case 'massShare':
    case 'moleShare':
      return { against, from: '1%', to: '95%' };
    case 'temperature':
      return { against, from: `${against} - 20 K`, to: `${against} + 20 K` };
    case 'pressure':
      return { against, from: `${against} / 2`, to: against };
    default:
      return { against, from: '0', to: `2 * ${against}` };
  }
}
