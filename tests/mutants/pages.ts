// Mutants of what the explorer's pages are told, read and answer with.

import type { Mutant } from './mutant.js';

export const pages: readonly Mutant[] = [
  {
    name: 'an answer that comes late is shown',
    file: 'explorer/worker/newest-wins.ts',
    from: '      if (turn < shown) return;\n',
    to: '',
    tests: ['newest-wins'],
  },
  {
    name: 'all requests are sent at once',
    file: 'explorer/worker/newest-wins.ts',
    from: 'mostOnTheirWay = 2',
    to: 'mostOnTheirWay = 20',
    tests: ['newest-wins'],
  },
  {
    name: 'an answer within its tolerance does not meet it where it is exact',
    file: 'explorer/entries/question/judge.ts',
    from: 'tolerance.relative * Math.abs(answer) : tolerance.absolute',
    to: 'tolerance.relative : tolerance.absolute',
    tests: ['entries/question'],
  },
  {
    name: 'a comma that could be either is taken for a decimal one',
    file: 'explorer/text/parse.ts',
    from: "if (thousands.test(digits)) return 'ambiguous';",
    to: '',
    tests: ['text/parse'],
  },
  {
    name: 'a minus sign of typography is not read',
    file: 'explorer/text/parse.ts',
    from: 'const sign = /^[−-]/u.test(text) ? -1 : 1;',
    to: 'const sign = /^-/u.test(text) ? -1 : 1;',
    tests: ['text/parse'],
  },
  {
    name: 'an address of another version is read as if it were of this',
    file: 'explorer/state/address.ts',
    from: 'if (fields.length > 0 && written !== version) {',
    to: 'if (fields.length > 0 && written === undefined) {',
    tests: ['state/address'],
  },
  {
    name: 'an address may set half a plate',
    file: 'explorer/state/address.ts',
    from: 'if (inRange && whole) return',
    to: 'if (inRange) return',
    tests: ['state/address'],
  },
  {
    name: 'the best strength counts what never runs from the spout',
    file: 'explorer/state/run-results.ts',
    from: 'for (let row = start; row <= last; row += 1) best',
    to: 'for (let row = start * 0; row <= last; row += 1) best',
    tests: ['state/run-results'],
  },
  {
    name: 'two temperatures may be added',
    file: 'explorer/formula/arithmetic.ts',
    from: "if (a.is === 'temperature' && b.is === 'temperature') {\n    const right",
    to: "if (a.is === 'temperature' && b.is === 'truth') {\n    const right",
    tests: ['explorer/formula'],
  },
  {
    name: 'the remainder has the sign of what is divided',
    file: 'explorer/formula/arithmetic.ts',
    from: 'x.number - y.number * Math.floor(x.number / y.number)',
    to: 'x.number % y.number',
    tests: ['explorer/formula'],
  },
  {
    name: 'the fourth deleted notebook is gone for good',
    file: 'explorer/keep/shelf.ts',
    from: 'mostDeleted = 10',
    to: 'mostDeleted = 3',
    tests: ['keep/shelf'],
  },
  {
    name: 'a window writes over what another wrote',
    file: 'explorer/keep/write-notebook.ts',
    from: 'head.count === count || head.writer === writer',
    to: 'head.count >= count || head.writer === writer',
    tests: ['keep/autosave'],
  },
];
