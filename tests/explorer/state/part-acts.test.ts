// Stills, charges and run sheets by name: pages that use the same part follow it, others do not.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { STILL_PRESETS } from '#lib/index.js';
import { setValue } from '../../../explorer/state/acts.js';
import { newNotebook, type Notebook } from '../../../explorer/state/notebook-record.js';
import { scenarioOn, usedOn, withScenario } from '../../../explorer/state/page-scenario.js';
import {
  addPart,
  copyPart,
  dropPart,
  listOf,
  renamePart,
  usePart,
  type UseName,
} from '../../../explorer/state/part-acts.js';
import { numberAt } from '../../../explorer/state/paths.js';

const plates = 'still.column.count';
const platesOn = (notebook: Notebook, page: string): number | undefined => numberAt(scenarioOn(notebook, page), plates);
const names = (notebook: Notebook, use: UseName = 'still'): readonly string[] =>
  notebook[listOf[use]].map(({ name }) => name);

describe('a number set on a page', () => {
  it('is set on every page that uses the same still', () => {
    const notebook = setValue(newNotebook, 'the-ceiling', plates, 20);
    expect(['the-ceiling', 'the-stills-limits', 'reflux'].map((page) => platesOn(notebook, page))).toEqual([
      20, 20, 20,
    ]);
    expect(scenarioOn(notebook, 'the-doubler')).toBe(scenarioOn(newNotebook, 'the-doubler'));
  });

  it('of the charge is set on pages with another still, too', () => {
    const notebook = setValue(newNotebook, 'the-ceiling', 'charge.strength', 0.2);
    expect(scenarioOn(notebook, 'the-doubler').charge.strength).toBe(0.2);
  });

  it('leaves alone a page that uses a copy', () => {
    const copied = copyPart(newNotebook, 'the-ceiling', 'still');
    expect(usedOn(copied, 'the-ceiling').still.name).toBe('Your still, again');
    const notebook = setValue(copied, 'the-ceiling', plates, 4);
    expect([platesOn(notebook, 'the-ceiling'), platesOn(notebook, 'the-stills-limits')]).toEqual([4, 12]);
  });

  it('that stands there already changes nothing, nor does a path that says the same', () => {
    expect(setValue(newNotebook, 'the-ceiling', plates, 12)).toBe(newNotebook);
    expect(withScenario(newNotebook, 'x', scenarioOn(newNotebook, 'x'))).toBe(newNotebook);
  });
});

describe('what a page runs on', () => {
  it('is the very same record as long as none of its parts changes', () => {
    const notebook = setValue(newNotebook, 'the-doubler', 'still.kettle.power_W', 7000);
    expect(scenarioOn(notebook, 'the-ceiling')).toBe(scenarioOn(newNotebook, 'the-ceiling'));
  });

  it('can be any still of the library', () => {
    for (const { name, still } of STILL_PRESETS) {
      const notebook = usePart(addPart(newNotebook, 'stills', name, still), 'x', 'still', name);
      expect(scenarioOn(notebook, 'x').still).toBe(still);
    }
  });
});

describe('a name', () => {
  it('may be changed: pages that use the part go on using it, also a ready one that named it by itself', () => {
    const notebook = renamePart(newNotebook, 'still', 'Pot with a doubler', 'Shed');
    expect(names(notebook)).toEqual(['Your still', 'Shed']);
    expect(usedOn(notebook, 'the-doubler').still.name).toBe('Shed');
  });

  it('that is empty or taken changes nothing', () => {
    for (const wish of ['', '  ', 'Your still', 'Pot with a doubler']) {
      expect(renamePart(newNotebook, 'still', 'Pot with a doubler', wish)).toBe(newNotebook);
    }
  });
});

describe('a part that is deleted', () => {
  it('gives way to the first of its list, and the last one stays', () => {
    const notebook = dropPart(newNotebook, 'still', 'Pot with a doubler');
    expect(usedOn(notebook, 'the-doubler').still.name).toBe('Your still');
    expect(dropPart(notebook, 'still', 'Your still')).toBe(notebook);
  });
});

describe('whatever is done with them', () => {
  it('no list is ever empty or has two of one name, and every page uses one that is there', () => {
    const use = fc.constantFrom<UseName>('still', 'charge', 'sheet');
    const page = fc.constantFrom('the-ceiling', 'the-doubler', 'page-1');
    const act = fc.tuple(fc.nat(3), use, page, fc.nat(5), fc.string({ maxLength: 4 }));
    fc.assert(
      fc.property(fc.array(act, { maxLength: 20 }), (acts) => {
        const notebook = acts.reduce((now: Notebook, [which, part, on, at, text]) => {
          const list = names(now, part);
          const name = list[at % list.length]!;
          if (which === 0) return copyPart(now, on, part);
          if (which === 1) return renamePart(now, part, name, text);
          return which === 2 ? dropPart(now, part, name) : usePart(now, on, part, name);
        }, newNotebook);
        for (const part of ['still', 'charge', 'sheet'] as const) {
          const list = names(notebook, part);
          expect(list.length).toBeGreaterThan(0);
          expect(new Set(list).size).toBe(list.length);
          for (const on of ['the-ceiling', 'the-doubler', 'page-1']) {
            expect(list).toContain(usedOn(notebook, on)[part].name);
          }
        }
      }),
    );
  });
});
