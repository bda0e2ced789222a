// A page of 200 formulas that use each other, and one of 20 heavy plots: what a keystroke costs, told in counts.

import { describe, expect, it, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import { FormulaElement } from '../../../../explorer/entries/formula/kp-formula.js';
import type { Json } from '../../../../explorer/state/notebook-record.js';
import { PageHost } from '../../../support/page-host.js';
import { settled } from '../../../support/settled.js';
import { until } from '../../../support/until.js';

interface Typed {
  readonly id: string;
  readonly kind: string;
  readonly data: Json;
}
const formula = (id: string, text: string, plot: Json = null): Typed => ({ id, kind: 'formula', data: { text, plot } });
const entryOf = (host: PageHost, id: string): Element | null => host.page.querySelector(`[data-entry=${id}]`);
const result = (host: PageHost, id: string): string =>
  entryOf(host, id)?.querySelector('.formula-result')?.textContent.replace(/\s+/gu, ' ').trim() ?? '';

describe('a page of 200 formulas that use each other', () => {
  const lines = Array.from({ length: 200 }, (_, k) =>
    formula(`e${String(k)}`, k === 0 ? 'x0 = volume' : `x${String(k)} = x${String(k - 1)} + 1 L`),
  );

  it('draws, at a keystroke, the line that changed and no other, and takes note of it once', async () => {
    const host = new PageHost(lines);
    await until(() => result(host, 'e199') === '= 319 L');
    await settled();
    const drawn = vi.spyOn(FormulaElement.prototype as unknown as { render: () => unknown }, 'render');
    const field = entryOf(host, 'e199')!.querySelector('textarea')!;
    field.focus();
    field.setSelectionRange(field.value.length, field.value.length);
    const touched = new Set<Node>();
    const watch = new MutationObserver((all) => all.forEach(({ target }) => touched.add(target)));
    watch.observe(host.page, { subtree: true, childList: true, attributes: true, characterData: true });
    await userEvent.keyboard('*');
    await userEvent.keyboard('2');
    await expect.poll(() => result(host, 'e199')).toBe('= 320 L');
    await settled();
    watch.disconnect();
    // The line itself: its name, its field and mirror, what it comes to, what is wrong with it, its words.
    const own = entryOf(host, 'e199')!.closest('section')!;
    expect([...touched].filter((node) => !own.contains(node)).map(({ nodeName }) => nodeName)).toEqual([]);
    expect(touched.size).toBeLessThanOrEqual(24);
    // Twice typed, twice answered.
    expect(drawn.mock.calls.length).toBeLessThanOrEqual(8);
  });
});

describe('a page of 20 heavy plots', () => {
  const doubling = Array.from({ length: 12 }, (_, k) =>
    formula(
      `f${String(k)}`,
      k === 0 ? 'f0(x) = x + 1' : `f${String(k)}(x) = f${String(k - 1)}(x) + f${String(k - 1)}(x)`,
    ),
  );
  const plots = Array.from({ length: 20 }, (_, k) =>
    formula(`p${String(k)}`, `f11(plates) + ${String(k)}`, { against: 'plates', from: '0', to: '60' }),
  );

  it('answers what is typed while they are being drawn', async () => {
    const host = new PageHost([formula('last', 'volume * 2'), ...doubling, ...plots]);
    await until(() => result(host, 'last') === '= 240 L');
    const curves = (): number => host.page.querySelectorAll('kp-figure').length;
    const field = entryOf(host, 'last')!.querySelector('textarea')!;
    await userEvent.fill(field, 'volume * 3');
    await expect.poll(() => result(host, 'last')).toBe('= 360 L');
    expect(curves()).toBeLessThan(plots.length);
    await until(() => curves() === plots.length);
  });
});
