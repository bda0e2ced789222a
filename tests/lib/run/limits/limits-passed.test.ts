// The limits that speak: each is passed when it should be, and only then; and driving plates hard makes them worse.

import { describe, expect, it } from 'vitest';
import { createEthanolWater, limitsOf, solve, type Still, type EnergyProblem } from '#lib/index.js';
import { doubler, platedStill, pot, trainProblem, power } from '../../../support/train-problems.js';

const system = createEthanolWater();

function limits(problem: EnergyProblem): Map<string, { worst: number; from_s: number; cure: string }> {
  return new Map(limitsOf(solve(problem, system), system).map((limit) => [limit.kind, limit]));
}

function plated(changes: Partial<Extract<Still['column'], { kind: 'plates' }>>, still: Partial<Still> = {}): Still {
  const base = platedStill(8);
  if (base.column.kind !== 'plates') throw new Error('plates');
  return { ...base, column: { ...base.column, ...changes }, ...still };
}

describe('a run', () => {
  it('that is within its still says nothing', () => {
    const still = plated({ plateKind: 'bubbleCap' }, { productCondenser: { ...platedStill(8).productCondenser } });
    expect([...limits(trainProblem({ still })).keys()]).toEqual([]);
  });

  it('floods a narrow column, by how much, from when on, and says what would cure it', () => {
    const found = limits(trainProblem({ still: plated({ diameter_m: 0.07 }) })).get('flooding')!;
    expect(found.worst).toBeGreaterThan(1.2);
    expect(found.from_s).toBeLessThan(600);
    expect(found.cure).toMatch(/wider/u);
  });

  it('lets a sieve weep at little heat, and bubble caps not', () => {
    const gentle = { heat: power(2500) };
    expect(limits(trainProblem({ still: plated({}), ...gentle })).get('weeping')!.worst).toBeLessThan(0.9);
    expect(limits(trainProblem({ still: plated({ plateKind: 'bubbleCap' }), ...gentle })).has('weeping')).toBe(false);
  });

  it('bares a heating surface that stands too high, late in the run', () => {
    const base = pot();
    const still = { ...base, kettle: { ...base.kettle, heatingSurfaceHeight_m: 0.5 } };
    const problem = trainProblem({
      still,
      sheet: [{ reflux: 'none', until: [{ kind: 'duration', seconds: 14_000 }] }],
    });
    const found = limits(problem).get('kettleLow')!;
    expect(found.worst).toBeLessThan(1);
    expect(found.from_s).toBeGreaterThan(3600);
  });

  it('asks for more heat than its heater gives, by how much and when', () => {
    const sheet: EnergyProblem['sheet'] = [
      { reflux: 'total', until: [{ kind: 'duration', seconds: 1200 }] },
      { reflux: 3, heat: power(6600), until: [{ kind: 'duration', seconds: 600 }] },
      { reflux: 3, until: [{ kind: 'duration', seconds: 600 }] },
    ];
    const found = limits(trainProblem({ still: plated({}), sheet })).get('heaterShort')!;
    expect(found.worst).toBeCloseTo(1.2, 12);
    expect(found.from_s).toBe(1200);
    expect(found.cure).toMatch(/heater/u);
    expect(limits(trainProblem({ still: plated({}) })).has('heaterShort')).toBe(false);
  });

  it('outruns a condenser with little water', () => {
    const still = plated(
      {},
      {
        productCondenser: {
          holdUp: { kind: 'volume', volume_m3: 1e-5 },
          flow_kg_s: 0.01,
          inlet_K: 288.15,
          transfer_W_K: 300,
        },
      },
    );
    expect(limits(trainProblem({ still })).get('condenserShort')!.worst).toBeGreaterThan(1.5);
  });

  it('loses the strength it should hold when the kettle gets too weak for it', () => {
    const hold = { kind: 'hold', strength: 0.9, leastShare: 0.3, mostShare: 0.75 } as const;
    const problem = trainProblem({
      still: plated({ plateKind: 'bubbleCap' }),
      sheet: [
        { reflux: 'total', until: [{ kind: 'duration', seconds: 2400 }] },
        { reflux: hold, until: [{ kind: 'spoutStrengthBelow', strength: 0.8 }] },
      ],
    });
    const lost = limits(problem).get('holdLost')!;
    expect(lost.from_s).toBeGreaterThan(3000);
    expect(lost.worst).toBeLessThan(0.95);
  });

  it('fills a doubler that was charged to the brim', () => {
    const problem = trainProblem({
      still: pot([doubler]),
      charge: { kind: 'volume', volume_m3: 0.1, strength: 0.08 },
      doublerCharges: [{ charge: { kind: 'volume', volume_m3: 0.0195, strength: 0.1 } }],
      sheet: [{ reflux: 'none', until: [{ kind: 'duration', seconds: 4000 }] }],
    });
    expect(limits(problem).has('doublerOver')).toBe(true);
  });
});

describe('plates driven too fast', () => {
  // Common practice, no published source: a run pushed hot and fast smears tails into the hearts.
  const best = (efficiencyFalls: boolean, diameter_m: number): number =>
    Math.max(...solve(trainProblem({ still: plated({ efficiencyFalls, diameter_m }) }), system).spoutStrength);

  it('work worse, if they are told to, and wide ones do not', () => {
    expect(best(true, 0.07)).toBeLessThan(best(false, 0.07) - 0.002);
    expect(Math.abs(best(true, 0.2) - best(false, 0.2))).toBeLessThan(2e-4);
  });
});
