// 'The ceiling moves' under hands: one number with its own ruler, a figure and sentences that follow it.

import axe from 'axe-core';
import { html, render } from 'lit';
import { describe, expect, it } from 'vitest';
import '../../../explorer/styles/tokens.css';
import '../../../explorer/styles/page.css';
import '../../../explorer/styles/figure.css';
import '../../../explorer/styles/laid-over.css';
import '../../../explorer/entries/ceiling-moves/the-ceiling-moves.js';
import type { CeilingMoves } from '../../../explorer/entries/ceiling-moves/the-ceiling-moves.js';
import { lineQuestions, questionAt } from '../../../explorer/state/drift-rows.js';
import { unitSystems } from '../../../explorer/text/unit-systems.js';
import { drift, type AzeotropeAt } from '../../../explorer/worker/kinds/drift.js';
import { until } from '../../support/until.js';

const line = lineQuestions.map(drift);
const at = (pressure_Pa: number): AzeotropeAt => drift(questionAt(pressure_Pa)).points[0]!;

/** The entry on a page that sets what it is told, as the notebook does. */
async function shown(): Promise<{ entry: CeilingMoves; changes: number[]; above: string[] }> {
  const main = document.createElement('main');
  const [changes, above]: [number[], string[]] = [[], []];
  main.addEventListener('kp-number-focus', ({ type }) => above.push(type));
  main.addEventListener('kp-change', ({ detail }) => {
    changes.push(detail.value);
    set(entry, detail.value);
  });
  document.body.append(main);
  render(
    html`<kp-ceiling-moves
      .line=${line}
      .here=${at(101_325)}
      .pressure=${101_325}
      .units=${unitSystems.metric}
    ></kp-ceiling-moves>`,
    main,
  );
  const entry = main.querySelector('kp-ceiling-moves')!;
  await until(() => entry.querySelector('kp-figure svg .kp-band') !== null);
  return { entry, changes, above };
}

/** As the page does it. */
function set(entry: CeilingMoves, pressure: number): void {
  Object.assign(entry, { pressure, here: at(pressure) });
}

/** Its sentences, with plain spaces. */
function said(entry: CeilingMoves): string {
  return entry.textContent.replace(/\s+/g, ' ');
}

describe('the ceiling moves', () => {
  it('says where the azeotrope stands, how sure that is, and where it ends', async () => {
    const { entry } = await shown();
    await until(() => said(entry).includes('boils at'));
    expect(said(entry)).toContain('which is 97.2 % vol');
    expect(said(entry)).toMatch(/97\.\d+ ± 0\.\d+ % vol/);
    expect(said(entry)).toMatch(/reaches pure alcohol and is gone/);
    expect(said(entry)).toContain('Carey and Lewis, 1932');
  });

  it('follows its number down to where there is no azeotrope', async () => {
    const { entry } = await shown();
    set(entry, 7000);
    await until(() => said(entry).includes('At 7.0 kPa there is no azeotrope'));
    expect(said(entry)).toContain('extrapolated');
    expect(entry.querySelector('.kp-dot.ink')).toBeNull();
  });

  it('sends one change a step, from the blank and from its own ruler, and keeps the page’s ruler out of it', async () => {
    const { entry, changes, above } = await shown();
    const input = entry.querySelector('input')!;
    input.focus();
    input.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowUp', bubbles: true, cancelable: true }));
    await entry.updateComplete;
    expect(changes).toEqual([102_000]);
    entry.querySelector<HTMLButtonElement>('.step.down')!.click();
    await entry.updateComplete;
    expect(changes).toEqual([102_000, 101_000]);
    expect(above).toEqual([]);
  });

  it('corrects a number out of range beside it and goes on with the last good one', async () => {
    const { entry, changes } = await shown();
    const input = entry.querySelector('input')!;
    input.focus();
    input.value = '500';
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
    input.blur();
    await entry.updateComplete;
    expect(entry.querySelector('.correction')!.textContent).toContain('is more than these pages look at: 3 to 300');
    expect(changes).toEqual([]);
  });

  it('has nothing for axe to complain of', async () => {
    const { entry } = await shown();
    const { violations } = await axe.run(entry, { rules: { 'color-contrast': { enabled: true } } });
    expect(violations.map((rule) => rule.id)).toEqual([]);
  });
});
