// What a reader of the explorer does and sees, for journeys: numbers of the sentence, the figure in words,
// the text of an entry.

import type { Page } from 'playwright';
import { expect } from 'vitest';

export class Reader {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  /** Types a number into its blank, over what stands there. */
  async type(label: string, text: string): Promise<void> {
    const blank = this.#blank(label);
    await blank.focus();
    await blank.fill(text);
  }

  /** Presses keys in a blank, one after the other. */
  async press(label: string, ...keys: string[]): Promise<void> {
    for (const key of keys) await this.#blank(label).press(key);
  }

  /** What a blank says to those who hear it: '12 plates'. */
  async number(label: string): Promise<string> {
    return plain((await this.#blank(label).getAttribute('aria-valuetext')) ?? '');
  }

  /** The first figure of the page in words. */
  async figure(): Promise<string> {
    return plain((await this.page.locator('main figure').first().getAttribute('aria-label')) ?? '');
  }

  /** The words of an entry, by its name. */
  async entry(name: string): Promise<string> {
    return plain(await this.page.getByRole('region', { name }).innerText());
  }

  /** Waits until what is read holds `text`. */
  async sees(read: () => Promise<string>, text: string): Promise<void> {
    await expect.poll(read).toContain(text);
  }

  /** Waits until what is read is something else than `before`, and returns it. */
  async seesChange(read: () => Promise<string>, before: string): Promise<string> {
    await expect.poll(read).not.toBe(before);
    return read();
  }

  #blank(label: string): ReturnType<Page['getByRole']> {
    return this.page.getByRole('spinbutton', { name: label, exact: true }).first();
  }
}

/** Text with ordinary spaces. */
function plain(text: string): string {
  return text.replace(/[\s\u00a0\u2009]+/gu, ' ').trim();
}
