// The setup sentence as a whole: words, corrections, and the one ruler under it.

import { beforeEach, describe, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import '../../../explorer/components/number/kp-setup.js';
import type { NumberChange } from '../../../explorer/components/number/events.js';
import type { Setup } from '../../../explorer/components/number/kp-setup.js';
import { stepped } from '../../../explorer/components/number/number-spec.js';
import { numberSpecs } from '../../../explorer/state/number-specs.js';
import { numberAt, withValue } from '../../../explorer/state/paths.js';
import { startingScenario, type Scenario } from '../../../explorer/state/scenario.js';
import { unitSystems } from '../../../explorer/text/unit-systems.js';
import { setTo } from '../../support/settings.js';

const specs = numberSpecs(unitSystems.metric);
const plates = 'still.column.count';
const reflux = 'sheet[2].reflux';
const valuesOf =
  (scenario: Scenario): Setup['valueAt'] =>
  (path) =>
    numberAt(scenario, path);

describe('the setup sentence', () => {
  let setup: Setup;
  let changes: NumberChange[];
  let set: Scenario;

  const ready = async (): Promise<void> => {
    await setup.updateComplete;
    await setup.querySelector('kp-ruler')!.updateComplete;
    // The ruler measures itself when it is laid out.
    await expect.poll(() => setup.querySelectorAll('.ruler-line').length).toBeGreaterThan(2);
  };
  const press = (target: Element, type: string, x: number): boolean =>
    target.dispatchEvent(
      new PointerEvent(type, { pointerId: 1, button: 0, clientX: x, clientY: 10, bubbles: true, cancelable: true }),
    );

  beforeEach(async () => {
    document.body.innerHTML = '<div style="width: 608px"></div>';
    setup = document.createElement('kp-setup');
    setup.sentence = ['A kettle with ', { blank: plates }, ', reflux ', { blank: reflux }, '.'];
    setup.specs = specs as Setup['specs'];
    set = startingScenario;
    setup.valueAt = valuesOf(set);
    setup.earlierAt = null;
    setup.inFocus = plates;
    setup.docked = false;
    setup.correction = null;
    changes = [];
    setup.addEventListener('kp-change', ({ detail }) => {
      changes.push(detail);
      set = withValue(set, detail.key, detail.value);
      setup.valueAt = valuesOf(set);
    });
    document.querySelector('div')!.append(setup);
    await ready();
  });

  it('keeps a number and the punctuation after it together', () => {
    const kept = [...setup.querySelectorAll('.kept-together')];
    expect(kept.map((one) => one.lastChild?.textContent)).toEqual([',', '.']);
    expect(setup.querySelector('.setup-sentence')!.textContent).toContain(', reflux ');
  });

  it('has one ruler, which shows the number in focus, its range and its drop', async () => {
    expect(setup.querySelectorAll('kp-ruler')).toHaveLength(1);
    const head = (): string => setup.querySelector('.ruler-head')!.textContent.replace(/\s+/gu, ' ').trim();
    expect(head()).toContain('12 plates 0 to 60');
    setup.inFocus = reflux;
    await ready();
    expect(head()).toContain('3 : 1 0 to 30');
  });

  it('draws a pencil stroke where the number stood before', async () => {
    expect(setup.querySelector('.ruler-before')).toBeNull();
    setup.earlierAt = valuesOf(setTo(plates, 4));
    await ready();
    expect(setup.querySelector('.ruler-before-name')!.textContent).toBe('4');
  });

  it('sends one change for a press of a step button, and the focus stays with the number', async () => {
    setup.querySelector('input')!.focus();
    await userEvent.click(setup.querySelector('.step.up')!);
    expect(changes).toEqual([{ key: plates, value: 13 }]);
    expect(document.activeElement).toBe(setup.querySelector('input'));
    expect([...setup.querySelectorAll('.ruler button')].map((button) => button.getAttribute('tabindex'))).toEqual([
      '-1',
      '-1',
      '-1',
    ]);
  });

  it('follows the hand along the ruler on whole steps, one change each, and stops at its ends', () => {
    const track = setup.querySelector<SVGElement>('.ruler-body > svg')!;
    const { left, width } = track.getBoundingClientRect();
    press(track, 'pointerdown', left + width / 2);
    press(track, 'pointermove', left + width / 2 + 1);
    press(track, 'pointermove', left - 50);
    press(track, 'pointermove', left + width + 50);
    press(track, 'pointerup', left + width + 50);
    press(track, 'pointermove', left);
    expect(changes.map(({ value }) => value)).toEqual([30, 0, 60]);
  });

  it('steps from a number between the steps to the next step', () => {
    expect(stepped(specs(reflux), 3.2, 1)).toBe(3.5);
    expect(stepped(specs(reflux), 3.2, -1)).toBe(3);
  });

  it('shows one correction line with a word that asks for the value back', async () => {
    const asked: string[] = [];
    setup.addEventListener('kp-put-back', ({ detail }) => asked.push(detail.key));
    expect(setup.querySelector('.correction')!.textContent).toBe('');
    setup.correction = { key: plates, draft: '99', says: 'is too many.', putBack: 'Put 12 back' };
    await ready();
    expect(setup.querySelector('.correction')!.textContent.replace(/\s+/gu, ' ')).toBe('99 is too many. Put 12 back');
    await userEvent.click(setup.querySelector('.put-back')!);
    expect(asked).toEqual([plates]);
    expect(changes).toEqual([]);
  });
});
