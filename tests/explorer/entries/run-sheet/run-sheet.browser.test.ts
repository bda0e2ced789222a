// The run sheet under hands: choices, blanks, steps, and what is typed wrongly.

import { beforeEach, describe, expect, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import type { RunSheetElement } from '../../../../explorer/entries/run-sheet/kp-run-sheet.js';
import '../../../../explorer/entries/run-sheet/kp-run-sheet.js';
import { startingScenario, type SheetSet } from '../../../../explorer/state/scenario.js';
import { unitSystems } from '../../../../explorer/text/unit-systems.js';

describe('the run sheet', () => {
  let element: RunSheetElement;
  let sent: SheetSet[];

  beforeEach(async () => {
    element = document.createElement('kp-run-sheet');
    element.given = startingScenario;
    element.units = unitSystems.metric;
    element.heat = 5500;
    sent = [];
    element.addEventListener('kp-sheet', ({ detail }) => {
      sent.push(detail.sheet);
      element.given = detail.sheet;
    });
    document.body.append(element);
    await element.updateComplete;
  });

  const sentences = (): string[] =>
    [...element.querySelectorAll('.step-sentence')].map((one) => one.textContent.replace(/\s+/gu, ' ').trim());

  it('reads as numbered sentences', () => {
    expect(element.querySelectorAll('ol > li')).toHaveLength(3);
    expect(sentences()[0]).toMatch(/, with .*, until .*\.$/u);
  });

  it('takes another way to send back from the list, and its number typed', async () => {
    await userEvent.selectOptions(page.getByRole('combobox', { name: 'reflux of step 3' }), 'hold');
    await userEvent.fill(page.getByRole('spinbutton', { name: 'step 3: strength to hold at the spout' }), '93');
    await userEvent.keyboard('{Enter}');
    expect(sent.at(-1)!.sheet[2]!.reflux).toMatchObject({ kind: 'hold', strength: 0.93 });
  });

  it('calls each number by its step, no two alike', () => {
    const names = [...element.querySelectorAll('[role=spinbutton]')].map((one) => one.getAttribute('aria-label'));
    expect(names).toHaveLength(4);
    expect(new Set(names).size).toBe(names.length);
  });

  it('steps a number by keyboard', async () => {
    const ratio = page.getByRole('spinbutton', { name: 'step 3: reflux ratio' });
    await userEvent.click(ratio);
    await userEvent.keyboard('{ArrowUp}');
    expect(sent.at(-1)!.sheet[2]!.reflux).toBe(3.5);
  });

  it('adds, moves and takes out steps, by words that say which', async () => {
    await userEvent.click(page.getByRole('button', { name: 'Add a step after: step 3' }));
    expect(sent.at(-1)!.sheet).toHaveLength(4);
    await userEvent.click(page.getByRole('button', { name: 'Move up: step 3' }));
    expect(sent.at(-1)!.sheet[1]!.reflux).toBe(3);
    await userEvent.click(page.getByRole('button', { name: 'Take out: step 1' }));
    expect(sent.at(-1)!.sheet).toHaveLength(3);
  });

  it('ends a step by the first of several, and lets go of one', async () => {
    await userEvent.click(page.getByRole('button', { name: 'Or until: step 3' }));
    expect(sent.at(-1)!.sheet[2]!.until.map(({ kind }) => kind)).toEqual(['alcoholLeftBelow', 'duration']);
    await userEvent.click(page.getByRole('button', { name: 'Not this: end 1 of step 3' }));
    expect(sent.at(-1)!.sheet[2]!.until.map(({ kind }) => kind)).toEqual(['duration']);
  });

  it('gives a step a heat of its own', async () => {
    await userEvent.selectOptions(page.getByRole('combobox', { name: 'heat of step 2' }), 'own');
    expect(sent.at(-1)!.sheet[1]!.heat).toEqual({ kind: 'power', power_W: 5500 });
  });

  it('says what is wrong with a number and what would be right, and loses nothing', async () => {
    const minutes = page.getByRole('spinbutton', { name: 'step 2: minutes it lasts' });
    await userEvent.fill(minutes, '99999');
    await userEvent.keyboard('{Enter}');
    await expect.element(page.getByRole('status')).toHaveTextContent('99999');
    expect(sent).toEqual([]);
    await userEvent.click(element.querySelector('.put-back')!);
    await expect.element(minutes).toHaveValue('30');
  });

  it('keeps its events to itself but for the sheet', async () => {
    const heard: string[] = [];
    for (const type of ['kp-change', 'kp-number-focus', 'kp-fault'] as const) {
      document.addEventListener(type, () => heard.push(type), { once: true });
    }
    const ratio = page.getByRole('spinbutton', { name: 'step 3: reflux ratio' });
    await userEvent.click(ratio);
    await userEvent.keyboard('{ArrowUp}');
    expect(heard).toEqual([]);
  });
});
