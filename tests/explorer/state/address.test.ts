// The address holds the scenario in fixed units; what it cannot mean is reported, never guessed.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readAddress, writeAddress } from '../../../explorer/state/address.js';
import { numberSpecs } from '../../../explorer/state/number-specs.js';
import { parameters, startingScenario } from '../../../explorer/state/parameters.js';
import type { ParameterKey, Scenario } from '../../../explorer/state/scenario.js';
import { unitSystems } from '../../../explorer/text/unit-systems.js';

const specs = numberSpecs(unitSystems.metric);
const pages = ['the-ceiling', 'another'] as const;
/** An address keeps ten decimals of the unit shown, and twelve digits. */
const lastDigit = 1e-10;

const scenarios: fc.Arbitrary<Scenario> = fc.record(
  Object.fromEntries(
    parameters.map(({ key, low, high }) => [
      key,
      key === 'plates' ? fc.integer({ min: low, max: high }) : fc.double({ min: low, max: high, noNaN: true }),
    ]),
  ) as Record<ParameterKey, fc.Arbitrary<number>>,
);

describe('an address', () => {
  it('reads as a sentence would', () => {
    const scenario = { ...startingScenario, plates: 20, reflux: 4.5, chargeVolume: 0.2, pressure: 90_000 };
    expect(writeAddress('the-ceiling', scenario)).toBe('#the-ceiling?v=1&charge=200&plates=20&reflux=4.5&pressure=90');
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
        for (const { key } of parameters) {
          const [was, is] = [specs[key].toShown(scenario[key]), specs[key].toShown(back[key])];
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

describe('an address that cannot be used as it is', () => {
  it('reports a page that does not exist', () => {
    const { page, complaints } = readAddress('#cellar', pages);
    expect(page).toBeUndefined();
    expect(complaints).toEqual(['There is no page called ‘cellar’.']);
  });

  it('reports an unknown key and uses the others', () => {
    const { scenario, complaints } = readAddress('#the-ceiling?v=1&plates=7&colour=red', pages);
    expect(scenario.plates).toBe(7);
    expect(complaints).toEqual(['The address sets ‘colour’, which no page knows.']);
  });

  it.each(['plates=61', 'plates=2.5', 'plates=', 'plates=many', 'plates=1e1', 'plates=NaN', 'plates=-1'])(
    'reports %s and keeps the starting value',
    (field) => {
      const { scenario, complaints } = readAddress(`#the-ceiling?v=1&${field}`, pages);
      expect(scenario.plates).toBe(startingScenario.plates);
      expect(complaints).toHaveLength(1);
      expect(complaints[0]).toContain('0 to 60');
    },
  );

  it('of another version, or of none, leaves the settings alone and says so', () => {
    for (const fragment of ['#the-ceiling?v=2&plates=7', '#the-ceiling?plates=7']) {
      const { scenario, complaints } = readAddress(fragment, pages);
      expect(scenario).toEqual(startingScenario);
      expect(complaints).toHaveLength(1);
    }
  });
});
