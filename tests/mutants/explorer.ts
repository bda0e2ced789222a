// Mutants of the explorer: its key rules, and what was once changed without a test that noticed.

import type { Mutant } from './mutant.js';

export const explorer: readonly Mutant[] = [
  {
    name: 'undo keeps the oldest steps and forgets the newest',
    file: 'explorer/state/history.ts',
    from: '.slice(-mostSteps)',
    to: '.slice(0, mostSteps)',
    tests: ['state/history'],
  },
  {
    name: 'undo keeps one step less than it says',
    file: 'explorer/state/history.ts',
    from: 'mostSteps = 400',
    to: 'mostSteps = 40',
    tests: ['state/history'],
  },
  {
    name: 'deeds on two pages are undone as one',
    file: 'explorer/state/history.ts',
    from: '    last.page === deed.page &&\n',
    to: '',
    tests: ['state/history'],
  },
  {
    name: 'deeds within 15 s are undone as one',
    file: 'explorer/state/history.ts',
    from: 'together_ms = 1500',
    to: 'together_ms = 15_000',
    tests: ['state/history'],
  },
  {
    name: 'what cannot be read and not be set aside is written over',
    file: 'explorer/keep/open-notebook.ts',
    from: '{ id: newId(), record: null, count: 0 }',
    to: '{ id, record: good.record, count: head.count }',
    tests: ['keep/open-notebook'],
  },
  {
    name: 'the notebook deleted last is the first to be gone for good',
    file: 'explorer/keep/shelf.ts',
    from: '(other.deleted ?? 0) - (one.deleted ?? 0)',
    to: '(one.deleted ?? 0) - (other.deleted ?? 0)',
    tests: ['keep/shelf'],
  },
  {
    name: 'a file may go twice as deep',
    file: 'explorer/keep/format.ts',
    from: 'depth: 32',
    to: 'depth: 64',
    tests: ['keep/plain-json'],
  },
  {
    name: 'only the three worst names are reserved in a file',
    file: 'explorer/keep/plain-json.ts',
    from: "new Set([...Object.getOwnPropertyNames(Object.prototype), 'prototype'])",
    to: "new Set(['__proto__', 'constructor', 'prototype'])",
    tests: ['keep/plain-json'],
  },
  {
    name: 'a page in an address may unpack to ten times as much',
    file: 'explorer/keep/page-in-address.ts',
    from: 'mostBytes = 200_000',
    to: 'mostBytes = 2_000_000',
    tests: ['keep/page-in-address'],
  },
  {
    name: 'a page of formulas may take ten times as long',
    file: 'explorer/formula/limits.ts',
    from: 'page_ms: 5000',
    to: 'page_ms: 50_000',
    tests: ['formula/formula-client'],
  },
  {
    name: 'a line of a formula may take ten times as long',
    file: 'explorer/formula/limits.ts',
    from: 'time_ms: 1000',
    to: 'time_ms: 10_000',
    tests: ['formula/formula-client'],
  },
  {
    name: 'numbers are called equal that differ in the seventh digit',
    file: 'explorer/formula/arithmetic.ts',
    from: '1e-12 * Math.max(Math.abs(left), Math.abs(right))',
    to: '1e-6 * Math.max(Math.abs(left), Math.abs(right))',
    tests: ['formula/limits'],
  },
  {
    name: 'a unit after ‘to’ may have any exponent',
    file: 'explorer/formula/convert.ts',
    from: 'if (right.value <= 12) return',
    to: 'if (right.value <= 1e6) return',
    tests: ['formula/limits'],
  },
  {
    name: 'a copied page loses what was done on it',
    file: 'explorer/state/page-acts.ts',
    from: 'return work === undefined ? copied : { ...copied, work: { ...copied.work, [name]: work } };',
    to: 'return copied;',
    tests: ['state/page-acts'],
  },
];
