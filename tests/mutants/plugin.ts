// For vitest: the code with one mutant in it, where the environment names one (MUTANT, its number). No file is changed.

import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import { mutants } from './list.js';

const root = fileURLToPath(new URL('../..', import.meta.url));

export function mutantPlugin(): Plugin[] {
  const number = process.env.MUTANT;
  if (number === undefined) return [];
  const mutant = mutants[Number(number)];
  if (mutant === undefined) throw new Error(`There is no mutant ${number}.`);
  const { file, from, to } = mutant;
  return [
    {
      name: 'mutant',
      enforce: 'pre',
      transform: (code, id) => (id.split('?')[0] === root + file ? code.replace(from, () => to) : undefined),
    },
  ];
}
