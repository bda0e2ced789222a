// Every row of the parameter table, in every system of units.

import { describe, expect, it } from 'vitest';
import { pressureAtAltitude } from '#lib/index.js';
import { rangeFault, stepped } from '../../../explorer/components/number/number-spec.js';
import { numberSpecs } from '../../../explorer/state/number-specs.js';
import { inputs } from '../../../explorer/state/inputs.js';
import { unitSystems } from '../../../explorer/text/unit-systems.js';
import { numberAt, withValue } from '../../../explorer/state/paths.js';
import { startingScenario, type Scenario } from '../../../explorer/state/scenario.js';
import type { Input } from '../../../explorer/state/inputs.js';

/** Double precision through a few conversions, relative; proof is found by iteration. */
const roundOff = 1e-8;

/** Settings that have the part an input stands in, each number as it is set or as the library completes it. */
function everyPart({ key, of }: Input): Scenario {
  if (key.startsWith('sheet')) return withValue(startingScenario, key, 3);
  if (key.startsWith('doublerCharges'))
    return withValue(
      startingScenario,
      key.replace(/charge\.\w+$/u, 'charge'),
      startingScenario.doublerCharges[0]!.charge,
    );
  const still = {
    ...startingScenario.still,
    doublers: [{ volume_m3: 0.02 }, { volume_m3: 0.02 }, { volume_m3: 0.02 }],
    ...(of?.includes('packing') === true && !of.includes('plates') ? { column: { kind: 'packing' as const } } : {}),
    ...(of?.includes('duty') === true ? { refluxCondenser: { kind: 'partial' as const } } : {}),
    ...(of?.includes('water') === true
      ? {
          refluxCondenser: {
            kind: 'partial' as const,
            coolant: { kind: 'water' as const, flow_kg_s: 0.05, inlet_K: 288, transfer_W_K: 100 },
          },
        }
      : {}),
  };
  return { ...startingScenario, still };
}

const rows = Object.values(unitSystems).flatMap((units) =>
  inputs.map((input) => ({
    units: units.name,
    key: input.key,
    input,
    start: numberAt(everyPart(input), input.key)!,
    spec: numberSpecs(units)(input.key),
  })),
);

describe.each(rows)('$key in $units units', ({ input, start, spec }) => {
  it('goes to the unit shown and back', () => {
    for (const si of [input.low, start, input.high]) {
      expect(Math.abs(spec.fromShown(spec.toShown(si)) - si)).toBeLessThanOrEqual(roundOff * si);
    }
  });

  it('starts within its limits, and its limits are within the limits in SI', () => {
    expect(rangeFault(spec, start)).toBeUndefined();
    expect(spec.fromShown(spec.low)).toBeGreaterThanOrEqual(input.low * (1 - roundOff));
    expect(spec.fromShown(spec.high)).toBeLessThanOrEqual(input.high * (1 + roundOff));
  });

  it('reads what it prints, with and without its unit', () => {
    const shown = Number(spec.digits(spec.toShown(start)).replace('\u2009', ''));
    for (const text of [spec.digits(shown), spec.digits(shown) + spec.suffix(shown)]) {
      const reading = spec.read(text);
      expect(reading.kind).toBe('value');
      if (reading.kind === 'value') expect(spec.toShown(reading.si)).toBeCloseTo(shown, 6);
    }
  });

  it('steps up and down again to a round number, and stops at its limits', () => {
    const up = stepped(spec, start, 1);
    expect(up).toBeGreaterThan(start);
    expect(Math.abs(spec.toShown(up) / spec.step - Math.round(spec.toShown(up) / spec.step))).toBeLessThan(1e-5);
    expect(stepped(spec, stepped(spec, up, 1), -1)).toBeCloseTo(up, 9);
    expect(spec.toShown(stepped(spec, start, 1e6))).toBeCloseTo(spec.high, 6);
    expect(spec.toShown(stepped(spec, start, -1e6))).toBeCloseTo(spec.low, 6);
  });
});

describe('a number typed with a unit', () => {
  const specs = numberSpecs(unitSystems.metric);
  const [chargeVolume, chargeStrength] = [specs('charge.volume_m3'), specs('charge.strength')];
  const [heat, pressure] = [specs('still.kettle.power_W'), specs('still.air.pressure_Pa')];
  const value = (reading: ReturnType<typeof pressure.read>): number =>
    reading.kind === 'value' ? reading.si : Number.NaN;

  it('is read by the small table where it knows the unit', () => {
    expect(value(chargeVolume.read('10 US gal'))).toBeCloseTo(0.0378541, 7);
    expect(value(chargeStrength.read('20 proof'))).toBeCloseTo(0.1, 3);
    expect(value(heat.read('5500 W'))).toBe(5500);
    expect(value(pressure.read('760 mmHg'))).toBeCloseTo(101_325, 0);
  });

  it('may be an altitude where a pressure is wanted', () => {
    expect(value(pressure.read('300 m'))).toBe(pressureAtAltitude(300));
  });

  it('is read by the formula engine where the table does not know the unit', async () => {
    // 21 quarts of 1/4 US gallon (231 cubic inches); 5280 ft are 1609.344 m, both exact by definition.
    expect(chargeVolume.read('21 qt').kind).toBe('ask');
    expect(await chargeVolume.readWithEngine(21, 'qt')).toBeCloseTo((21 / 4) * 231 * 0.0254 ** 3, 9);
    expect(await pressure.readWithEngine(0.9, 'atm')).toBeCloseTo(91_192.5, 6);
    expect(await pressure.readWithEngine(5280, 'ft')).toBeCloseTo(pressureAtAltitude(1609.344), 6);
    expect(await heat.readWithEngine(9000, 'BTU/hr')).toBeCloseTo(2637.64, 1);
    expect(await heat.readWithEngine(2, 'furlongs')).toBeUndefined();
    expect(await chargeVolume.readWithEngine(2, 'kg')).toBeUndefined();
  });
});

describe('a number beyond what its conversion covers', () => {
  it('is called too high or too low, not an error', () => {
    const specs = numberSpecs(unitSystems.us);
    const [chargeStrength, pressure] = [specs('charge.strength'), specs('still.air.pressure_Pa')];
    const fault = (spec: typeof pressure, text: string): string | undefined => {
      const reading = spec.read(text);
      return reading.kind === 'value' ? rangeFault(spec, reading.si) : reading.kind;
    };
    expect(fault(chargeStrength, '201')).toBe('tooHigh');
    expect(fault(chargeStrength, '-1')).toBe('tooLow');
    expect(fault(pressure, '12000 m')).toBe('tooLow');
    expect(fault(pressure, '-700 m')).toBe('tooHigh');
  });
});
