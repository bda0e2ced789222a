// Words for the still and what stands in it.

import type { Term } from './term.js';

export const still: readonly Term[] = [
  {
    name: 'still',
    also: ['stills'],
    means: 'Kettle, head and condenser together: what boils a charge and catches what rises.',
  },
  {
    name: 'kettle',
    also: ['kettles', 'pot', 'boiler'],
    means: 'The heated vessel that holds the charge and boils it.',
  },
  {
    name: 'pot still',
    also: ['bare pot', 'pot stills'],
    means: 'A kettle whose vapour goes straight to the condenser: one boil and nothing sent back on purpose.',
  },
  {
    name: 'column',
    also: ['columns'],
    means: 'A pipe over the kettle with plates or a packing in it, where rising vapour meets liquid running down.',
  },
  {
    name: 'plate',
    also: ['plates'],
    means: 'A floor in the column that holds a little liquid; the vapour has to boil its way through it.',
  },
  {
    name: 'doubler',
    also: ['doublers'],
    means: 'A second vessel between kettle and condenser whose liquid is boiled by the vapour of the first.',
  },
  {
    name: 'thumper',
    also: ['thumpers'],
    means: 'Another word for a doubler, after the knocking of vapour in its cold liquid.',
  },
  {
    name: 'packing',
    also: ['packings', 'packed'],
    means:
      'Rings, saddles, mesh or sheet that fill a column: liquid spreads over them and meets the vapour all the way.',
  },
  {
    name: 'HETP',
    means: 'The height of a packing that does the work of one ideal plate; the smaller, the better.',
  },
  {
    name: 'head',
    also: ['heads of the column'],
    means: 'The top of the still, where the vapour leaves the plates for the condenser.',
  },
  { name: 'spout', means: 'Where the condensed spirit runs out, and where its strength is read.' },
  {
    name: 'parrot',
    also: ['parrots'],
    means:
      'A small vessel under the spout in which a hydrometer floats; it shows a mean of what ran in last, and lags.',
  },
  {
    name: 'condenser',
    also: ['condensers'],
    means: 'Cools vapour until it is liquid; its way to the open air must stay free.',
  },
  {
    name: 'reflux condenser',
    also: ['reflux condensers'],
    means: 'A cooler at the head whose liquid goes back down the plates: all of it, or a share.',
  },
  {
    name: 'dephlegmator',
    also: ['dephlegmators', 'partial condenser'],
    means:
      'A reflux condenser that takes a part of the vapour only; the rest goes on, stronger, to the product condenser.',
  },
  {
    name: 'jar',
    also: ['jars'],
    means: 'A container that collects what runs from the spout, one after another, so that a cut can be chosen later.',
  },
  {
    name: 'heating surface',
    means: 'The part of the kettle the heat comes through; it must stay covered with liquid as long as it is hot.',
  },
  {
    name: 'hold-up',
    means:
      'Liquid that is at work inside the still, on plates and in the condenser, and so in no jar and not in the kettle.',
  },
  {
    name: 'pressure drop',
    means: 'Pressure the vapour uses up on its way through the plates; the kettle boils a little hotter for it.',
  },
  {
    name: 'flooding',
    means: 'So much vapour that liquid can no longer run down: the column fills and stops parting anything.',
  },
  {
    name: 'entrainment',
    also: ['carry-over'],
    means: 'Droplets that fast vapour carries up to the plate above; they undo part of what the plates have done.',
  },
  {
    name: 'turndown',
    means: 'The most vapour plates can work with over the least: how far you can turn the heat down.',
  },
  { name: 'weeping', means: 'So little vapour that liquid drips through the holes of a plate instead of crossing it.' },
];
