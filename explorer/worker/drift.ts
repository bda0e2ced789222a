// The azeotrope against pressure by the default model, with its standard errors. Loaded by the worker when
// first asked for: the covariance it needs is no use to anything else on the page.

import {
  activityModel,
  azeotrope,
  azeotropeUncertainty,
  bubblePoint,
  DEFAULT_ACTIVITY,
  strengthFromMoleFraction,
} from '#lib/index.js';
import type { AzeotropeAt, DriftAnswer, DriftQuestion } from './questions.js';

/** Within this of the pressure where the azeotrope ends, Pa. */
const closeEnough_Pa = 0.5;

/** The azeotrope at each pressure asked for, and where it ends if that is asked. */
export function drift({ pressures_Pa, endBetween_Pa }: DriftQuestion): DriftAnswer {
  return {
    kind: 'drift',
    points: pressures_Pa.map(pointAt),
    end_Pa: endBetween_Pa === null ? null : endOf(endBetween_Pa),
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
