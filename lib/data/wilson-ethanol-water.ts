// Written by reference/parameters/build-data.mjs from reference/parameters/wilson-ethanol-water.json; edit that file, not this one.
import { parameterSet } from './parameter-set.js';

/** Wilson parameters of ethanol (1) + water (2) by this project; SI units. Source: thisproject in reference/bibliography.bib, reference/regression/regress.mjs, with the weights of reference/measurements/weights.json. */
export const WILSON_ETHANOL_WATER = parameterSet({
  key: 'wilson-ethanol-water',
  title: 'Wilson parameters of ethanol (1) + water (2) by this project',
  equation: 'wilson',
  substances: ['ethanol', 'water'],
  coefficients: {
    a12: -50.0633323031,
    b12: 3120.22040554,
    c12: 6.72942044665,
    a21: -11.2955137133,
    b21: 258.483304541,
    c21: 1.77369454264,
  },
  constants: {},
  range: { temperature: [298, 424] },
  source: 'thisproject',
});
