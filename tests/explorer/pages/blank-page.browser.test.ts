// A page of one's own under a keyboard: entries added, written, moved, duplicated, deleted, and all of it undone and
// redone, with the focus where the next key is wanted.

import axe from 'axe-core';
import { describe, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import '../../../explorer/styles/tokens.css';
import '../../../explorer/styles/page.css';
import '../../../explorer/styles/words.css';
import '../../../explorer/styles/entries.css';
import type { PageRecord } from '../../../explorer/state/notebook-record.js';
import { PageHost } from '../../support/page-host.js';
import { settled } from '../../support/settled.js';
import { until } from '../../support/until.js';
import { scenarioOn } from '../../../explorer/state/page-scenario.js';
import { numberAt } from '../../../explorer/state/paths.js';

let host: PageHost;

const text = (id: string, words = id): PageRecord['entries'][number] => ({ id, kind: 'text', data: { text: words } });

async function opened(entries: PageRecord['entries']): Promise<void> {
  host = new PageHost(entries);
  if (entries.length === 0) {
    // The page opens its title for writing and puts the focus there; a key pressed before would be lost.
    await hasFocus('.page-editor input');
    await host.has('.page-adding button'); // which comes a frame later
    return;
  }
  await host.drawn();
  await host.has(`[data-entry=${entries.at(-1)!.id}] [data-do=edit]`);
}

/** Waits until the focus is on such a thing. */
async function hasFocus(selector: string): Promise<void> {
  await until(() => document.activeElement?.matches(selector));
}

const order = (): string => host.entries.map(({ id }) => id).join('');
const shown = (): string =>
  [...host.page.querySelectorAll<HTMLElement>('[data-entry]')].map((body) => body.dataset.entry).join('');

/** Name of what has the focus. */
function focused(): string {
  const element = document.activeElement!;
  return element.getAttribute('aria-label') ?? element.textContent.trim();
}

function word(entry: string, what: string): HTMLElement {
  return host.page.querySelector<HTMLElement>(`[data-entry=${entry}] [data-do=${what}]`)!;
}

async function press(entry: string, what: string): Promise<void> {
  word(entry, what).focus();
  await userEvent.keyboard('{Enter}');
  await settled();
}

describe('a page of one’s own, by keyboard', () => {
  it('begins empty, with its title to be written and one word to press', async () => {
    await opened([]);
    await userEvent.keyboard('{Control>}a{/Control}My still{Enter}');
    expect(host.history.now.pages[0]!.title).toBe('My still');
    await until(() => focused() === 'Edit title');
    expect(host.page.querySelector('.page-adding')!.textContent).toContain('Add the first entry');
  });

  it('takes an entry from the list, writes in it, and comes back to its words with Escape', async () => {
    await opened([]);
    host.page.querySelector<HTMLElement>('.page-adding button')!.focus();
    await userEvent.keyboard('{Enter}');
    await until(() => focused() === 'Text');
    await userEvent.keyboard('{Enter}');
    await hasFocus('.entry-editor textarea');
    await userEvent.keyboard('One *plate* more.');
    await host.has('[data-entry=e1] em');
    expect(host.entries).toEqual([{ id: 'e1', kind: 'text', data: { text: 'One *plate* more.' } }]);
    expect(host.page.querySelector('[data-entry=e1] em')!.textContent).toBe('plate');
    await userEvent.keyboard('{Escape}');
    await until(() => focused().startsWith('Edit: text ‘One plate more'));
  });

  it('moves an entry with the focus staying on the word that moves it, and no further than the ends', async () => {
    await opened([text('a'), text('b'), text('c')]);
    await press('c', 'up');
    expect([order(), shown()]).toEqual(['acb', 'acb']);
    expect(document.activeElement).toBe(word('c', 'up'));
    await userEvent.keyboard('{Enter}');
    await settled();
    await userEvent.keyboard('{Enter}');
    await settled();
    expect([order(), shown()]).toEqual(['cab', 'cab']);
    expect(document.activeElement).toBe(word('c', 'up'));
    expect(word('c', 'up').getAttribute('aria-disabled')).toBe('true');
    expect(host.said.at(-1)).toBe('text ‘c’ moved up, now 1 of 3');
  });

  it('duplicates an entry and stands on the copy', async () => {
    await opened([text('a'), text('b')]);
    await press('a', 'duplicate');
    expect(host.entries.map(({ data }) => data)).toEqual([{ text: 'a' }, { text: 'a' }, { text: 'b' }]);
    expect(document.activeElement).toBe(word('e1', 'duplicate'));
  });

  it('deletes an entry and stands on the next, or on the last, or on the word that adds', async () => {
    await opened([text('a'), text('b'), text('c')]);
    await press('b', 'delete');
    expect([order(), document.activeElement === word('c', 'delete')]).toEqual(['ac', true]);
    await press('c', 'delete');
    expect([order(), document.activeElement === word('a', 'delete')]).toEqual(['a', true]);
    await press('a', 'delete');
    expect(order()).toBe('');
    expect(focused()).toBe('Add the first entry');
  });

  it('undoes and redoes all of it by the usual keys', async () => {
    await opened([text('a'), text('b')]);
    const before = host.history.now;
    await press('b', 'up');
    await press('a', 'duplicate');
    await press('b', 'delete');
    const after = host.history.now;
    for (let steps = 0; steps < 3; steps += 1) await userEvent.keyboard('{Control>}z{/Control}');
    await settled();
    expect(host.history.now).toBe(before);
    expect(shown()).toBe('ab');
    await userEvent.keyboard('{Control>}{Shift>}z{/Shift}{/Control}{Control>}y{/Control}{Control>}y{/Control}');
    await settled();
    expect(host.history.now).toBe(after);
    expect(document.activeElement).not.toBe(document.body);
  });

  it('undoes what is being written in the text it is written in', async () => {
    await opened([text('a', '')]);
    await press('a', 'edit');
    await hasFocus('.entry-editor textarea');
    await userEvent.keyboard('first');
    host.pause();
    await userEvent.keyboard(' second');
    await userEvent.keyboard('{Control>}z{/Control}');
    await settled();
    expect(host.entries[0]!.data).toEqual({ text: 'first' });
    expect((document.activeElement as HTMLTextAreaElement).value).toBe('first');
  });

  it('undoes a number of its sentence, typed or stepped, from the number itself', async () => {
    await opened([{ id: 's', kind: 'setup', data: { sentence: ['With ', { blank: 'still.column.count' }, '.'] } }]);
    const number = (await host.has('[role=spinbutton]')) as HTMLInputElement;
    number.focus();
    await userEvent.keyboard('{ArrowUp}{ArrowUp}');
    expect(numberAt(scenarioOn(host.history.now, 'page-1'), 'still.column.count')).toBe(14);
    await userEvent.keyboard('{Control>}z{/Control}');
    await settled();
    expect(numberAt(scenarioOn(host.history.now, 'page-1'), 'still.column.count')).toBe(12);
    expect(number.value).toBe('12');
  });
});

describe('a page of one’s own', () => {
  it('gives axe nothing to complain of while an entry is edited and while one is added', async () => {
    await opened([
      text('a', 'Some words.'),
      { id: 's', kind: 'setup', data: { sentence: [{ blank: 'still.column.count' }, '.'] } },
    ]);
    await press('s', 'edit');
    const rules = { rules: { region: { enabled: false }, 'page-has-heading-one': { enabled: false } } };
    expect((await axe.run(host.page, rules)).violations).toEqual([]);
    await press('a', 'add');
    await host.has('.add-list li');
    expect((await axe.run(host.page, rules)).violations).toEqual([]);
  });

  it('keeps an entry of a kind it does not know as it is, and says so', async () => {
    const strange = { id: 'x', kind: 'from-tomorrow', data: { rows: [1, 2] } };
    await opened([text('a'), strange]);
    expect((await host.has('.entry-trouble')).textContent).toContain('‘from-tomorrow’');
    await press('x', 'up');
    expect(host.entries[0]).toEqual(strange);
  });

  it('holds the words to press in room of their own: nothing moves when they appear', async () => {
    await opened([text('a'), text('b')]);
    const places = (): number[] =>
      [...host.page.querySelectorAll('[data-entry] > p')].map((words) => Math.round(words.getBoundingClientRect().top));
    const before = places();
    await userEvent.hover(host.page.querySelector('[data-entry=b] > p')!);
    word('a', 'edit').focus({ preventScroll: true });
    await settled();
    expect(places()).toEqual(before);
  });
});
