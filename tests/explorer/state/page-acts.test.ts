// Laws of the reader's own pages, whatever was done to them before.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keepPencil } from '../../../explorer/state/acts.js';
import { newNotebook, workOn, type Notebook } from '../../../explorer/state/notebook-record.js';
import * as acts from '../../../explorer/state/page-acts.js';
import { anyAct } from './any-acts.js';
import { settings } from '../../support/settings.js';

const anyNotebook = fc
  .array(anyAct, { maxLength: 40 })
  .map((list) => list.reduce((notebook, act) => act(notebook), newNotebook));

/** A notebook with a page of some entries. */
const withPage = anyNotebook.map((before) => {
  const name = acts.freePageName(before);
  let notebook = acts.addPage(before, { name, ...acts.blankPage });
  for (const id of ['a', 'b', 'c'])
    notebook = acts.addEntry(notebook, name, { id, kind: 'text', data: { text: id } }, null);
  return { notebook, name };
});

const ids = (notebook: Notebook, name: string): string[] => acts.ownPage(notebook, name)!.entries.map(({ id }) => id);

describe('pages of one’s own', () => {
  it('never have two entries of one id, nor a notebook two pages of one name', () => {
    fc.assert(
      fc.property(anyNotebook, ({ pages }) => {
        expect(new Set(pages.map(({ name }) => name)).size).toBe(pages.length);
        for (const { entries } of pages) expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length);
      }),
    );
  });

  it('survive being written and read as they are', () => {
    fc.assert(
      fc.property(anyNotebook, (notebook) => {
        expect(JSON.parse(JSON.stringify(notebook))).toEqual(notebook);
      }),
    );
  });

  it('keep work for pages and entries that exist only', () => {
    fc.assert(
      fc.property(withPage, fc.constantFrom('a', 'b', 'c'), ({ notebook, name }, id) => {
        const dropped = acts.dropEntry(notebook, name, id);
        expect(ids(dropped, name)).not.toContain(id);
        expect(workOn(dropped, name).entries).not.toHaveProperty(id);
        expect(acts.dropPage(notebook, name).work).not.toHaveProperty(name);
      }),
    );
  });
});

describe('moving an entry', () => {
  it('up and down again leaves the order as it was, and at an end changes nothing', () => {
    fc.assert(
      fc.property(withPage, fc.constantFrom('a', 'b', 'c'), ({ notebook, name }, id) => {
        const up = acts.moveEntry(notebook, name, id, -1);
        const isFirst = ids(notebook, name)[0] === id;
        if (isFirst) expect(up).toBe(notebook);
        else expect(ids(acts.moveEntry(up, name, id, 1), name)).toEqual(ids(notebook, name));
        expect([...ids(up, name)].sort()).toEqual([...ids(notebook, name)].sort());
      }),
    );
  });
});

describe('a copy', () => {
  it('of an entry stands behind it and is made of the same', () => {
    fc.assert(
      fc.property(withPage, fc.constantFrom('a', 'b', 'c'), ({ notebook, name }, id) => {
        const copied = acts.copyEntry(notebook, name, id, 'copy');
        const { entries } = acts.ownPage(copied, name)!;
        const place = entries.findIndex((entry) => entry.id === id);
        expect(entries[place + 1]).toEqual({ ...entries[place], id: 'copy' });
      }),
    );
  });

  it('of a page has its pencil lines', () => {
    const notebook = keepPencil(newNotebook, 'the-ceiling', settings({ plates: 5 }));
    expect(workOn(notebook, 'the-ceiling').pencils).toHaveLength(1);
    const page = { name: 'the-ceiling', title: 'The ceiling', promise: '', entries: [] };
    const copied = acts.copyPage(notebook, page, 'page-1', 'Mine');
    expect(workOn(copied, 'page-1')).toEqual(workOn(notebook, 'the-ceiling'));
    expect(workOn(copied, 'the-ceiling')).toBe(workOn(notebook, 'the-ceiling'));
  });

  it('of a page has its entries and what was done on it, under a name and a title of its own', () => {
    fc.assert(
      fc.property(withPage, ({ notebook, name }) => {
        const page = acts.ownPage(notebook, name)!;
        const copied = acts.copyPage(notebook, page, acts.freePageName(notebook), 'Another');
        expect(copied.pages.at(-1)!.entries).toBe(page.entries);
        expect(copied.pages.at(-1)!.title).toBe('Another');
        expect(workOn(copied, copied.pages.at(-1)!.name)).toEqual(workOn(notebook, name));
      }),
    );
  });
});
