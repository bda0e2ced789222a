// Data on a page: rows typed, pasted or opened are drawn beside the page's run, faults are said and lose nothing, all of
// it is undone.

import { describe, expect, it } from 'vitest';
import '../../../../explorer/styles/tokens.css';
import '../../../../explorer/styles/page.css';
import '../../../../explorer/styles/figure.css';
import '../../../../explorer/styles/entries.css';
import { letters } from '../../../../explorer/state/limits.js';
import { PageHost } from '../../../support/page-host.js';
import { until } from '../../../support/until.js';

const log = 'collected [L],spout [% vol],head [°C]\n0.5,93,78.5\n4,92.5,78.6\n8,80,82\n';

async function shown(text: string): Promise<PageHost> {
  const host = new PageHost([{ id: 'e1', kind: 'data', data: { text, along: 0 } }]);
  await host.drawn();
  return host;
}

describe('a data entry', () => {
  it('draws a panel a column over the first, with the page’s own curve beside what it has too', async () => {
    const host = await shown(log);
    const figure = await host.has('kp-figure');
    await until(() => figure.querySelectorAll('.kp-plot').length === 2);
    expect(figure.querySelectorAll('.kp-plot .kp-points')).toHaveLength(2);
    const said = (): string => figure.querySelector('figure')!.getAttribute('aria-label')!;
    await until(() => said().includes('head by this page'));
    expect(said()).toContain(
      'spout against collected: 3 of your own rows, 80.0 to 93.0 % vol; beside it spout by this page',
    );
    expect(figure.querySelector('svg [aria-label]')).toBeNull();
  });

  it('says what cannot be read, with its line, and keeps the text', async () => {
    const host = await shown(`${log}many,90,79\n`);
    const faults = await host.has('.data-faults');
    expect(faults.textContent.replace(/\s+/gu, ' ')).toContain(
      'Line 5, collected: many; right would be a number in L, such as 12.5.',
    );
  });

  it('takes what is typed as one step of undoing', async () => {
    const host = await shown('');
    (await host.has('[data-entry=e1] [data-do=edit]')).click();
    const field = (await host.has('.data-editor textarea')) as HTMLTextAreaElement;
    for (const text of ['collected [L]', log]) {
      field.value = text;
      field.dispatchEvent(new InputEvent('input', { bubbles: true }));
    }
    await host.has('kp-figure');
    host.undo();
    await until(() => host.page.querySelector('[data-entry=e1] kp-figure') === null);
    expect(field.value).toBe('');
  });

  it('opens a file in place of the rows, and refuses one that is too long without losing them', async () => {
    const host = await shown('');
    (await host.has('[data-entry=e1] [data-do=edit]')).click();
    const field = (await host.has('.data-editor input[type=file]')) as HTMLInputElement;
    const open = (text: string): void => {
      const files = new DataTransfer();
      files.items.add(new File([text], 'log.csv', { type: 'text/csv' }));
      field.files = files.files;
      field.dispatchEvent(new Event('change', { bubbles: true }));
    };
    open(log);
    await host.has('kp-figure');
    open('x'.repeat(letters.any.most + 1));
    const said = await host.has('.data-editor .said');
    await until(() => said.textContent.includes(`at most ${String(letters.any.most)} letters`));
    expect(host.page.querySelector('kp-figure')).not.toBeNull();
  });
});
