// Vapour pressure of ethanol: the Wagner-type equation (exponents 1, 1.5, 2.5, 5) of Poling et al. It boils at
// 78.29 °C at 1 atm, as measured; the reference equation of state (Schroeder 2014) is 0.13 K high there.
// docs/theory/equilibrium.md says why that decides the choice.
// Source: B. E. Poling, J. M. Prausnitz, J. P. O'Connell, The Properties of Gases and Liquids, 5th ed., 2001, app. A.

import { saturationLine } from './saturation.js';

/** The saturation line of ethanol. The 250 K limit is ours: the pressure there is still smooth and within 1 % of other equations. */
export const ethanolSaturation = saturationLine({
  criticalTemperature_K: 513.92,
  criticalPressure_Pa: 6.132e6,
  lowest_K: 250,
  terms: [
    [-8.68587, 2],
    [1.17831, 3],
    [-4.8762, 5],
    [1.588, 10],
  ],
});
