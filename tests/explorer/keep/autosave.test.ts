// The open notebook is kept as it changes; two windows with the same notebook never write over each other; a
// storage that refuses is said.

import { describe, expect, it } from 'vitest';
import { keeper, type Keeper, type KeptState } from '../../../explorer/keep/autosave.js';
import { keyOf, shelved, textOf } from '../../../explorer/keep/shelf.js';
import type { Shelves } from '../../../explorer/keep/storage.js';
import { blockedShelves, memoryShelves } from './memory-shelves.js';

interface Window {
  readonly keeper: Keeper;
  readonly told: KeptState[];
  /** Changes the notebook, without waiting. */
  write(name: string): void;
  /** Lets the rest after a change pass. */
  rest(): void;
}

function openWindow(shelves: Shelves | undefined): Window {
  let name = '';
  let waiting: (() => void) | undefined;
  const told: KeptState[] = [];
  const made = keeper({
    shelves,
    text: (copy) => {
      if (copy) name = `${name}, a copy`;
      return JSON.stringify({ name, written: '' });
    },
    told: (state) => told.push(state),
    timer: (run) => {
      waiting = run;
      return () => (waiting = undefined);
    },
  });
  return {
    keeper: made,
    told,
    write: (next) => {
      name = next;
      made.changed();
    },
    rest: () => {
      waiting?.();
      waiting = undefined;
    },
  };
}

describe('the open notebook', () => {
  it('comes onto the shelf with its first change, after a rest, and once for many changes', () => {
    const shelves = memoryShelves();
    const window = openWindow(shelves);
    expect(window.keeper.state()).toEqual({ kind: 'untouched' });
    window.write('a');
    window.write('ab');
    expect(shelved(shelves)).toEqual([]);
    window.rest();
    expect(shelved(shelves).map(({ name }) => name)).toEqual(['ab']);
    expect(window.told).toEqual([{ kind: 'kept' }]);
  });

  it('is told of at every write, so that a list of notebooks follows its name', () => {
    const shelves = memoryShelves();
    const window = openWindow(shelves);
    const listed: string[] = [];
    for (const name of ['first', 'second']) {
      window.write(name);
      const before = window.told.length;
      window.rest();
      if (window.told.length > before) listed.push(shelved(shelves)[0]!.name);
    }
    expect(listed).toEqual(['first', 'second']);
  });

  it('is written at once when the page is left, and not at all when nothing waits', () => {
    const shelves = memoryShelves();
    const window = openWindow(shelves);
    window.keeper.flush();
    expect(shelves.records.size).toBe(0);
    window.write('a');
    window.keeper.flush();
    expect(shelves.records.size).toBe(1);
  });

  it('is said not to be kept where the storage is full or blocked, and to be kept again once there is room', () => {
    const blocked = openWindow(blockedShelves());
    blocked.write('a');
    blocked.rest();
    expect(blocked.told).toEqual([{ kind: 'not-kept', why: 'blocked' }]);
    const shelves = memoryShelves(150);
    const window = openWindow(shelves);
    window.write('x'.repeat(200));
    window.rest();
    window.write('x');
    window.rest();
    expect(window.told).toEqual([{ kind: 'not-kept', why: 'full' }, { kind: 'kept' }]);
  });
});

describe('two windows with the same notebook', () => {
  it('lose nothing: the second to write goes on in a copy of its own', () => {
    const shelves = memoryShelves();
    const first = openWindow(shelves);
    first.write('wash');
    first.rest();
    const id = first.keeper.id();
    const second = openWindow(shelves);
    second.keeper.open(id, textOf(shelves, id));
    first.write('wash of the first');
    first.rest();
    second.write('wash of the second');
    second.rest();
    expect(textOf(shelves, id)).toContain('wash of the first');
    expect(second.keeper.id()).not.toBe(id);
    expect(second.keeper.state()).toEqual({ kind: 'parted' });
    second.write('wash of the second, later');
    second.rest();
    first.write('wash of the first, later');
    first.rest();
    expect(
      shelved(shelves)
        .map(({ name }) => name)
        .sort(),
    ).toEqual(['wash of the first, later', 'wash of the second, later']);
    expect(first.keeper.state()).toEqual({ kind: 'kept' });
  });

  it('may take turns as long as each has read what the other wrote', () => {
    const shelves = memoryShelves();
    const first = openWindow(shelves);
    first.write('wash');
    first.rest();
    const id = first.keeper.id();
    const second = openWindow(shelves);
    second.keeper.open(id, textOf(shelves, id));
    second.write('wash, second hand');
    second.rest();
    expect(second.keeper.id()).toBe(id);
    expect(shelves.records.size).toBe(1);
  });

  it('do not bring back what the other deleted until they change it themselves', () => {
    const shelves = memoryShelves();
    const window = openWindow(shelves);
    window.write('wash');
    window.rest();
    shelves.removeItem(keyOf(window.keeper.id()));
    window.keeper.flush();
    expect(shelves.records.size).toBe(0);
    window.write('wash again');
    window.rest();
    expect(textOf(shelves, window.keeper.id())).toContain('wash again');
  });
});
