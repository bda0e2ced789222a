// The address holds the scenario in fixed units; what it cannot mean is reported, never guessed.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readAddress, writeAddress } from '../../../explorer/state/address.js';
import { numberSpecs } from '../../../explorer/state/number-specs.js';
import { inputs } from '../../../explorer/state/inputs.js';
import { faultInScenario } from '../../../explorer/state/parts-check.js';
import { numberAt, saidAt, withValue, withoutValue } from '../../../explorer/state/paths.js';
import { startingScenario, type Scenario } from '../../../explorer/state/scenario.js';
import { settings } from '../../support/settings.js';
import { unitSystems } from '../../../explorer/text/unit-systems.js';

const specs = numberSpecs(unitSystems.metric);
const pages = ['the-ceiling', 'another'] as const;
/** An address keeps ten decimals of the unit shown, and twelve digits. */
const lastDigit = 1e-10;

/** Numbers of the part that every still of the starting kind has, and the reflux of the step that draws. */
const there = inputs.filter(
  ({ key }) => saidAt(startingScenario, key) !== undefined && typeof saidAt(startingScenario, key) === 'number',
);

const scenarios: fc.Arbitrary<Scenario> = fc
  .tuple(
    ...there.map(({ low, high, quantity }) =>
      quantity === 'plates' ? fc.integer({ min: low, max: high }) : fc.double({ min: low, max: high, noNaN: true }),
    ),
  )
  .map((values) => there.reduce((set, { key }, at) => withValue(set, key, values[at]), startingScenario))
  .filter((scenario) => faultInScenario(scenario) === undefined);

const platesOf = (scenario: Scenario): number | undefined => numberAt(scenario, 'still.column.count');

describe('an address', () => {
  it('reads as a sentence would', () => {
    const scenario = settings({ plates: 20, reflux: 4.5, chargeVolume: 0.15, pressure: 90_000 });
    expect(writeAddress('the-ceiling', scenario)).toBe('#the-ceiling?v=2&pressure=90&plates=20&charge=150&reflux=4.5');
  });

  it('of a page with its starting values is the page alone', () => {
    expect(writeAddress('the-ceiling', startingScenario)).toBe('#the-ceiling');
    expect(readAddress('#the-ceiling', pages)).toEqual({
      page: 'the-ceiling',
      scenario: startingScenario,
      complaints: [],
    });
  });

  it('brings every scenario back', () => {
    fc.assert(
      fc.property(scenarios, (scenario) => {
        const { page, scenario: back, complaints } = readAddress(writeAddress('another', scenario), pages);
        expect(complaints).toEqual([]);
        expect(page).toBe('another');
        for (const { key } of there) {
          const [was, is] = [scenario, back].map((one) => specs(key).toShown(numberAt(one, key)!)) as [number, number];
          expect(Math.abs(is - was)).toBeLessThanOrEqual(lastDigit * Math.max(1, was));
        }
      }),
    );
  });

  it('once written is written the same again', () => {
    fc.assert(
      fc.property(scenarios, (scenario) => {
        const written = writeAddress('another', scenario);
        expect(writeAddress('another', readAddress(written, pages).scenario)).toBe(written);
      }),
    );
  });
});

describe('what an address cannot say in numbers', () => {
  it('stands in it whole: another kind of column, a sheet of other steps, a number that is not said', () => {
    const packed: Scenario = {
      ...startingScenario,
      still: { ...startingScenario.still, column: { kind: 'packing', height_m: 1 } },
    };
    const held: Scenario = {
      ...startingScenario,
      sheet: [...startingScenario.sheet, { reflux: 1, until: [{ kind: 'kettleStrengthBelow', strength: 0.01 }] }],
    };
    const unsaid = withoutValue(startingScenario, 'still.kettle.power_W');
    for (const scenario of [packed, held, unsaid]) {
      expect(readAddress(writeAddress('another', scenario), pages)).toEqual({
        page: 'another',
        scenario,
        complaints: [],
      });
    }
  });

  it('is left alone, in words, where it is damaged or no still can be', () => {
    for (const [text, says] of [
      ['{"kettle":', 'is not complete'],
      ['{"kettle":{"volume_m3":0.1,"colour":1}}', 'colour'],
      ['{"kettle":{"volume_m3":-1}}', 'a volume above 0'],
    ]) {
      const { scenario, complaints } = readAddress(`#another?v=2&still=${encodeURIComponent(text!)}`, pages);
      expect(scenario).toEqual(startingScenario);
      expect(complaints).toEqual([expect.stringContaining(says!)]);
    }
  });
});

describe('an address of version 1', () => {
  it('is still read, with a kettle that takes its charge', () => {
    const { scenario, complaints } = readAddress('#the-ceiling?v=1&charge=400&strength=12&plates=20&reflux=4.5', pages);
    expect(complaints).toEqual([]);
    expect(scenario.charge).toEqual({ kind: 'volume', volume_m3: 0.4, strength: 0.12 });
    expect(scenario.still.kettle.volume_m3).toBeCloseTo(0.54, 12);
    expect([platesOf(scenario), numberAt(scenario, 'sheet[2].reflux')]).toEqual([20, 4.5]);
  });
});

describe('an address that cannot be used as it is', () => {
  it('reports a page that does not exist', () => {
    const { page, complaints } = readAddress('#cellar', pages);
    expect(page).toBeUndefined();
    expect(complaints).toEqual(['There is no page called ‘cellar’.']);
  });

  it('reports an unknown key and uses the others', () => {
    const { scenario, complaints } = readAddress('#the-ceiling?v=1&plates=7&colour=red', pages);
    expect(platesOf(scenario)).toBe(7);
    expect(complaints).toEqual(['The address sets ‘colour’, which no page knows.']);
  });

  it.each(['plates=61', 'plates=2.5', 'plates=', 'plates=many', 'plates=1e1', 'plates=NaN', 'plates=-1'])(
    'reports %s and keeps the starting value',
    (field) => {
      const { scenario, complaints } = readAddress(`#the-ceiling?v=2&${field}`, pages);
      expect(platesOf(scenario)).toBe(12);
      expect(complaints).toHaveLength(1);
      expect(complaints[0]).toContain('0 to 60');
    },
  );

  it('of another version, or of none, leaves the settings alone and says so', () => {
    for (const fragment of ['#the-ceiling?v=3&plates=7', '#the-ceiling?plates=7']) {
      const { scenario, complaints } = readAddress(fragment, pages);
      expect(scenario).toEqual(startingScenario);
      expect(complaints).toHaveLength(1);
    }
  });
});
