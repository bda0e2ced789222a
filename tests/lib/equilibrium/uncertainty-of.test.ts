// The equilibrium's uncertainty carried through any reader: against the closed derivatives of uncertainty.ts, and against samples drawn from the
// covariance.

import { describe, expect, it } from 'vitest';
import {
  type ActivityModel,
  azeotrope,
  azeotropeUncertainty,
  bubblePoint,
  createEthanolWater,
  equilibriumUncertainty,
  equilibriumUncertaintyOf,
  InputError,
  moleFractionFromStrength,
  solve,
  stagesAtTotalReflux,
  strengthFromMoleFraction,
} from '#lib/index.js';
import { coefficientSeries } from '#lib/data/parameter-set.js';
import { REDLICH_KISTER_COVARIANCE as covariance } from '#lib/data/redlich-kister-covariance.js';
import { EXPANSION, redlichKister, redlichKisterModel } from '#lib/mixture/activity/redlich-kister.js';

const atm = 101325;

/** One model of a population with that covariance, cross coefficient included; the same ones each time. */
function drawn(random: () => number): ActivityModel {
  const normal = (): number => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const count = EXPANSION.series.reduce((sum, terms) => sum + terms.length, 0);
  const along = Array.from({ length: count }, normal);
  const cross = normal();
  const byCross = coefficientSeries(covariance, 'cross_');
  let at = 0;
  const series = EXPANSION.series.map((terms) =>
    terms.map((term) => {
      const i = at++;
      const row = coefficientSeries(covariance, `L${String(i + 1)}_`);
      return term + row.reduce((sum, value, k) => sum + value * along[k]!, 0) + cross * byCross[i]!;
    }),
  );
  const { name, range_K, source } = redlichKister;
  const shifted = EXPANSION.cross + cross * covariance.constants.crossStep;
  return redlichKisterModel({ ...EXPANSION, series, cross: shifted }, { name, range_K, source });
}

/** A generator that begins at a seed; Park and Miller, 1988. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (48_271 * state) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

function spread(read: (model: ActivityModel) => number, samples: number): number {
  const random = seeded(20_261_128);
  const values = Array.from({ length: samples }, () => read(drawn(random)));
  const mean = values.reduce((sum, value) => sum + value, 0) / samples;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (samples - 1));
}

describe('the uncertainty of what is read off the equilibrium', () => {
  it('of a boiling point and of the azeotrope is what the closed derivatives give, which have one constant for the cross coefficient', () => {
    const aTenth = 0.15;
    for (const x of [0.01, 0.02, 0.05]) {
      const { rises, boils_K } = equilibriumUncertaintyOf((model) => {
        const point = bubblePoint(x, atm, model);
        return { rises: point.vapourMoleFraction, boils_K: point.temperature_K };
      });
      const { curve } = equilibriumUncertainty(x, atm);
      expect(rises.value).toBe(bubblePoint(x, atm).vapourMoleFraction);
      expect(Math.abs(rises.uncertainty! / curve.vapourMoleFraction - 1)).toBeLessThan(aTenth);
      expect(Math.abs(boils_K.uncertainty! / curve.temperature_K - 1)).toBeLessThan(aTenth);
    }
    const closed = azeotropeUncertainty(atm);
    const { x } = equilibriumUncertaintyOf((model) => {
      const found = azeotrope(atm, model);
      return { x: found.found ? found.moleFraction : null };
    });
    expect(Math.abs(x.uncertainty! / (closed.found ? closed.curve.moleFraction : NaN) - 1)).toBeLessThan(2 * aTenth);
  });

  const samples = 400;
  /** Three standard errors of a spread found from so many samples: 3/√(2 × 400). */
  const alike = 3 / Math.sqrt(2 * samples);

  const system = createEthanolWater();
  const readers: readonly [string, (model: ActivityModel) => number][] = [
    [
      'the first vapour of a wash',
      (model) => strengthFromMoleFraction(bubblePoint(0.0312, atm, model).vapourMoleFraction),
    ],
    ['the temperature at which a wash boils', (model) => bubblePoint(0.0312, atm, model).temperature_K],
    [
      'the ceiling',
      (model) => {
        const found = azeotrope(atm, model);
        return found.found ? strengthFromMoleFraction(found.moleFraction) : NaN;
      },
    ],
  ];
  it.each(readers)('of %s is the spread over models drawn from the covariance', (_name, read) => {
    const { it: found } = equilibriumUncertaintyOf((model) => ({ it: read(model) }));
    expect(Math.abs(found.uncertainty! / spread(read, samples) - 1)).toBeLessThan(alike);
  });

  it('of stages at total reflux and of all of a run is so, too', () => {
    const few = 60;
    const read = (model: ActivityModel): { stages: number | null; litres: number; strength: number } => {
      const slice = system.curve(model).at(atm);
      const count = stagesAtTotalReflux(slice, 0.0312, moleFractionFromStrength(0.95));
      const run = solve(
        {
          model: 'rayleigh',
          still: { kettle: { volume_m3: 0.2 }, air: { pressure_Pa: atm } },
          charge: { kind: 'volume', volume_m3: 0.12, strength: 0.095 },
          activity: model,
          heat: { kind: 'power', power_W: 5500 },
          sheet: [{ reflux: 'none', until: [{ kind: 'alcoholLeftBelow', share: 0.05 }] }],
        },
        system,
      );
      const litres = 1000 * run.collectedVolume_m3.at(-1)!;
      const strength = run.pureAlcoholCollected_m3.at(-1)! / run.collectedVolume_m3.at(-1)!;
      return { stages: count.found ? count.stages : null, litres, strength };
    };
    const found = equilibriumUncertaintyOf(read);
    for (const name of ['stages', 'litres', 'strength'] as const) {
      const drawnSpread = spread((model) => read(model)[name]!, few);
      expect(Math.abs(found[name].uncertainty! / drawnSpread - 1), name).toBeLessThan(3 / Math.sqrt(2 * few));
    }
  });

  it('is null where a result is lost as the model moves, and bad readers are refused in words', () => {
    const ends = equilibriumUncertaintyOf((model) => {
      const found = azeotrope(12.4e3, model);
      return { x: found.found ? found.moleFraction : null };
    });
    expect(ends.x.uncertainty).toBeNull();
    expect(() => equilibriumUncertaintyOf(7 as never)).toThrow(InputError);
    expect(() => equilibriumUncertaintyOf((() => 7) as never)).toThrow('numbers by name');
    expect(() => equilibriumUncertaintyOf((() => ({ y: 'much' })) as never)).toThrow('read: y');
  });
});
