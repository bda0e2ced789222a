// The formulas of a page together: what a keystroke asks for, in counts. Values come first, curves one by one after them.

import { describe, expect, it } from 'vitest';
import { FormulaBook } from '../../../../explorer/entries/formula/book.js';
import type { FormulaData } from '../../../../explorer/entries/formula/data.js';
import type { Here } from '../../../../explorer/entries/entry.js';
import { answer } from '../../../../explorer/formula/answer.js';
import type { FormulaEngine } from '../../../../explorer/formula/formula-client.js';
import type { FormulaAsk, FormulaReply } from '../../../../explorer/formula/sheet.js';
import { startingScenario } from '../../../../explorer/state/scenario.js';
import { unitSystems } from '../../../../explorer/text/unit-systems.js';
import { turn as answered } from '../../../support/settled.js';

/** An engine that answers at once and notes what it was asked; `gives` may hold curves back. */
function engine(gives: () => boolean = () => true): FormulaEngine & { values: FormulaAsk[]; curves: string[] } {
  const values: FormulaAsk[] = [];
  const curves: string[] = [];
  return {
    values,
    curves,
    answer: (ask) => {
      values.push(ask);
      return Promise.resolve(answer(ask));
    },
    whenIdle: (ask): Promise<FormulaReply | null> => {
      curves.push(...ask.curves.map(({ id }) => id));
      return Promise.resolve(gives() ? answer(ask) : null);
    },
    functions: () => [],
    close: () => undefined,
  };
}

type Line = FormulaData & { readonly id: string };
const line = (id: string, text: string, plotted = false): Line => ({
  id,
  text,
  plot: plotted ? { against: 'volume', from: '0', to: '9' } : null,
});

/** A drawing of a page: each of its entries is seen once. */
function drawn(book: FormulaBook, lines: readonly Line[]): void {
  const entries = lines.map(({ id, text, plot }) => ({
    id,
    kind: 'formula',
    data: { text, plot: plot && { ...plot } },
    heading: '',
  }));
  const around = {
    entries,
    results: [],
    scenario: startingScenario,
    units: unitSystems.metric,
    offer: () => undefined,
    redraw: () => undefined,
  };
  for (const { id, text, plot } of lines)
    book.see({ ...around, id, data: { text, plot } } as unknown as Here<FormulaData>);
}

const many = Array.from({ length: 200 }, (_, k) =>
  line(`e${String(k)}`, k === 0 ? 'x0 = volume' : `x${String(k)} = x${String(k - 1)} + 1 L`),
);

describe('a page of 200 formulas', () => {
  it('is asked for once a drawing, and not again while nothing has changed', async () => {
    const asked = engine();
    const book = new FormulaBook(asked);
    drawn(book, many);
    await answered();
    drawn(book, many);
    await answered();
    expect(asked.values).toHaveLength(1);
  });

  it('has, after a keystroke in the last line, only that line to draw again', async () => {
    const book = new FormulaBook(engine());
    drawn(book, many);
    await answered();
    const before = many.map(({ id }) => book.known(id));
    drawn(book, many.with(199, line('e199', 'x199 = x198 + 2 L')));
    await answered();
    const changed = many.filter(({ id }, at) => book.known(id) !== before[at]);
    expect(changed.map(({ id }) => id)).toEqual(['e199']);
  });
});

describe('plots', () => {
  const plots = Array.from({ length: 20 }, (_, k) => line(`p${String(k)}`, `volume * ${String(k + 1)}`, true));

  it('are asked for one by one, after the values', async () => {
    const asked = engine();
    const book = new FormulaBook(asked);
    drawn(book, plots);
    expect(asked.curves).toEqual([]);
    await answered();
    expect(asked.values.map(({ curves }) => curves)).toEqual([[]]);
    expect(asked.curves).toEqual(plots.map(({ id }) => id));
    expect(plots.every(({ id }) => book.known(id).lastCurve !== null)).toBe(true);
  });

  it('that gave way are asked for again', async () => {
    let times = 0;
    const asked = engine(() => ++times > 2);
    drawn(new FormulaBook(asked), plots.slice(0, 2));
    await answered();
    expect(asked.curves).toEqual(['p0', 'p0', 'p0', 'p1']);
  });

  it('of older values are given up for the newer ones', async () => {
    const asked = engine(() => false);
    const book = new FormulaBook(asked);
    const plotted = plots.slice(0, 1);
    drawn(book, plotted);
    for (let turns = 0; turns < 20; turns += 1) await Promise.resolve();
    const before = asked.curves.length;
    drawn(book, [line('p0', 'volume * 5')]);
    for (let turns = 0; turns < 50; turns += 1) await Promise.resolve();
    const after = asked.curves.length;
    for (let turns = 0; turns < 50; turns += 1) await Promise.resolve();
    expect(before).toBeGreaterThan(0);
    expect(asked.curves.length).toBe(after);
    expect(book.known('p0').curve).toBeUndefined();
  });
});
