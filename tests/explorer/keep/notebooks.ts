// Notebooks for the tests of keeping: any at all, within what a file may hold.

import fc from 'fast-check';
import { newNotebook, type Json, type Notebook, type PageWork } from '../../../explorer/state/notebook-record.js';
import { inputs } from '../../../explorer/state/inputs.js';
import { chargeSetOf, sheetSetOf, type Named } from '../../../explorer/state/notebook-record.js';
import { withScenario } from '../../../explorer/state/page-scenario.js';
import { faultInScenario } from '../../../explorer/state/parts-check.js';
import { saidAt, withValue } from '../../../explorer/state/paths.js';
import { startingScenario, type Scenario } from '../../../explorer/state/scenario.js';
import { settings } from '../../support/settings.js';

/** Settings with every number of the starting still and sheet anywhere within its limits. */
const there = inputs.filter(({ key }) => typeof saidAt(startingScenario, key) === 'number');
export const anyScenario: fc.Arbitrary<Scenario> = fc
  .tuple(
    ...there.map(({ low, high, quantity }) =>
      quantity === 'plates' ? fc.integer({ min: low, max: high }) : fc.double({ min: low, max: high, noNaN: true }),
    ),
  )
  .map((values) => there.reduce((set, { key }, at) => withValue(set, key, values[at]), startingScenario))
  // Plates never stand nearer than the liquid on them is deep, nor in a column that no weir fits.
  .filter((scenario) => faultInScenario(scenario) === undefined);

const partName = fc.string({ minLength: 1, maxLength: 30 });
const named = <What>(what: fc.Arbitrary<What>): fc.Arbitrary<readonly Named<What>[]> =>
  fc.uniqueArray(fc.record({ name: partName, what }), { minLength: 1, maxLength: 3, selector: ({ name }) => name });

const reserved = [...Object.getOwnPropertyNames(Object.prototype), 'prototype'];
const key = fc.string({ minLength: 1, maxLength: 20 }).filter((name) => !reserved.includes(name));

/** JSON as JSON.parse gives it: no negative zero, which JSON cannot hold. */
export const anyJson: fc.Arbitrary<Json> = fc
  .jsonValue({ maxDepth: 4 })
  .map((value) => JSON.parse(JSON.stringify(value)) as Json)
  .filter((value) => !reserved.some((name) => JSON.stringify(value).includes(`"${name}":`)));

const pageName = fc.integer({ min: 1, max: 999 }).map((number) => `page-${String(number)}`);

const anyWork: fc.Arbitrary<PageWork> = fc.record(
  {
    pencils: fc.array(anyScenario, { maxLength: 3 }),
    common: fc.dictionary(key, anyJson, { maxKeys: 3, noNullPrototype: true }),
    entries: fc.dictionary(key, anyJson, { maxKeys: 3, noNullPrototype: true }),
    uses: fc.record({ still: partName, charge: partName, sheet: partName }, { requiredKeys: [] }),
  },
  { requiredKeys: ['pencils', 'common', 'entries'] },
);

/** Entries are of a kind that no explorer has: what each kind allows is its own test. */
const anyEntry = fc.record(
  { kind: fc.constant('not-a-kind'), data: anyJson, heading: fc.string({ maxLength: 50 }), close: fc.boolean() },
  { requiredKeys: ['kind', 'data'] },
);

export const anyNotebook: fc.Arbitrary<Notebook> = fc.record({
  version: fc.constant(1),
  name: fc.string({ maxLength: 60 }),
  stills: named(anyScenario.map(({ still }) => still)),
  charges: named(anyScenario.map(chargeSetOf)),
  sheets: named(anyScenario.map(sheetSetOf)),
  asked: anyScenario.map(({ asked }) => asked),
  pages: fc
    .uniqueArray(
      fc.record({
        name: pageName,
        title: fc.string({ maxLength: 60 }),
        promise: fc.string({ maxLength: 60 }),
        entries: fc
          .array(anyEntry, { maxLength: 4 })
          .map((entries) => entries.map((entry, at) => ({ id: `e${String(at + 1)}`, ...entry }))),
      }),
      { maxLength: 3, selector: ({ name }) => name },
    )
    .map((pages) => pages),
  work: fc.dictionary(pageName, anyWork, { maxKeys: 3, noNullPrototype: true }),
});

/** A notebook with something of everything in it. */
export const octoberWash: Notebook = {
  ...withScenario(newNotebook, '', settings({ plates: 20, chargeVolume: 0.2 })),
  name: 'October wash',
  pages: [
    {
      name: 'page-1',
      title: 'My run',
      promise: 'What I will do.',
      entries: [{ id: 'e1', kind: 'text', data: { text: 'Twenty plates this time.' }, heading: 'Plan' }],
    },
  ],
  work: {
    'the-ceiling': { pencils: [startingScenario], common: { laid: ['measured'] }, entries: { e2: [1, 2, 3] } },
  },
};
