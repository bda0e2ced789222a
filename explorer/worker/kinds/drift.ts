// The azeotrope of the default model against pressure, with its standard errors. Loaded by the worker when
// first asked for: the covariance it needs is no use to anything else on the page.

import {
  activityModel,
  azeotrope,
  azeotropeUncertainty,
  bubblePoint,
  DEFAULT_ACTIVITY,
  strengthFromMoleFraction,
} from '#lib/index.js';

export interface DriftQuestion {
  readonly kind: 'drift';
  readonly pressures_Pa: readonly number[];
  /** Pressures without and with an azeotrope, to look between for its end; null not to look. */
  readonly endBetween_Pa: readonly [number, number] | null;
  /** More pressures close to the end, where there is one, each as a multiple of it. */
  readonly nearEnd?: readonly number[];
}

/** The azeotrope at one pressure with its standard errors; null where there is none. */
export interface AzeotropeAt {
  readonly pressure_Pa: number;
  readonly azeotrope: {
    readonly moleFraction: number;
    /** % vol / 100 at 20 °C. */
    readonly strength: number;
    readonly temperature_K: number;
    readonly moleFractionError: number;
    readonly strengthError: number;
    readonly temperatureError_K: number;
  } | null;
  /** Whether it boils outside the temperatures the model was fitted to. */
  readonly extrapolated: boolean;
}

export interface DriftAnswer {
  readonly kind: 'drift';
  readonly points: readonly AzeotropeAt[];
  /** Below it there is no azeotrope. */
  readonly end_Pa: number | null;
  /** Temperatures the model was fitted to, K. */
  readonly range_K: readonly [number, number];
}

/** Within this of the pressure where the azeotrope ends, Pa. */
const closeEnough_Pa = 0.5;

/** The azeotrope at each pressure asked for, and where it ends if that is asked. */
export function drift({ pressures_Pa, endBetween_Pa, nearEnd = [] }: DriftQuestion): DriftAnswer {
  const end_Pa = endBetween_Pa === null ? null : endOf(endBetween_Pa);
  const near = end_Pa === null ? [] : nearEnd.map((times) => times * end_Pa);
  return {
    kind: 'drift',
    points: [...pressures_Pa, ...near].map(pointAt),
    end_Pa,
    range_K: activityModel(DEFAULT_ACTIVITY).range_K,
  };
}

function pointAt(pressure_Pa: number): AzeotropeAt {
  const model = activityModel(DEFAULT_ACTIVITY);
  const found = azeotrope(pressure_Pa, model);
  const error = azeotropeUncertainty(pressure_Pa);
  if (!found.found || !error.found) {
    const pure = bubblePoint(1, pressure_Pa, model);
    return { pressure_Pa, azeotrope: null, extrapolated: pure.extrapolated };
  }
  const { moleFraction, temperature_K, extrapolated } = found;
  const low = strengthFromMoleFraction(moleFraction - error.moleFraction);
  const high = strengthFromMoleFraction(Math.min(1, moleFraction + error.moleFraction));
  return {
    pressure_Pa,
    azeotrope: {
      moleFraction,
      strength: strengthFromMoleFraction(moleFraction),
      temperature_K,
      moleFractionError: error.moleFraction,
      strengthError: (high - low) / 2,
      temperatureError_K: error.temperature_K,
    },
    extrapolated,
  };
}

/** The lowest pressure with an azeotrope, by halving; null where both ends have one or both have none. */
function endOf([none, some]: readonly [number, number]): number | null {
  const model = activityModel(DEFAULT_ACTIVITY);
  const has = (pressure_Pa: number): boolean => azeotrope(pressure_Pa, model).found;
  if (has(none) || !has(some)) return null;
  let [low, high] = [none, some];
  while (high - low > closeEnough_Pa) {
    const middle = (low + high) / 2;
    if (has(middle)) high = middle;
    else low = middle;
  }
  return high;
}
