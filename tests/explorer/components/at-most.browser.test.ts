// A field that takes so many letters: what goes beyond is not put in and is told, what stood there stays, and whoever
// listens never hears of it.

import { html, render } from 'lit';
import { afterEach, describe, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { atMost } from '../../../explorer/components/field/at-most.js';

afterEach(() => document.body.replaceChildren());

function field(text: string, most = 5): { input: HTMLInputElement; heard: string[]; words: () => string } {
  const heard: string[] = [];
  const listen = (event: Event): void => void heard.push((event.target as HTMLInputElement).value);
  const home = document.createElement('div');
  document.body.append(home);
  render(
    html`<label>Title <input ${atMost({ most, what: 'a title' })} .value=${text} @input=${listen} /></label>`,
    home,
  );
  const input = home.querySelector('input')!;
  return { input, heard, words: () => home.querySelector('[role=status]')!.textContent };
}

describe('a field for at most five letters', () => {
  it('takes five', async () => {
    const { input, heard, words } = field('');
    await userEvent.type(input, 'abcde');
    expect([input.value, heard.at(-1), words()]).toEqual(['abcde', 'abcde', '']);
  });

  it('does not take the sixth, wherever it is typed, and the caret stays there', async () => {
    const { input, heard, words } = field('abcde');
    input.focus();
    input.setSelectionRange(2, 2);
    await userEvent.keyboard('x');
    expect([input.value, input.selectionStart, heard]).toEqual(['abcde', 2, []]);
    expect(words()).toBe('A title has at most 5 letters; this would make it 6. It was not put in.');
    await userEvent.keyboard('{Backspace}');
    expect([input.value, words()]).toEqual(['acde', '']);
  });

  it('leaves out all of a paste that is too long', () => {
    const { input, heard, words } = field('ab');
    input.focus();
    input.value = `ab${'x'.repeat(200_000)}`; // as the browser does, without a key
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
    expect([input.value, heard]).toEqual(['ab', []]);
    expect(words()).toContain('this would make it 200\u2009002');
  });

  it('lets a text that was longer before be made shorter', async () => {
    const { input, heard } = field('abcdefgh');
    input.focus();
    input.setSelectionRange(8, 8);
    await userEvent.keyboard('{Backspace}');
    expect([input.value, heard]).toEqual(['abcdefg', ['abcdefg']]);
  });
});
