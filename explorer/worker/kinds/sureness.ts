// How sure the default model is of a boil and of the azeotrope: the equilibrium's own standard errors. Loaded by the worker when first asked for,
// as the covariance it needs is no use to anything else on a page.

import {
  azeotrope,
  bubblePoint,
  equilibriumUncertaintyOf,
  moleFractionFromStrength,
  strengthFromMoleFraction,
  type Uncertain,
} from '#lib/index.js';

export interface SurenessQuestion {
  readonly kind: 'sureness';
  readonly pressure_Pa: number;
  /** % vol / 100 of what boils. */
  readonly fromStrength: number;
}

export interface SurenessAnswer {
  readonly kind: 'sureness';
  /** Strength of the first vapour, % vol / 100. */
  readonly firstVapour: Uncertain;
  /** Temperature at which it boils, K. */
  readonly boils_K: Uncertain;
  /** Strength of the azeotrope, % vol / 100; NaN where there is none. */
  readonly ceiling: Uncertain;
}

export function sureness({ pressure_Pa, fromStrength }: SurenessQuestion): SurenessAnswer {
  const x = moleFractionFromStrength(fromStrength);
  const found = equilibriumUncertaintyOf((model) => {
    const boil = bubblePoint(x, pressure_Pa, model);
    const ceiling = azeotrope(pressure_Pa, model);
    return {
      firstVapour: strengthFromMoleFraction(boil.vapourMoleFraction),
      boils_K: boil.temperature_K,
      ceiling: ceiling.found ? strengthFromMoleFraction(ceiling.moleFraction) : null,
    };
  });
  return { kind: 'sureness', ...found };
}
