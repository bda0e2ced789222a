// What the worker does with what it is asked: it listens every few milliseconds, so that nothing that is heavy keeps it
// from the next keystroke. The clock is told by the test: each look at it is a millisecond later.

import { describe, expect, it } from 'vitest';
import type { ToPage } from '../../../explorer/formula/formula-client.js';
import { Memory } from '../../../explorer/formula/memory.js';
import { Work } from '../../../explorer/formula/work.js';
import { sheetOf, told } from '../../support/formulas.js';

function worker(): { work: Work; said: ToPage[]; rests: (() => void)[]; looks: () => number } {
  const said: ToPage[] = [];
  const rests: (() => void)[] = [];
  let clock = 0;
  const now = (): number => (clock += 1);
  const work = new Work({
    post: (message) => said.push(message),
    memory: new Memory(),
    now,
    rest: (go) => rests.push(go),
  });
  return { work, said, rests, looks: () => clock };
}

/** Every point of it takes thousands of steps. */
const heavy = [
  'f0(x) = x + 1',
  ...Array.from({ length: 11 }, (_, k) => `f${String(k + 1)}(x) = f${String(k)}(x) + f${String(k)}(x)`),
];
const plots = Array.from({ length: 20 }, (_, k) => `p${String(k)} = f11(plates) + ${String(k)}`);
const sheet = sheetOf([...heavy, ...plots]);
const curve = (k: number): { id: string; against: string; from: string; to: string } => ({
  id: `line ${String(heavy.length + k)}`,
  against: 'plates',
  from: '0',
  to: '60',
});
const finals = (said: readonly ToPage[]): string[] => said.filter(({ is }) => is !== 'began').map(({ is }) => is);

describe('the worker', () => {
  it('answers values at once', () => {
    const { work, said } = worker();
    work.take({ turn: 1, ask: { sheet, curves: [] } });
    const [reply] = said.filter((message) => message.is === 'reply');
    expect(reply!.reply.results.map(told).slice(-1)).toEqual(['26\u2009643']);
  });

  it('lays a heavy curve down to listen, some milliseconds after it began, and goes on', () => {
    const { work, said, rests, looks } = worker();
    work.take({ turn: 1, ask: { sheet, curves: [curve(0)] } });
    expect(finals(said)).toEqual([]);
    expect(rests).toHaveLength(1);
    for (let go = rests.shift(); go !== undefined; go = rests.shift()) {
      const before = looks();
      go();
      expect(looks() - before).toBeLessThan(20);
    }
    expect(finals(said)).toEqual(['reply']);
  });

  it('does not finish what is no longer wanted', () => {
    const { work, said, rests } = worker();
    work.take({ turn: 1, ask: { sheet, curves: Array.from({ length: 20 }, (_, k) => curve(k)) } });
    work.take({ drop: 1 });
    rests.shift()!();
    expect(finals(said)).toEqual(['dropped']);
    expect(rests).toEqual([]);
  });

  it('shows, while it is at a long curve, that it goes on', () => {
    const { work, said, rests } = worker();
    work.take({ turn: 1, ask: { sheet, curves: [curve(0)] } });
    for (let go = rests.shift(); go !== undefined; go = rests.shift()) go();
    const signs = said.filter((message) => message.is === 'began' && message.key === `curve of ${curve(0).id}`);
    expect(signs.length).toBeGreaterThan(1);
  });
});
