// Vapour pressure of water: the IAPWS saturation equation on ITS-90.
// Source: W. Wagner, A. Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783-787; also eq. 2.5 of 31 (2002) 387-535.

import { saturationLine } from './saturation.js';

/** The IAPWS saturation line of water. */
export const waterSaturation = saturationLine({
  criticalTemperature_K: 647.096,
  criticalPressure_Pa: 22.064e6,
  lowest_K: 273.16,
  terms: [
    [-7.85951783, 2],
    [1.84408259, 3],
    [-11.7866497, 6],
    [22.6807411, 7],
    [-15.9618719, 8],
    [1.80122502, 15],
  ],
});
