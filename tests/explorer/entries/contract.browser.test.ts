// What holds for every kind of entry there is, and for every figure, table and result in words: what a new one starts
// with is sound and can be drawn, damaged data are refused in words, what is asked is a pure function.

import { describe, expect, it, vi } from 'vitest';
import '../../../explorer/styles/tokens.css';
import '../../../explorer/styles/page.css';
import '../../../explorer/styles/figure.css';
import '../../../explorer/styles/entries.css';
import type { EntryKind } from '../../../explorer/entries/entry.js';
import { figureLines } from '../../../explorer/entries/figure/list.js';
import { kindNamed, kindNames } from '../../../explorer/entries/registry.js';
import { tableLines } from '../../../explorer/entries/table/list.js';
import { wordLines } from '../../../explorer/entries/words/list.js';
import type { Json } from '../../../explorer/state/notebook-record.js';
import { startingScenario } from '../../../explorer/state/scenario.js';
import { PageHost } from '../../support/page-host.js';
import { until } from '../../support/until.js';

/** A page with one such entry, once it has been drawn with its numbers. */
async function drawn(kind: string, data: Json): Promise<PageHost> {
  const host = new PageHost([{ id: 'e1', kind, data }]);
  await host.drawn();
  return host;
}

async function kindOf(name: string): Promise<EntryKind> {
  const kind = await kindNamed(name);
  expect(kind?.name).toBe(name);
  await kind!.prepare?.(kind!.start);
  return kind!;
}

describe.each(kindNames)('the kind ‘%s’', (name) => {
  it('starts with data that pass its own check and survive being written', async () => {
    const kind = await kindOf(name);
    expect(kind.check(kind.start)).toEqual({ good: true, data: kind.start });
    expect(JSON.parse(JSON.stringify(kind.start))).toEqual(kind.start);
    for (const words of [kind.title, kind.about, kind.label(kind.start)]) expect(words.trim()).not.toBe('');
  });

  it('refuses or mends damaged data without falling over, and says why in words', async () => {
    const kind = await kindOf(name);
    for (const damaged of [null, 0, 'text', [], { show: 7, figures: 'run', text: 4, sentence: [3] }]) {
      const checked = kind.check(damaged);
      if (!checked.good) expect(checked.why).toMatch(/\p{L}{3}/u);
      else expect(kind.check(checked.data).good).toBe(true);
    }
  });

  it('asks the same for the same, as plain data', async () => {
    const kind = await kindOf(name);
    for (const ask of [kind.asks, kind.asksLater]) {
      const once = ask?.(kind.start, startingScenario, {});
      const again = ask?.(kind.start, { ...startingScenario }, {});
      expect(again).toEqual(once);
      expect(JSON.parse(JSON.stringify(once ?? null))).toEqual(once ?? null);
    }
  });

  it('can be drawn as it starts, and edited', async () => {
    const kind = await kindOf(name);
    const host = await drawn(name, kind.start);
    expect(host.page.querySelector('.entry-trouble')).toBeNull();
    (await host.has('[data-entry=e1] [data-do=edit]')).click();
    await host.has('.entry-editor');
    expect(host.page.querySelector('.entry-trouble')).toBeNull();
  });
});

const pieces = [
  ...figureLines.map(({ name, title }) => ({ kind: 'figure', name, title, data: { figures: [name] } })),
  ...wordLines.map(({ name, title }) => ({ kind: 'words', name, title, data: { show: name } })),
  ...tableLines.map(({ name, title }) => ({ kind: 'table', name, title, data: { show: name } })),
];

describe.each(pieces)('$kind ‘$name’', ({ kind: name, title, data }) => {
  it('is drawn with the numbers a page starts with, and says in plain words what it shows', async () => {
    const kind = await kindOf(name);
    const view = vi.spyOn(kind, 'view');
    const host = await drawn(name, data);
    const words = await until(() => kind.words(view.mock.lastCall![0]));
    expect(host.page.querySelector('.entry-trouble')).toBeNull();
    if (name === 'figure') await host.has('kp-figure figure');
    // A question keeps its numbers back.
    expect(words).toMatch(title.startsWith('A question') ? /\p{L}{3}/u : /\d/u);
  });
});
