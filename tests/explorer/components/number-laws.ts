// One battery for every number blank: the same laws whatever it holds, in the hands of a real browser.

import { beforeEach, describe, expect, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import '../../../explorer/components/number/kp-blank.js';
import type { Blank } from '../../../explorer/components/number/kp-blank.js';
import type { NumberChange, NumberFaultReport } from '../../../explorer/components/number/events.js';
import { stepped, type NumberSpec } from '../../../explorer/components/number/number-spec.js';
import { settled } from '../../support/settled.js';

/** What is tried on a blank: its spec, a value to start from, another in its range, and texts as shown. */
export interface NumberCase {
  readonly name: string;
  readonly spec: NumberSpec;
  readonly start: number;
  /** A text within the limits, and its SI value. */
  readonly good: readonly [string, number];
  /** A text above the limits. */
  readonly tooMuch: string;
}

export function numberLaws({ name, spec, start, good, tooMuch }: NumberCase): void {
  describe(`the number blank for ${name}`, () => {
    let blank: Blank;
    let changes: NumberChange[];
    let faults: NumberFaultReport[];

    /** As the page does: each change comes back as the value. */
    const answer = ({ detail }: CustomEvent<NumberChange>): void => {
      changes.push(detail);
      blank.value = detail.value;
    };
    const input = (): HTMLInputElement => blank.querySelector('input')!;

    beforeEach(async () => {
      document.body.innerHTML =
        '<p style="font: 28px/45px serif; margin: 100px">A <span></span>, and a <a href="#x">way out</a></p>';
      blank = document.createElement('kp-blank');
      blank.spec = spec;
      blank.value = start;
      changes = [];
      faults = [];
      blank.addEventListener('kp-change', answer);
      blank.addEventListener('kp-fault', ({ detail }) => faults.push(detail));
      document.querySelector('p span')!.append(blank);
      await settled();
    });
    it('has a name, a role, its value with unit, and its limits for those who hear it', () => {
      const box = page.getByRole('spinbutton', { name: spec.label });
      expect(box.element()).toBe(input());
      const shown = spec.toShown(start);
      expect(input().getAttribute('aria-valuetext')).toBe(spec.digits(shown) + spec.suffix(shown));
      expect(Number(input().getAttribute('aria-valuenow'))).toBe(shown);
      expect(Number(input().getAttribute('aria-valuemin'))).toBe(spec.low);
      expect(Number(input().getAttribute('aria-valuemax'))).toBe(spec.high);
      expect(input().getAttribute('aria-invalid')).toBe('false');
    });

    it('shows its value and sends nothing when it is set from outside', async () => {
      blank.value = good[1];
      await settled();
      expect(input().value).toBe(spec.digits(spec.toShown(good[1])));
      expect(changes).toEqual([]);
      expect(faults).toEqual([]);
    });

    it('is one stop for the tab key, and the step keys send one step each', async () => {
      await userEvent.keyboard('{Tab}');
      expect(document.activeElement).toBe(input());
      await userEvent.keyboard('{ArrowUp}');
      expect(changes.map(({ value }) => value)).toEqual([stepped(spec, start, 1)]);
      await userEvent.keyboard('{ArrowDown}{ArrowDown}');
      const up = stepped(spec, start, 1);
      const down = stepped(spec, up, -1);
      expect(changes.slice(1).map(({ value }) => value)).toEqual([down, stepped(spec, down, -1)]);
      await userEvent.keyboard('{Tab}');
      expect(document.activeElement?.textContent).toBe('way out');
    });

    it('goes ten steps by Page Up, to its limits by Home and End, and back by Escape', async () => {
      await userEvent.keyboard('{Tab}{PageUp}');
      expect(changes.at(-1)?.value).toBe(stepped(spec, start, 10));
      await userEvent.keyboard('{End}');
      expect(spec.toShown(changes.at(-1)!.value)).toBeCloseTo(spec.high, 6);
      await userEvent.keyboard('{Home}');
      expect(spec.toShown(changes.at(-1)!.value)).toBeCloseTo(spec.low, 6);
      await userEvent.keyboard('{Escape}');
      expect(changes.at(-1)).toEqual({ key: spec.key, value: start });
      expect(changes).toHaveLength(4);
    });

    it('takes a typed number as it is typed, and Enter adds nothing', async () => {
      await userEvent.click(input());
      await userEvent.fill(input(), good[0]);
      await userEvent.keyboard('{Enter}');
      await settled();
      expect(changes).toEqual([{ key: spec.key, value: good[1] }]);
      expect(input().value).toBe(spec.digits(spec.toShown(good[1])));
    });

    it('takes a decimal comma as it takes a decimal point', async () => {
      await userEvent.click(input());
      await userEvent.fill(input(), `${good[0].replace(/\..*$/, '')},0`);
      const whole = Number(good[0].replace(/\..*$/, ''));
      expect(changes.at(-1)?.value).toBe(spec.fromShown(whole));
      expect(faults).toEqual([]);
    });

    it('follows a drag as soon as the hand’s place is known, and not again when it is told once more', async () => {
      const { left, top } = input().getBoundingClientRect();
      pointer('pointerdown', left, top);
      pointer('pointerrawupdate', left + 7, top);
      await settled();
      expect(changes.map(({ value }) => value)).toEqual([stepped(spec, start, 1)]);
      pointer('pointermove', left + 7, top);
      pointer('pointerup', left + 7, top);
      await settled();
      expect(changes).toHaveLength(1);
    });

    it('sends one change for each step of a sideways drag, and none for a press', async () => {
      const box = input().getBoundingClientRect();
      const at = { x: box.left + box.width / 2, y: box.top + box.height / 2 };
      pointer('pointerdown', at.x, at.y);
      for (const way of [2, 5, 7, 13, 19]) pointer('pointermove', at.x + way, at.y);
      pointer('pointerup', at.x + 19, at.y);
      await settled();
      expect(changes.map(({ value }) => value)).toEqual([1, 2, 3].map((steps) => stepped(spec, start, steps)));
      pointer('pointerdown', at.x, at.y);
      pointer('pointerup', at.x + 1, at.y);
      expect(changes).toHaveLength(3);
      expect(document.activeElement).toBe(input());
    });

    it.each([
      ['a text that is no number', 'seven', 'noNumber'],
      ['a number above its limit', tooMuch, 'tooHigh'],
    ])('keeps %s as typed, says so once, and sends nothing', async (_what, text, reason) => {
      await userEvent.click(input());
      await userEvent.fill(input(), text);
      await expect.poll(() => faults.length).toBe(1);
      expect(faults[0]).toEqual({ key: spec.key, fault: { draft: text, reason } });
      await userEvent.keyboard('{Tab}');
      await settled();
      expect(faults).toHaveLength(1);
      expect(input().value).toBe(text);
      expect(input().getAttribute('aria-invalid')).toBe('true');
      expect(changes).toEqual([]);
      blank.putBack();
      await settled();
      expect(input().value).toBe(spec.digits(spec.toShown(start)));
      expect(faults.at(-1)).toEqual({ key: spec.key, fault: null });
      expect(changes).toEqual([]);
    });

    it('is mended by a step, a good text or a value from outside', async () => {
      for (const mend of [
        () => userEvent.keyboard('{ArrowUp}'),
        () => userEvent.fill(input(), good[0]),
        () => Promise.resolve((blank.value = stepped(spec, blank.value, 2))),
      ]) {
        await userEvent.click(input());
        await userEvent.fill(input(), tooMuch);
        await userEvent.keyboard('{Enter}');
        await settled();
        expect(input().getAttribute('aria-invalid')).toBe('true');
        await mend();
        await settled();
        expect(input().getAttribute('aria-invalid')).toBe('false');
        expect(faults.at(-1)?.fault).toBeNull();
      }
    });

    it('keeps its width while it has the focus', async () => {
      await userEvent.click(input());
      const width = blank.getBoundingClientRect().width;
      await userEvent.fill(input(), '1');
      await settled();
      expect(blank.getBoundingClientRect().width).toBeGreaterThanOrEqual(width - suffixSlack_px);
    });

    it('raises no keyboard at the first touch, and types at the second', () => {
      const box = input().getBoundingClientRect();
      const touch = (): void => {
        const at = { clientX: box.left + 2, clientY: box.top + 5, bubbles: true, cancelable: true } as const;
        input().dispatchEvent(new PointerEvent('pointerdown', { ...at, pointerType: 'touch' }));
        input().dispatchEvent(new PointerEvent('pointerup', { ...at, pointerType: 'touch' }));
        input().dispatchEvent(new PointerEvent('click', { ...at, pointerType: 'touch' }));
      };
      const focused: boolean[] = [];
      blank.addEventListener('kp-number-focus', ({ detail }) => focused.push(detail.touch));
      touch();
      expect([document.activeElement === input(), input().readOnly, input().inputMode]).toEqual([true, true, 'none']);
      expect(focused).toEqual([true]);
      touch();
      expect([document.activeElement === input(), input().readOnly, input().inputMode]).toEqual([
        true,
        false,
        'decimal',
      ]);
      expect(changes).toEqual([]);
    });

    function pointer(type: string, x: number, y: number): void {
      const target = blank.querySelector('.blank')!;
      target.dispatchEvent(
        new PointerEvent(type, {
          pointerId: 1,
          pointerType: 'mouse',
          button: 0,
          clientX: x,
          clientY: y,
          bubbles: true,
          cancelable: true,
        }),
      );
    }
  });
}

/** 'plates' may become 'plate' in the same blank. */
const suffixSlack_px = 14;
