// A step that asks for a strength: the least reflux that could give it, watched and said with its number.

import { describe, expect, it } from 'vitest';
import {
  createEthanolWater,
  type Limit,
  limitsOf,
  minimumReflux,
  moleFractionFromStrength,
  solve,
  type EnergyProblem,
  type EnergySolution,
} from '#lib/index.js';
import { platedStill, pot, trainProblem, type WholeProblem } from '../../../support/train-problems.js';

const system = createEthanolWater();
const slice = system.curve('redlich-kister').at(101325);
const total = { reflux: 'total', until: [{ kind: 'duration', seconds: 2400 }] } as const;

function ran(changes: Partial<WholeProblem>): { run: EnergySolution; said: Map<string, Limit> } {
  const problem = trainProblem(changes);
  const run = solve(problem, system);
  return { run, said: new Map(limitsOf(run, system).map((limit) => [limit.kind, limit])) };
}

/** Least reflux over the kettle at a moment. */
function least({ time_s, kettleMoleFraction }: EnergySolution, at_s: number, strength: number): number {
  const row = time_s.findIndex((time) => time >= at_s);
  const found = minimumReflux(slice, kettleMoleFraction[row]!, moleFractionFromStrength(strength));
  return found.found ? found.reflux : NaN;
}

/** A ratio as it is said: to two digits. */
function inWords(ratio: number): string {
  return `${String(Number(ratio.toPrecision(2)))} : 1`;
}

describe('a strength that is held', () => {
  const hold = { kind: 'hold', strength: 0.9, leastShare: 0.3, mostShare: 0.75 } as const;
  /** Plates that hold next to nothing, so that the column follows its kettle. */
  const held = (plates: number): ReturnType<typeof ran> => {
    const still = platedStill(plates, 0.65, true);
    const column = { ...still.column, holdUp: { kind: 'volume', volume_m3: 1e-5 } } as WholeProblem['still']['column'];
    return ran({
      still: { ...still, column },
      sheet: [total, { reflux: hold, until: [{ kind: 'kettleStrengthBelow', strength: 0.01 }] }],
    });
  };

  it('says when the reflux allowed falls below the least, and what the least is at worst', () => {
    const { run, said } = held(12);
    const short = said.get('refluxShort')!;
    const fewPercent = 0.03; // rows a minute apart, plates a kilopascal apart
    expect(Math.abs(least(run, short.from_s, 0.9) / 3 - 1)).toBeLessThan(fewPercent);
    const worst = least(run, short.worst_s, 0.9);
    expect(Math.abs(short.worst * worst - 3)).toBeLessThan(fewPercent * 3);
    const first = least(run, short.from_s, 0.9);
    expect(short.message).toContain(`at least ${inWords(first)} when this begins and ${inWords(worst)} at worst`);
    expect(short.message).toContain('allows 3 : 1');
    expect(short.cure).toMatch(/lower strength/u);
  });

  it('is lost before that by six plates, which need more than the least', () => {
    const { said } = held(6);
    expect(said.get('refluxShort')!.from_s).toBeGreaterThan(said.get('holdLost')!.from_s + 300);
  });

  it('says at no plates that there are none, and nothing about however many', () => {
    const still = platedStill(12);
    const bare = { ...still, column: { kind: 'none' } } as WholeProblem['still'];
    const { said } = ran({
      still: bare,
      sheet: [total, { reflux: 1, until: [{ kind: 'spoutStrengthBelow', strength: 0.9 }] }],
    });
    expect(said.get('refluxShort')!.message).toMatch(/takes plates, and a reflux of at least .*; there are no plates/u);
  });

  it('beyond the azeotrope is out of reach of any reflux', () => {
    const { said } = ran({
      still: platedStill(12),
      sheet: [total, { reflux: { ...hold, strength: 0.985 }, until: [{ kind: 'duration', seconds: 1800 }] }],
    });
    const { worst, message, cure } = said.get('refluxShort')!;
    expect(worst).toBe(0);
    expect(message).toMatch(/azeotrope/u);
    expect(cure).toBe('A lower strength.');
  });

  it('by a partial condenser is lost when all its duty is spent', () => {
    const still: WholeProblem['still'] = {
      ...platedStill(8),
      refluxCondenser: {
        kind: 'partial',
        holdUp: { kind: 'volume', volume_m3: 5e-5 },
        coolant: { kind: 'duty', power_W: 3500 },
      },
    };
    const { said } = ran({
      still,
      sheet: [{ reflux: { ...hold, mostShare: 1 }, until: [{ kind: 'duration', seconds: 9000 }] }],
    });
    expect(said.get('holdLost')!.worst).toBeLessThan(0.95);
    expect(said.get('refluxShort')!.worst).toBeLessThan(0.9);
  });
});

describe('a strength that a step waits for', () => {
  const waits = (reflux: EnergyProblem['sheet'][number]['reflux'], strength: number): ReturnType<typeof ran> =>
    ran({
      sheet: [
        {
          reflux,
          until: [
            { kind: 'spoutStrengthBelow', strength },
            { kind: 'duration', seconds: 3600 },
          ],
        },
      ],
    });

  it('cannot come at a reflux below the least: how much it would take is said', () => {
    const { run, said } = waits(1, 0.9);
    const { message, from_s, worst_s } = said.get('refluxShort')!;
    expect(message).toContain(`at least ${inWords(least(run, from_s, 0.9))} when this begins`);
    expect(message).toContain(`${inWords(least(run, worst_s, 0.9))} at worst`);
    expect(message).toContain('has 1 : 1');
  });

  it('is out of reach of a kettle that is all but empty of alcohol, and no absurd number is said', () => {
    const until = [{ kind: 'spoutStrengthBelow', strength: 0.95 }] as const;
    const { run, said } = ran({ sheet: [{ reflux: 0.5, until }] });
    expect(run.kettleStrength.at(-1)!).toBeLessThan(1e-4);
    expect(said.get('refluxShort')!.message).toContain('and 100 : 1 at worst');
  });

  it('says nothing where the reflux is enough, or where a pot is as strong by itself', () => {
    expect(waits(4, 0.85).said.has('refluxShort')).toBe(false);
    const until = [{ kind: 'spoutStrengthBelow', strength: 0.3 }] as const;
    const potAlone = ran({ still: pot(), start: 'cold', sheet: [{ reflux: 'none', until }] });
    expect(potAlone.said.has('refluxShort')).toBe(false);
  });
});
