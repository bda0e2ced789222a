// What the engine remembers: after a change only what depends on it is worked on again, told in counts, and what it
// comes to is what it comes to without any memory.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from '../../../explorer/formula/answer.js';
import { Memory } from '../../../explorer/formula/memory.js';
import type { CurveAsk, FormulaReply, FormulaSheet } from '../../../explorer/formula/sheet.js';
import { quantities, sheetOf, told } from '../../support/formulas.js';

/** An engine with its memory, and what an ask costs it. */
class Engine {
  readonly memory = new Memory();
  ask(sheet: FormulaSheet, curves: readonly CurveAsk[] = []): FormulaReply {
    return answer({ sheet, curves }, undefined, this.memory);
  }
  cost(sheet: FormulaSheet, curves: readonly CurveAsk[] = []): Memory['counts'] {
    const before = { ...this.memory.counts };
    this.ask(sheet, curves);
    const { read, computed, drawn } = this.memory.counts;
    return { read: read - before.read, computed: computed - before.computed, drawn: drawn - before.drawn };
  }
}

/** Each of 200 lines uses the one before it and a number of the page. */
const chain = Array.from({ length: 200 }, (_, k) =>
  k === 0 ? 'x0 = volume' : `x${String(k)} = x${String(k - 1)} + heat * 1 s * 1e-9 m^3 / J`,
);

describe('a page of 200 lines that use each other', () => {
  it('costs nothing where nothing has changed', () => {
    const engine = new Engine();
    expect(engine.cost(sheetOf(chain))).toEqual({ read: 200, computed: 200, drawn: 0 });
    expect(engine.cost(sheetOf(chain))).toEqual({ read: 0, computed: 0, drawn: 0 });
  });

  it.each([
    [199, 1],
    [100, 100],
    [0, 200],
  ])('costs, after a keystroke in line %d, one line read and %d computed', (at, computed) => {
    const engine = new Engine();
    engine.ask(sheetOf(chain));
    expect(engine.cost(sheetOf(chain.with(at, `${chain[at]!} * 2`)))).toEqual({ read: 1, computed, drawn: 0 });
  });

  it('costs, after a number of the page has changed, the lines that use it and no reading', () => {
    const engine = new Engine();
    const lines = ['a = volume * 2', 'b = a + 1 L', 'c = heat * 2', 'd = 4', 'f(x) = x * volume', 'twice = f(2)'];
    engine.ask(sheetOf(lines));
    const changed = quantities.map((one) => (one.name === 'volume' ? { ...one, si: 0.2 } : one));
    expect(engine.cost(sheetOf(lines, { quantities: changed }))).toEqual({ read: 0, computed: 3, drawn: 0 });
  });

  it('finds what was meant by an unknown name once, while the names are the same', () => {
    const memory = new Memory();
    const line = { id: 'a', text: 'volum * 2' } as Parameters<Memory['unknown']>[0];
    let looks = 0;
    const look = (): never => {
      looks += 1;
      return {} as never;
    };
    for (const names of [['volume'], ['volume'], ['volume', 'heat']]) memory.unknown(line, 'volum', names, look);
    expect(looks).toBe(2);
  });
});

describe('curves', () => {
  const lines = ['a = volume * 2', 'b = heat * 2'];
  const curves = [
    { id: 'line 0', against: 'volume', from: '0', to: '2 * volume' },
    { id: 'line 1', against: 'heat', from: '0 kW', to: '9 kW' },
  ];

  it('are drawn again only where something behind them has changed', () => {
    const engine = new Engine();
    expect(engine.cost(sheetOf(lines), curves).drawn).toBe(2);
    expect(engine.cost(sheetOf(lines), curves)).toEqual({ read: 0, computed: 0, drawn: 0 });
    expect(engine.cost(sheetOf(lines.with(0, 'a = volume * 3')), curves).drawn).toBe(1);
    expect(engine.cost(sheetOf(lines), [{ ...curves[0]!, to: '3 * volume' }, curves[1]!]).drawn).toBe(1);
    const heated = quantities.map((one) => (one.name === 'heat' ? { ...one, si: 4000 } : one));
    expect(
      engine.cost(sheetOf(lines, { quantities: heated }), [{ ...curves[0]!, to: '3 * volume' }, curves[1]!]).drawn,
    ).toBe(1);
  });

  it('work out the lines in between that they need, and no others', () => {
    const reply = new Engine().ask(sheetOf(['a = volume * 2', 'idle = a / 0', 'b = a + volume']), [
      { id: 'line 2', against: 'volume', from: '0 L', to: '10 L' },
    ]);
    expect(reply.curves[0]!.outcome).toMatchObject({ missing: null, y: { unit: 'L' } });
  });

  it('stop at a point that takes too many steps, and say so', () => {
    const doubling = [
      'f0(x) = x + 1',
      ...Array.from({ length: 16 }, (_, k) => `f${String(k + 1)}(x) = f${String(k)}(x) + f${String(k)}(x)`),
    ];
    const [curve] = new Engine().ask(sheetOf([...doubling, 'y = f16(plates)']), [
      { id: 'line 17', against: 'plates', from: '0', to: '9' },
    ]).curves;
    expect(curve!.outcome).toMatchObject({ fault: { kind: expect.any(String) as string } });
    expect(JSON.stringify(curve)).toContain('steps');
  });
});

describe('with memory or without', () => {
  const texts = [
    'a = 1',
    'a = volume',
    'b = a + 1',
    'b = c',
    'c = b',
    'c = f(2)',
    'f(x) = x * a',
    'f(x) = x + plates',
    'a = = 2',
    'd = f(a)',
    'e = unknown + a',
    '',
    'a + d',
  ];
  const anySheet = fc
    .record({
      lines: fc.array(fc.constantFrom(...texts), { maxLength: 7 }),
      plates: fc.constantFrom(3, 12),
      units: fc.constantFrom('metric', 'us'),
    })
    .map(({ lines, plates, units }) =>
      sheetOf(lines, {
        units,
        quantities: quantities.map((one) => (one.name === 'plates' ? { ...one, si: plates } : one)),
      }),
    );
  const curvesOf = ({ lines }: FormulaSheet): CurveAsk[] =>
    lines.map(({ id }) => ({ id, against: 'plates', from: '0', to: 'plates' }));

  it('every page comes to the same, whatever was asked before', () => {
    fc.assert(
      fc.property(fc.array(anySheet, { minLength: 2, maxLength: 6 }), (sheets) => {
        const engine = new Engine();
        for (const sheet of sheets) {
          const fresh = answer({ sheet, curves: curvesOf(sheet) });
          expect(engine.ask(sheet, curvesOf(sheet))).toEqual(fresh);
        }
      }),
      { numRuns: 150 },
    );
    expect(told(new Engine().ask(sheetOf(['a = volume'])).results[0]!)).toBe('120 L');
  });
});
