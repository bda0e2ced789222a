// What can be a still: descriptions completed with reasons, faults named, presets that run.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  completeStill,
  condenserCapacity,
  createEthanolWater,
  problemFaults,
  solve,
  STILL_PRESETS,
  stillFaults,
  type EnergyProblem,
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
    expect(faults[0]).toEqual({ argument: 'still.kettle.volume_m3', value: -1, expected: 'a volume above 0 m³' });
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
  const back = still.refluxCondenser.kind === 'none' ? 'none' : 'total';
  const problem: EnergyProblem = {
    still,
    charge: { kind: 'volume', ...charge },
    doublerCharges: doublerCharges.map((own) => ({ charge: { kind: 'volume', ...own } })),
    activity: 'redlich-kister',
    heat: { kind: 'power', power_W: still.kettle.power_W },
    sheet: [{ reflux: back, until: [{ kind: 'firstVapour' }] }],
    outputs: { kind: 'perStep', points: 1 },
  };

  it('can be run, and its first vapour comes within some three quarters of an hour to two and a half hours', () => {
    expect(stillFaults(still)).toEqual([]);
    expect(problemFaults(problem, system)).toEqual([]);
    const minutes = solve(problem, system).firstVapour_s! / 60;
    expect(minutes).toBeGreaterThan(40);
    expect(minutes).toBeLessThan(150);
    expect(about).toMatch(/\.$/u);
  });
});
