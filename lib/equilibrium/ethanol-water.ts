// The system ethanol + water: activity models by name, and their compiled curves, each compiled once and kept.

import type { ActivityModel } from '../mixture/activity/activity-model.js';
import { activityModel, type ActivityName, DEFAULT_ACTIVITY } from '../mixture/activity/registry.js';
import { compileCurve } from './compile-curve.js';
import type { EquilibriumCurve } from './equilibrium-curve.js';

/** Turns names in a problem into models and curves. */
export interface EthanolWater {
  /** The activity model of that name; the default one when none is named. */
  model(name?: ActivityName): ActivityModel;
  /** Its compiled curve, 20 to 300 kPa; compiled at the first call and kept. */
  curve(name?: ActivityName): EquilibriumCurve;
}

/**
 * The system ethanol + water, which keeps the curves it has compiled.
 *
 * Equation: compileCurve(activityModel(name)), once for each name.
 * @returns Models and curves by name.
 * @example createEthanolWater().curve('redlich-kister').model // → 'redlich-kister'
 * Source: this project, docs/theory/equilibrium.md.
 */
export function createEthanolWater(): EthanolWater {
  const curves = new Map<ActivityName, EquilibriumCurve>();
  return {
    model: (name = DEFAULT_ACTIVITY) => activityModel(name),
    curve(name = DEFAULT_ACTIVITY) {
      const known = curves.get(name);
      if (known !== undefined) return known;
      const curve = compileCurve(activityModel(name));
      curves.set(name, curve);
      return curve;
    },
  };
}
