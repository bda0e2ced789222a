// The states and models of the laws matrix, and the exceptions to its laws with their reasons.

import { ACTIVITY_NAMES, activityModel, type ActivityState } from '#lib/index.js';

export const models = ACTIVITY_NAMES.map((name) => ({ name, model: activityModel(name) }));

export const moleFractions = [0, 1e-6, 0.01, 0.0405, 0.15, 0.35, 0.5, 0.7, 0.85, 0.894, 0.95, 0.999, 1] as const;
export const temperatures_K = [298.15, 323.15, 351.4, 373.15, 403.15] as const;
export const pressures_Pa = [20e3, 50e3, 80e3, 101325, 150e3, 300e3] as const;

/** A model that breaks a law, with the reason; the matrix then checks that it does break it. */
export const exceptions: readonly { readonly law: string; readonly model: string; readonly reason: string }[] = [
  {
    law: 'has an azeotrope',
    model: 'raoult',
    reason: 'an ideal solution of two substances whose vapour pressures never cross has none',
  },
  { law: 'moves its azeotrope to less ethanol with rising pressure', model: 'raoult', reason: 'it has no azeotrope' },
];

export function isException(law: string, model: string): boolean {
  return exceptions.some((exception) => exception.law === law && exception.model === model);
}

export function blankState(): ActivityState {
  return {
    lnGammaEthanol: 0,
    lnGammaWater: 0,
    slopeEthanol: 0,
    slopeWater: 0,
    thermalEthanol: 0,
    thermalWater: 0,
  };
}
