// Every working, drawn by its kind: with the numbers it starts with it answers, in all units, without a word of red.

import { render } from 'lit';
import { afterEach, describe, expect, it } from 'vitest';
import type { Here } from '../../../../explorer/entries/entry.js';
import { working } from '../../../../explorer/entries/working/kind.js';
import { workingLines } from '../../../../explorer/entries/working/list.js';
import type { Common, Json } from '../../../../explorer/state/notebook-record.js';
import { numberSpecs } from '../../../../explorer/state/number-specs.js';
import { startingScenario } from '../../../../explorer/state/scenario.js';
import { workingsName } from '../../../../explorer/state/workings.js';
import { unitSystems, type UnitSystem } from '../../../../explorer/text/unit-systems.js';
import { settled } from '../../../support/settled.js';

/** A page that holds one working and takes what it shares. */
async function drawn(show: string, units: UnitSystem, common: Common = {}) {
  const data = { show };
  await working.prepare?.(data);
  const page = document.createElement('div');
  document.body.append(page);
  let shared = common;
  const told: string[] = [];
  const draw = (): void => void render(working.view(here()), page);
  const here = (): Here =>
    ({
      id: 'one',
      data,
      common: shared,
      units,
      scenario: startingScenario,
      specs: numberSpecs(units),
      results: [],
      setCommon: (name: string, value: Json | undefined, words: { says?: string } = {}) => {
        shared = { ...shared, [name]: value! };
        told.push(words.says ?? '');
        draw();
      },
    }) as unknown as Here;
  draw();
  await settled();
  return {
    page,
    told,
    here,
    workings: () => shared[workingsName] as Readonly<Record<string, Record<string, unknown>>>,
    words: () => page.innerText.replace(/\s+/gu, ' '),
    press: async (name: string) => {
      const buttons = [...page.querySelectorAll('button')];
      buttons
        .find((button) => (button.getAttribute('aria-label') ?? button.textContent.trim()).startsWith(name))!
        .click();
      await settled();
    },
    type: async (label: string, text: string) => {
      const input = page.querySelector<HTMLInputElement>(`input[aria-label="${label}"]`)!;
      input.focus();
      input.value = text;
      input.dispatchEvent(new Event('input', { bubbles: true }));
      input.blur();
      await settled();
    },
  };
}

afterEach(() => document.body.replaceChildren());

describe.each(workingLines)('$title', ({ name }) => {
  it.each(Object.values(unitSystems))('answers in $label with the numbers it starts with', async (units) => {
    const { page, words, here } = await drawn(name, units);
    expect(words()).not.toMatch(/NaN|undefined|Infinity|null/u);
    expect(page.querySelector('.red')).toBeNull();
    expect(page.querySelector('.working-answer')!.textContent.trim()).not.toBe('');
    expect(working.words(here())).not.toMatch(/NaN|undefined|Infinity|null/u);
    expect(working.words(here()).length).toBeGreaterThan(40);
  });

  it('stands with every number at either end of its limits', async () => {
    const { page, words } = await drawn(name, unitSystems.metric);
    for (const key of ['Home', 'End']) {
      for (const input of [...page.querySelectorAll('input')]) {
        input.focus();
        input.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
        await settled();
        expect(words(), `${input.ariaLabel ?? ''} ${key}`).not.toMatch(/NaN|undefined|Infinity/u);
      }
    }
  });
});

describe('a working', () => {
  it('says what would be right of a number that cannot be, and keeps the answer', async () => {
    const one = await drawn('bring-down', unitSystems.metric);
    const before = one.page.querySelector('.working-answer')!.textContent;
    const input = one.page.querySelector<HTMLInputElement>('input[aria-label="strength that is wanted"]')!;
    input.focus();
    input.value = '143';
    input.dispatchEvent(new Event('input', { bubbles: true }));
    input.blur();
    await settled();
    expect(one.page.querySelector('.correction')!.textContent).toContain('is more than pure alcohol');
    expect(one.page.querySelector('.working-answer')!.textContent).toBe(before);
  });

  it('shares a number that two of them name alike', async () => {
    const one = await drawn('bring-down', unitSystems.metric);
    await one.type('strength that is wanted', '40');
    expect(one.workings().numbers).toEqual({ wantedStrength: 0.4 });
    const other = await drawn('in-steps', unitSystems.metric, { [workingsName]: one.workings() as unknown as Json });
    expect(other.words()).toContain('40.0 % vol');
  });

  it('asks for no more than is known: a clause is put in and left out, and the answer follows', async () => {
    const one = await drawn('kettle', unitSystems.metric);
    const before = one.words();
    await one.press('Plates or a doubler stand over the kettle');
    expect(one.words()).toContain('on top of it');
    // 1.5 kPa on top boil 0.4 °C hotter, so the same reading is of a stronger kettle.
    expect(one.words()).toContain('6.2 ± 0.3 % vol');
    expect(before).toContain('5.7 ± 0.3 % vol');
    await one.press('Leave it out: Plates');
    expect(one.words()).toContain('5.7 ± 0.3 % vol');
    expect(one.told).toEqual(['a reading put in', 'a reading left out']);
  });

  it('takes rows, each its own', async () => {
    const one = await drawn('pour-together', unitSystems.metric);
    await one.press('Add a spirit');
    await one.type('spirit 4: volume of the spirit', '6,5');
    await one.press('Take away: spirit 1');
    const { poured } = one.workings().rows as { poured: readonly { numbers: { jarVolume: number } }[] };
    expect(poured.map(({ numbers }) => numbers.jarVolume)).toEqual([0.001, 0.0015, 0.0065]);
  });

  it('counts a volume that was measured warm at 20 °C', async () => {
    // 27 CFR 30.25 has 0.996 for 115 proof from 68 to 60 °F; from 30 to 20 °C it is some 0.991.
    const one = await drawn('books', unitSystems.metric, {
      [workingsName]: {
        rows: {
          books: [
            { choice: 'charged', numbers: { jarVolume: 0.1, jarStrength: 0.6, jarTemperature: 303.15 } },
            { choice: 'hearts', numbers: { jarVolume: 0.1, jarStrength: 0.6 } },
          ],
        },
      },
    });
    expect(one.words()).toContain('Found are 60.0 L of 59.5 L');
    await one.type('line 2: how warm it was measured', '30');
    expect(one.words()).toContain('Found are 59.5 L of 59.5 L');
  });

  it('says which reading is likeliest off where two ways disagree', async () => {
    const one = await drawn('two-ways', unitSystems.metric, {
      [workingsName]: { numbers: { kettleReading: 366.25, sureBoiling: 0.2 } },
    });
    expect(one.words()).toContain('These cannot both be right.');
    expect(one.page.querySelectorAll('.working-answer li').length).toBeGreaterThan(0);
    expect(one.page.querySelector('.working-answer li')!.textContent).toMatch(/thermometer reads|stronger|weaker/u);
  });
});
