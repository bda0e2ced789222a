// The formula entry on a page: typed where it stands, computed in the real worker, told what is wrong, undone, plotted.

import axe from 'axe-core';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { page as browserPage, userEvent } from 'vitest/browser';
import '../../../../explorer/styles/tokens.css';
import '../../../../explorer/styles/page.css';
import '../../../../explorer/styles/figure.css';
import '../../../../explorer/styles/entries.css';
import '../../../../explorer/styles/words.css';
import '../../../../explorer/styles/setup.css';
import { kindNames } from '../../../../explorer/entries/registry.js';
import { kindNamed } from '../../../../explorer/entries/registry.js';
import type { Json } from '../../../../explorer/state/notebook-record.js';
import { PageHost } from '../../../support/page-host.js';
import { until } from '../../../support/until.js';

let host: PageHost | undefined;
beforeEach(() => browserPage.viewport(1240, 900));

const formulas = (...texts: string[]): { id: string; kind: string; data: Json }[] =>
  texts.map((text, k) => ({ id: `f${String(k)}`, kind: 'formula', data: { text, plot: null } }));

function opened(...texts: string[]): PageHost {
  host = new PageHost(formulas(...texts));
  return host;
}

const entry = (k = 0): HTMLElement => host!.page.querySelector<HTMLElement>(`[data-entry=f${String(k)}]`)!;
const field = (k = 0): HTMLTextAreaElement => entry(k).querySelector('textarea')!;
const plain = (element: Element | null): string => (element?.textContent ?? '').replace(/[\s\u00a0]+/gu, ' ').trim();
const result = (k = 0): string => plain(host!.page.querySelector(`[data-entry=f${String(k)}] .formula-result`));
const correction = (k = 0): string => plain(host!.page.querySelector(`[data-entry=f${String(k)}] .formula-correction`));

async function shows(text: string, k = 0): Promise<void> {
  await expect.poll(() => result(k)).toBe(text);
}
async function corrects(pattern: RegExp, k = 0): Promise<void> {
  await expect.poll(() => correction(k)).toMatch(pattern);
}
function button(words: string, k = 0): HTMLButtonElement {
  const found = [...entry(k).querySelectorAll('button')].find((one) => plain(one) === words);
  if (found === undefined) throw new Error(`no button ‘${words}’`);
  return found;
}
async function type(text: string, k = 0): Promise<void> {
  await userEvent.fill(field(k), text);
}

async function axeFaults(within: HTMLElement): Promise<string[]> {
  const { violations } = await axe.run(within);
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`);
}

describe('a formula on a page', () => {
  it('is a kind that can be added', async () => {
    expect(kindNames).toContain('formula');
    expect((await kindNamed('formula'))!.title).toBe('Formula');
  });

  it('shows what it comes to, and follows the numbers of the page and the other formulas', async () => {
    const { page } = opened('pure = volume * strength', 'double = 2 * pure');
    await shows('= 11.4 L', 0);
    await shows('= 22.8 L', 1);
    page.dispatchEvent(new CustomEvent('kp-change', { detail: { key: 'charge.strength', value: 0.1 }, bubbles: true }));
    await shows('= 12 L', 0);
    await shows('= 24 L', 1);
  });

  it('is typed where it stands, kept as it is typed, and undone in one step', async () => {
    opened('');
    await until(() => host!.page.querySelector('textarea') !== null);
    host!.pause();
    await userEvent.type(field(), 'volume / 2');
    await shows('= 60 L');
    expect(host!.entries[0]!.data).toEqual({ text: 'volume / 2', plot: null });
    host!.undo();
    await expect.poll(() => field().value).toBe('');
    expect(correction()).toBe('');
    host!.redo();
    await shows('= 60 L');
  });

  it('stays one line', async () => {
    opened('volume');
    await shows('= 120 L');
    await userEvent.type(field(), '{Enter} * 2');
    await shows('= 240 L');
    expect(field().value).toBe('volume * 2');
  });

  it('keeps the text and the last good value while something is wrong, marks it and says what would be right', async () => {
    opened('volume * 2', 'other = 3');
    await shows('= 240 L');
    await type('volum * 2');
    await corrects(/^Nothing here is called ‘volum’: did you mean volume\?/u);
    expect(result()).toBe('240 L, before');
    expect(plain(entry().querySelector('mark'))).toBe('volum');
    expect(field().getAttribute('aria-invalid')).toBe('true');
    expect(document.getElementById(field().getAttribute('aria-describedby')!)!.textContent).toContain('volum');
    button('Put volume').click();
    await shows('= 240 L');
    expect(field().value).toBe('volume * 2');
    expect(correction()).toBe('');
    expect(document.activeElement).toBe(field());
  });

  it('tells a circle to each of its lines and leaves the others alone', async () => {
    opened('a = b', 'b = a', 'c = 3');
    await corrects(/^This goes in a circle: a needs b and b needs a/u, 0);
    await corrects(/^This goes in a circle: b needs a and a needs b/u, 1);
    await shows('= 3', 2);
  });

  it('moves nothing while it is typed', async () => {
    opened('volume * 2', 'other = 3');
    await shows('= 3', 1);
    const before = entry(1).querySelector('kp-formula')!.getBoundingClientRect().top;
    await type('volum');
    await corrects(/did you mean/u);
    expect(entry(1).querySelector('kp-formula')!.getBoundingClientRect().top).toBe(before);
  });

  it('offers its value by name to other entries, once it has one', async () => {
    const { page } = opened('pure = volume * strength', 'truth = 1 < 2', 'rate = volume / (2 h)');
    const offer = vi.spyOn(page, 'offer');
    await shows('= 60 L/h', 2);
    await shows('is true', 1);
    expect(offer).toHaveBeenCalledWith('f0', [
      { name: 'pure', label: 'pure', quantity: 'volume', value: expect.closeTo(0.0114, 12) as number },
    ]);
    expect(offer).toHaveBeenCalledWith('f1', []);
    expect(offer).toHaveBeenCalledWith('f2', []); // pages know no flows
  });

  it('is read aloud in order, without faults, with the list of names open', async () => {
    opened('pure = volume * strength', 'volum');
    await shows('= 11.4 L');
    button('Names and functions').click();
    await until(() => entry().querySelector('kp-names li') !== null);
    expect(await axeFaults(host!.page)).toEqual([]);
  });
});

describe('what takes too long', () => {
  it('is stopped while the page stays awake; the others keep their values', async () => {
    // Forty thousand azeotropes, three seconds of work, within the steps a line may take.
    const twelve = (call: string): string => `sum(${Array.from({ length: 12 }, () => call).join(', ')})`;
    const calls = ['azeotropeStrength(x)', 'd0(x)', 'd1(x)', 'd2(x)'].map(
      (call, k) => `d${String(k)}(x) = ${twelve(call)}`,
    );
    opened('volume / 2', ...calls, 'slow = 1');
    const slow = 1 + calls.length;
    await shows('= 60 L', 0);
    await shows('= 1', slow);
    let frames = 0;
    const count = (): void => {
      if (correction(slow) !== '') return;
      frames += 1;
      requestAnimationFrame(count);
    };
    field(slow).addEventListener('input', count, { once: true });
    await type('2 * d3(100 kPa) + d3(90 kPa)', slow);
    await corrects(
      /^It took too long \(more than 1 s\) or too much memory, and was stopped: change it, and it is tried again\.$/u,
      slow,
    );
    expect(result(0)).toBe('= 60 L');
    expect(result(slow)).toBe('1, before');
    // Between the question and the word that it was stopped the page was drawn: had it waited, no frame would have come.
    expect(frames).toBeGreaterThan(3);
    await type('d0(1 atm) / 12', slow);
    await shows('= 0.97195', slow);
    await shows('= 60 L', 0);
  });
});

describe('the list of names', () => {
  it('has all names with values and examples, is searched by typing, and puts a name into the formula', async () => {
    opened('pure = volume * strength', '2 * ');
    await corrects(/ends before it is complete/u, 1);
    field(1).focus();
    field(1).setSelectionRange(4, 4);
    button('Names and functions', 1).click();
    await until(() => entry(1).querySelector('kp-names li') !== null);
    const list = (): string => plain(entry(1).querySelector('kp-names'));
    expect(document.activeElement).toBe(entry(1).querySelector('kp-names input'));
    for (const text of [
      'strength strength of the charge: 9.5 % vol',
      'pure 11.4 L',
      'boilingPoint(10%, 1 atm) = 92.23 °C',
      'imp_gal imperial gallon',
    ]) {
      expect(list()).toContain(text);
    }
    await userEvent.fill(entry(1).querySelector('kp-names input')!, 'azeotrope');
    await expect.poll(() => plain(entry(1).querySelector('.names-count'))).toBe('2 names');
    await userEvent.fill(entry(1).querySelector('kp-names input')!, 'charge volume');
    await expect.poll(() => list()).not.toContain('azeotrope');
    button('volume', 1).click();
    await shows('= 240 L', 1);
    expect(field(1).value).toBe('2 * volume');
    expect(document.activeElement).toBe(field(1));
  });

  it('says when nothing is called so', async () => {
    opened('1');
    await shows('= 1');
    button('Names and functions').click();
    await until(() => entry().querySelector('kp-names input') !== null);
    await userEvent.fill(entry().querySelector('kp-names input')!, 'qqq');
    await expect.poll(() => plain(entry().querySelector('.names-count'))).toBe('Nothing is called so here.');
  });
});

describe('a formula plotted', () => {
  const figure = (): string => entry().querySelector('kp-figure figure')?.getAttribute('aria-label') ?? '';

  it('is drawn against what it depends on, with the page’s own place on it, and follows', async () => {
    opened('pure = volume * strength');
    await shows('= 11.4 L');
    button('Plot it').click();
    await expect
      .poll(() => figure().replace(/\u00a0/gu, ' '))
      .toBe(
        'pure against volume, from 0 L at 0 L to 22.8 L at 240 L; lowest 0 L, highest 22.8 L; now 11.4 L at 120 L.',
      );
    const select = entry().querySelector('select')!;
    expect([...select.options].map(({ value }) => value)).toEqual(['volume', 'strength']);
    await userEvent.selectOptions(select, 'strength');
    await expect.poll(() => figure().replace(/\u00a0/gu, ' ')).toContain('from 1.2 L at 1 % vol to 114 L at 95 % vol');
    const to = entry().querySelector<HTMLInputElement>('[aria-label="range to"]')!;
    await userEvent.fill(to, '20 %');
    await userEvent.fill(to, '20%');
    await expect.poll(() => figure().replace(/\u00a0/gu, ' ')).toContain('to 24 L at 20 % vol');
    await userEvent.fill(to, '20');
    await expect
      .poll(() => plain(entry().querySelector('.formula-range + .correction')))
      .toBe('The range, ‘to’: a share goes from 0 to 1: write 40% or 0.4.');
    expect(figure()).toContain('20'); // the last good curve stays
    button('Take the plot away').click();
    await expect.poll(() => entry().querySelector('kp-figure')).toBeNull();
  });

  it.each([
    ['with its plot', (): unknown => undefined],
    ['while what its plot needs is on its way', (): unknown => new Promise(() => undefined)],
  ])('is typed in the middle %s: each letter stays where it was put', async (_, prepare) => {
    const data = { text: 'pure = volume', plot: { against: 'volume', from: '0', to: '1 L' } };
    host = new PageHost([{ id: 'f0', kind: 'formula', data }]);
    await host.has('kp-figure figure');
    const kind = (await kindNamed('formula'))!;
    const before = kind.prepare!;
    const spy = vi.spyOn(kind, 'prepare').mockImplementation((own) => (prepare() ?? before(own)) as Promise<void>);
    field().focus();
    field().setSelectionRange(2, 2);
    await userEvent.keyboard('a');
    await userEvent.keyboard('b');
    expect(field().value).toBe('puabre = volume');
    expect(host.entries[0]!.data).toEqual({ ...data, text: 'puabre = volume' });
    expect(spy.mock.calls.length).toBeGreaterThan(0);
    spy.mockRestore();
  });

  it('may be a function of its own argument, with gaps that say why', async () => {
    opened('root(x) = sqrt(x)');
    await shows('is a function of x');
    button('Plot it').click();
    await until(() => figure() !== '');
    await userEvent.fill(entry().querySelector<HTMLInputElement>('[aria-label="range from"]')!, '-1');
    await expect
      .poll(() => plain(entry().querySelector('.formula-missing')))
      .toBe('Where the curve has a gap: That has no value.');
    expect(await axeFaults(host!.page)).toEqual([]);
  });
});
