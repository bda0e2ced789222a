// What can be a still: descriptions completed with reasons, faults named, presets that run.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  completeStill,
  completions,
  condenserCapacity,
  createEthanolWater,
  InputError,
  problemFaults,
  solve,
  STILL_PRESETS,
  stillFaults,
  type EnergyProblem,
  type StillDescription,
} from '#lib/index.js';
import { platedStill } from '../../support/train-problems.js';

const system = createEthanolWater();

describe('a description', () => {
  it('of nothing but a kettle is a pot that stands', () => {
    const still = completeStill({ kettle: { volume_m3: 0.1 } });
    expect(stillFaults(still)).toEqual([]);
    expect(still.column.kind).toBe('none');
    expect(still.refluxCondenser.kind).toBe('none');
  });

  it('keeps what was given, at any depth', () => {
    const still = completeStill({
      kettle: { volume_m3: 0.1, heatLoss_W_K: 0.5 },
      doublers: [{ dipDepth_m: 0.05 }],
      column: { kind: 'plates', count: 7 },
      refluxCondenser: { kind: 'partial', coolant: { kind: 'duty', power_W: 1234 } },
      air: { pressure_Pa: 90_000 },
    });
    expect(stillFaults(still)).toEqual([]);
    expect(still.kettle.heatLoss_W_K).toBe(0.5);
    expect(still.doublers[0]!.dipDepth_m).toBe(0.05);
    expect(still.column).toMatchObject({ kind: 'plates', count: 7 });
    expect(still.refluxCondenser).toMatchObject({ coolant: { power_W: 1234 } });
    expect(still.air.pressure_Pa).toBe(90_000);
  });

  it('of a still of any size can be a still, and its condenser takes its heat', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-3, max: 20, noNaN: true }),
        fc.constantFrom('none', 'plates', 'packing'),
        (volume_m3, kind) => {
          const still = completeStill({ kettle: { volume_m3 }, doublers: [{}], column: { kind } });
          expect(stillFaults(still)).toEqual([]);
          const { flow_kg_s, transfer_W_K, inlet_K } = still.productCondenser;
          expect(condenserCapacity(flow_kg_s, transfer_W_K, inlet_K, 351)).toBeGreaterThan(still.kettle.power_W);
        },
      ),
    );
  });
});

describe('what nobody set', () => {
  const described = fc.record(
    {
      kettle: fc.record(
        {
          volume_m3: fc.double({ min: 1e-3, max: 20, noNaN: true }),
          power_W: fc.double({ min: 100, max: 1e6, noNaN: true }),
        },
        { requiredKeys: ['volume_m3'] },
      ),
      doublers: fc.array(fc.record({ dipDepth_m: fc.double({ min: 0, max: 1, noNaN: true }) }, { requiredKeys: [] }), {
        maxLength: 3,
      }),
      column: fc.oneof(
        fc.record({ kind: fc.constantFrom('none' as const, 'packing' as const) }),
        fc.record({ kind: fc.constant('plates' as const), count: fc.integer({ min: 1, max: 60 }) }),
      ),
      refluxCondenser: fc.record({ kind: fc.constantFrom('none' as const, 'total' as const, 'partial' as const) }),
      air: fc.record({ pressure_Pa: fc.double({ min: 2e4, max: 1.1e5, noNaN: true }) }),
    },
    { requiredKeys: ['kettle'] },
  );

  it('has a path, its value in the still and a reason in words; set by hand it gives the same still, and nothing is left', () => {
    fc.assert(
      fc.property(described, (description) => {
        const still = completeStill(description);
        const left = completions(description);
        expect(left.length).toBeGreaterThan(10);
        const byHand = structuredClone(description) as object;
        for (const { path, value, reason } of left) {
          expect(reason, path).toMatch(/^[\wà-ÿ].{5,}/u);
          expect(at(description, path), path).toBeUndefined();
          expect(at(still, path), path).toEqual(value);
          put(byHand, path, value);
        }
        expect(byHand).toEqual(still);
        expect(completions(byHand as StillDescription)).toEqual([]);
      }),
    );
  });

  it('changes its reason with the case: a small kettle is heated for what it loses', () => {
    const reason = (volume_m3: number): string | undefined =>
      completions({ kettle: { volume_m3 } }).find(({ path }) => path === 'kettle.power_W')?.reason;
    expect(reason(0.1)).toMatch(/45 kW for each m³/u);
    expect(reason(0.002)).toMatch(/less would hardly distil/u);
  });

  it('holds what the theory page says: plates of 60 %, sea level, tap water of 15 °C', () => {
    const told = completions({ kettle: { volume_m3: 0.1 }, column: { kind: 'plates' } });
    expect(told.find(({ path }) => path === 'column.efficiency')?.value).toBe(0.6);
    expect(told.find(({ path }) => path === 'air.pressure_Pa')).toMatchObject({ value: 101325 });
    expect(told.find(({ path }) => path === 'productCondenser.inlet_K')).toMatchObject({ value: 288.15 });
  });

  it('is refused where the description cannot be one', () => {
    const wrong = { kettle: { volume_m3: 0.1, powr_W: 3 } } as unknown as StillDescription;
    expect(() => completions(wrong)).toThrow(/description.kettle.powr_W is 3; expected no such field/u);
    expect(() => completeStill(wrong)).toThrow(InputError);
    const tall = { kettle: { volume_m3: 0.1, heatingSurfaceHeight_m: 9 } };
    expect(() => completeStill(tall)).toThrow(/heatingSurfaceHeight_m is 9; expected a height within/u);
  });
});

/** What stands at a path of a record. */
function at(record: unknown, path: string): unknown {
  return steps(path).reduce<unknown>((part, step) => (part as Record<string, unknown> | undefined)?.[step], record);
}

/** Sets what stands at a path, making records on the way. */
function put(record: object, path: string, value: unknown): void {
  const names = steps(path);
  let part = record as Record<string, unknown>;
  for (const step of names.slice(0, -1)) part = (part[step] ??= {}) as Record<string, unknown>;
  part[names.at(-1)!] = value;
}

function steps(path: string): string[] {
  return path.split(/[.[\]]+/u).filter((step) => step !== '');
}

describe('a still completed from its volume alone', () => {
  const drawn = (volume_m3: number, kind: 'none' | 'plates' | 'packing'): EnergyProblem => {
    const still = completeStill({ kettle: { volume_m3 }, column: { kind } });
    return {
      still,
      charge: { kind: 'volume', volume_m3: (2 / 3) * volume_m3, strength: 0.1 },
      doublerCharges: [],
      activity: 'redlich-kister',
      heat: { kind: 'power', power_W: still.kettle.power_W },
      sheet: [
        { reflux: kind === 'none' ? 'none' : 'total', until: [{ kind: 'firstVapour' }] },
        { reflux: kind === 'none' ? 'none' : 2, until: [{ kind: 'alcoholLeftBelow', share: 0.2 }] },
      ],
      outputs: { kind: 'every', interval_s: 600 },
    };
  };

  it.each([1e-3, 5e-3, 0.02, 0.1, 1, 10])('of %f m³ boils within two hours and distils within six', (volume_m3) => {
    for (const kind of ['none', 'plates', 'packing'] as const) {
      const run = solve(drawn(volume_m3, kind), system);
      expect(run.ending.kind).toBe('stopped');
      expect(run.firstVapour_s! / 60).toBeGreaterThan(40);
      expect(run.firstVapour_s! / 60).toBeLessThan(120);
      expect(run.time_s.at(-1)! / 3600).toBeLessThan(6);
    }
  });

  it('has as much wall as its diameter makes it', () => {
    const tall = completeStill({ kettle: { volume_m3: 0.1, diameter_m: 0.3 } });
    const asHighAsWide = completeStill({ kettle: { volume_m3: 0.1 } });
    const wide = completeStill({ kettle: { volume_m3: 0.1, diameter_m: 1.5 }, doublers: [{ diameter_m: 1 }] });
    expect(stillFaults(wide)).toEqual([]);
    for (const { kettle } of [tall, wide]) {
      expect(kettle.heatLoss_W_K).toBeGreaterThan(1.05 * asHighAsWide.kettle.heatLoss_W_K);
    }
    expect(wide.kettle.heatingSurfaceHeight_m).toBeLessThan(0.1 / ((Math.PI * 1.5 ** 2) / 4));
  });
});

describe('faults of a still', () => {
  it('name each bad number, its value and what would be right', () => {
    const still = platedStill(4);
    const faults = stillFaults({
      ...still,
      kettle: { ...still.kettle, volume_m3: -1 },
      column: { ...still.column, efficiency: 3, count: 2.5, plateKind: 'glass' },
    });
    expect(faults.map(({ argument }) => argument)).toEqual([
      'still.kettle.volume_m3',
      'still.column.efficiency',
      'still.column.count',
      'still.column.plateKind',
    ]);
    expect(faults[0]).toEqual({
      code: 'outOfRange',
      argument: 'still.kettle.volume_m3',
      value: -1,
      expected: 'a volume above 0 m³',
    });
  });

  it('are found in anything whatever, and nothing crashes on it', () => {
    fc.assert(
      fc.property(fc.anything(), (anything) => {
        expect(stillFaults(anything).length).toBeGreaterThan(0);
      }),
    );
    const still = platedStill(4) as unknown as Record<string, unknown>;
    fc.assert(
      fc.property(fc.constantFrom(...Object.keys(still)), fc.jsonValue(), (key, value) => {
        stillFaults({ ...still, [key]: value });
      }),
    );
  });
});

describe.each(STILL_PRESETS)('the invented still $name', ({ still, charge, doublerCharges, about }) => {
  const back = completeStill(still).refluxCondenser.kind === 'none' ? 'none' : 'total';
  const problem: EnergyProblem = {
    still,
    charge,
    doublerCharges,
    sheet: [{ reflux: back, until: [{ kind: 'firstVapour' }] }],
    outputs: { kind: 'perStep', points: 1 },
  };

  it('can be run, and its first vapour comes within some three quarters of an hour to two and a half hours', () => {
    expect(problemFaults(problem, system)).toEqual([]);
    const minutes = solve(problem, system).firstVapour_s! / 60;
    expect(minutes).toBeGreaterThan(40);
    expect(minutes).toBeLessThan(150);
    expect(about).toMatch(/\.$/u);
  });

  it('is frozen at every depth, and says what nobody set', () => {
    const parts: unknown[] = [still, charge, doublerCharges];
    for (const part of parts) {
      if (typeof part !== 'object' || part === null) continue;
      expect(Object.isFrozen(part)).toBe(true);
      parts.push(...(Object.values(part) as unknown[]));
    }
    expect(parts.length).toBeGreaterThan(6);
    expect(completions(still).map(({ path }) => path)).toContain('productCondenser.flow_kg_s');
  });
});
