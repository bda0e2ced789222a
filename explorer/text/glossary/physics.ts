// Words for what boiling does.

import type { Term } from './term.js';

export const physics: readonly Term[] = [
  {
    name: 'vapour',
    also: ['vapours'],
    means: 'What a boiling liquid turns into: here alcohol and water together, as a gas.',
  },
  {
    name: 'bubble point',
    also: ['boiling point', 'boils at', 'boil'],
    means: 'The temperature at which a liquid of one strength begins to boil at one pressure.',
  },
  { name: 'dew point', means: 'The temperature at which a vapour of one strength begins to condense at one pressure.' },
  {
    name: 'equilibrium',
    also: ['equilibrium curve'],
    means: 'Which vapour stands over which boiling liquid once neither changes the other any more.',
  },
  {
    name: 'azeotrope',
    means: 'The mixture whose vapour is exactly as strong as its liquid, so that boiling no longer parts it.',
  },
  {
    name: 'relative volatility',
    means: 'How many times more readily alcohol leaves the liquid than water does; 1 at the azeotrope.',
  },
  {
    name: 'activity coefficient',
    also: ['activity coefficients'],
    means: 'How much more readily a molecule leaves this mixture than an ideal one: above 1, it is pushed out.',
  },
  {
    name: 'Raoult’s law',
    means: 'The rule for liquids that take no notice of each other; alcohol and water do, so it misses the azeotrope.',
  },
  {
    name: 'ideal stage',
    also: ['ideal plate', 'ideal plates', 'ideal stages'],
    means: 'A boil whose vapour leaves in full equilibrium with its liquid; the measure real plates are held to.',
  },
  {
    name: 'efficiency',
    also: ['Murphree efficiency', 'efficient'],
    means: 'How much of an ideal plate’s step a real plate makes: 65 % is about two thirds of the way.',
  },
  {
    name: 'staircase',
    also: ['steps', 'step'],
    means: 'A column drawn on the equilibrium curve: up to what rises, over to the liquid it becomes, and so on.',
  },
  {
    name: 'operating line',
    means:
      'In a staircase, the line that says which vapour meets which liquid between two plates; reflux sets its slope.',
  },
  { name: 'minimum reflux', means: 'The ratio below which no number of plates reaches a given strength.' },
  {
    name: 'pinch',
    means: 'The place in a column where vapour and liquid already agree, so that further plates change nothing.',
  },
  {
    name: 'latent heat',
    means:
      'Heat that turns a boiling liquid into vapour without making it hotter; the condenser has to take it away again.',
  },
  {
    name: 'condense',
    also: ['condensed', 'condenses'],
    means: 'To turn from vapour back into liquid; the liquid has the strength the vapour had.',
  },
];
