// The system ethanol + water: activity models by name, and their compiled curves, each compiled once and kept.

import type { ActivityModel } from '../mixture/activity/activity-model.js';
import { activityModel, type ActivityName, DEFAULT_ACTIVITY } from '../mixture/activity/registry.js';
import { compileCurve } from './compile-curve.js';
import { compileEnthalpy, type EnthalpyCurve, type EnthalpySlice } from './enthalpy-curve.js';
import type { CurveSlice, EquilibriumCurve } from './equilibrium-curve.js';

/** Turns names in a problem into models and curves. */
export interface EthanolWater {
  /** The activity model of that name, or the caller's own as it is; the default one when none is named. */
  model(activity?: ActivityName | ActivityModel): ActivityModel;
  /** Its compiled curve, 20 to 300 kPa; compiled at the first call and kept. */
  curve(activity?: ActivityName | ActivityModel): EquilibriumCurve;
  /** Its compiled enthalpies, 20 to 170 kPa; compiled at the first call and kept. */
  enthalpy(activity?: ActivityName | ActivityModel): EnthalpyCurve;
}

/**
 * The system ethanol + water, which keeps the curves it has compiled and their slices at the pressures last asked for.
 *
 * Equation: compileCurve(activityModel(name)), once for each name.
 * @returns Models and curves by name.
 * @example createEthanolWater().curve('redlich-kister').model // → 'redlich-kister'
 * Source: this project, docs/theory/equilibrium.md.
 */
export function createEthanolWater(): EthanolWater {
  // Kept by the model itself, so that a caller's own is forgotten with it.
  const curves = new WeakMap<ActivityModel, EquilibriumCurve>();
  const enthalpies = new WeakMap<ActivityModel, EnthalpyCurve>();
  const modelOf = (activity: ActivityName | ActivityModel = DEFAULT_ACTIVITY): ActivityModel =>
    typeof activity === 'string' ? activityModel(activity) : activity;
  const system: EthanolWater = {
    model: modelOf,
    curve(activity) {
      const model = modelOf(activity);
      const known = curves.get(model);
      if (known !== undefined) return known;
      const curve = withKeptSlices(compileCurve(model));
      curves.set(model, curve);
      return curve;
    },
    enthalpy(activity) {
      const model = modelOf(activity);
      const known = enthalpies.get(model);
      if (known !== undefined) return known;
      const compiled = compileEnthalpy(model, system.curve(model));
      const enthalpy = { at: withKept((pressure_Pa) => compiled.at(pressure_Pa)) };
      enthalpies.set(model, enthalpy);
      return enthalpy;
    },
  };
  return system;
}

/** Slices kept of one curve: every plate of a few columns. The oldest goes first. */
const MOST_SLICES = 200;

/** The same curve, which keeps the slices it has made: changing plates or reflux asks for the same pressures again. */
function withKeptSlices(curve: EquilibriumCurve): EquilibriumCurve {
  return { ...curve, at: withKept((pressure_Pa) => curve.at(pressure_Pa)) };
}

function withKept<Slice extends CurveSlice | EnthalpySlice>(
  at: (pressure_Pa: number) => Slice,
): (pressure_Pa: number) => Slice {
  const slices = new Map<number, Slice>();
  return (pressure_Pa) => {
    const known = slices.get(pressure_Pa);
    if (known !== undefined) return known;
    const slice = at(pressure_Pa);
    if (slices.size >= MOST_SLICES) slices.delete(slices.keys().next().value!);
    slices.set(pressure_Pa, slice);
    return slice;
  };
}
