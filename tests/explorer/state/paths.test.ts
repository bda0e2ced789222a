// One reader and one writer over paths.

import { describe, expect, it } from 'vitest';
import { completions } from '#lib/index.js';
import { inputs } from '../../../explorer/state/inputs.js';
import { nobodySet } from '../../../explorer/state/nobody-set.js';
import { numberAt, saidAt, stillAsRun, stillOf, withoutValue, withValue } from '../../../explorer/state/paths.js';
import { startingScenario, type Scenario } from '../../../explorer/state/scenario.js';
import { setTo } from '../../support/settings.js';

const bare: Scenario = { ...startingScenario, still: { kettle: { volume_m3: 0.1 } } };

describe('a number at a path', () => {
  it('is what was said, else what the library completes, else nothing', () => {
    expect(numberAt(startingScenario, 'still.column.count')).toBe(12);
    expect(numberAt(startingScenario, 'still.column.openAreaShare')).toBe(0.1);
    expect(numberAt(bare, 'still.kettle.power_W')).toBe(4500);
    expect(numberAt(bare, 'still.column.count')).toBeUndefined();
    expect(numberAt(startingScenario, 'sheet[0].reflux')).toBeUndefined();
    expect(numberAt(startingScenario, 'sheet[2].reflux')).toBe(3);
  });

  it('that is set is read again, and nothing else is another', () => {
    for (const { key, low, high } of inputs) {
      const before = numberAt(startingScenario, key);
      if (before === undefined) continue;
      const value = before === low ? high : low;
      const set = withValue(startingScenario, key, value);
      expect(saidAt(set, key)).toBe(value);
      expect(withValue(set, key, value)).toBe(set);
      // Taken back, it is what it was before, or what the library says.
      const said = saidAt(startingScenario, key) !== undefined;
      if (!said) expect(numberAt(withoutValue(set, key), key)).toBe(before);
    }
  });

  it('of a part that is not there begins the part, of the kind the number belongs to', () => {
    expect(setTo('still.column.count', 4, bare).still.column).toEqual({ kind: 'plates', count: 4 });
    expect(setTo('still.column.height_m', 1, bare).still.column).toEqual({ kind: 'packing', height_m: 1 });
    expect(setTo('still.doublers[1].volume_m3', 0.01, bare).still.doublers).toEqual([{}, { volume_m3: 0.01 }]);
    expect(setTo('still.column.holdUp.volume_m3', 1e-4).still.column).toMatchObject({
      count: 12,
      holdUp: { kind: 'volume', volume_m3: 1e-4 },
    });
    expect(setTo('still.refluxCondenser.subcooling_K', 5).still.refluxCondenser).toEqual({
      kind: 'total',
      subcooling_K: 5,
    });
  });
});

describe('plates counted down to none', () => {
  it('leave a bare pot, and come back with all that was said of them', () => {
    const none = setTo('still.column.count', 0);
    expect(stillAsRun(none.still).column).toEqual({ kind: 'none' });
    expect(stillOf(none).refluxCondenser).toEqual({ kind: 'none' });
    expect(setTo('still.column.count', 12, none)).toEqual(startingScenario);
  });
});

describe('what nobody set', () => {
  it('is each value the library completes, with its reason; one that is said is no longer among them', () => {
    const before = nobodySet(startingScenario.still);
    expect(before).toHaveLength(completions(startingScenario.still).length);
    expect(before.every(({ reason }) => /\w/u.test(reason))).toBe(true);
    for (const { path, value, input } of before) {
      if (input === undefined) continue;
      const said = withValue(startingScenario, path, value);
      expect(nobodySet(said.still).map((one) => one.path)).not.toContain(path);
      // Said, the still is the same still.
      expect(stillOf(said)).toEqual(stillOf(startingScenario));
      expect(nobodySet(withoutValue(said, path).still).length).toBeGreaterThanOrEqual(before.length - 1);
    }
  });
});
