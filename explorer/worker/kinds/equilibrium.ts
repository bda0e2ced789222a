// What boils at what, at one pressure.

import { activityModel, azeotrope, strengthFromMoleFraction, type ActivityName, type CurveSlice } from '#lib/index.js';
import type { Answering } from './kind.js';

export interface EquilibriumQuestion {
  readonly kind: 'equilibrium';
  readonly activity: ActivityName;
  readonly pressure_Pa: number;
}

export interface EquilibriumAnswer {
  readonly kind: 'equilibrium';
  /** Name of the model, and where its parameters come from. */
  readonly model: { readonly name: string; readonly source: string };
  readonly slice: CurveSlice;
  /** Null where the model has none at this pressure. */
  readonly azeotrope: {
    readonly moleFraction: number;
    /** % vol / 100 at 20 °C. */
    readonly strength: number;
    readonly temperature_K: number;
  } | null;
}

export const equilibrium: Answering<EquilibriumQuestion, EquilibriumAnswer> = (
  { activity, pressure_Pa },
  { system },
) => {
  const model = activityModel(activity);
  const found = azeotrope(pressure_Pa, model);
  return {
    kind: 'equilibrium',
    model: { name: model.name, source: model.source },
    slice: system.curve(activity).at(pressure_Pa),
    azeotrope: found.found
      ? {
          moleFraction: found.moleFraction,
          strength: strengthFromMoleFraction(found.moleFraction),
          temperature_K: found.temperature_K,
        }
      : null,
  };
};
