// Words for how strong something is and how much alcohol is in it.

import type { Term } from './term.js';

export const strength: readonly Term[] = [
  {
    name: 'strength',
    also: ['strengths', 'strong'],
    means: 'How much of a liquid is alcohol; on these pages in % vol at 20 °C unless another unit is chosen.',
  },
  {
    name: '% vol',
    also: ['per cent by volume'],
    means: 'Litres of pure alcohol in 100 litres of liquid, both measured at 20 °C.',
  },
  {
    name: '% mass',
    also: ['per cent by mass', 'by mass'],
    means: 'Kilograms of alcohol in 100 kilograms of liquid; always a smaller number than % vol, except at 0 and 100.',
  },
  { name: 'proof', also: ['US proof'], means: 'Twice the % vol, measured at 60 °F: 100 proof are 50 % vol.' },
  {
    name: 'mole fraction',
    means: 'The share of the molecules that are alcohol; boiling counts molecules, not litres.',
  },
  {
    name: 'pure alcohol',
    means: 'The alcohol in a liquid as if it stood alone: 10 litres at 40 % vol hold 4 litres.',
  },
  {
    name: 'LPA',
    means: 'Litres of pure alcohol: litres times strength, both at 20 °C; what accounts and duty are kept in.',
  },
  {
    name: 'hydrometer',
    also: ['hydrometers'],
    means: 'A glass float that reads strength from density; right only at the temperature it was made for.',
  },
  {
    name: 'contraction',
    means: 'Alcohol and water take less room together than apart: half a litre of each make less than a litre.',
  },
  { name: 'alcohol', also: ['ethanol'], means: 'On these pages always ethanol, the one alcohol the model knows.' },
  {
    name: 'methanol',
    means: 'A poisonous alcohol that the model does not know; throwing away the first litre does not remove it.',
  },
];
