// Written by reference/parameters/build-data.mjs from reference/parameters/wilson-ethanol-water.json; edit that file, not this one.
import { parameterSet } from './parameter-set.js';

/** Wilson parameters of ethanol (1) + water (2) by this project; SI units. Source: thisproject in reference/bibliography.bib, reference/regression/regress.mjs, with the weights of reference/measurements/weights.json. */
export const WILSON_ETHANOL_WATER = parameterSet({
  key: 'wilson-ethanol-water',
  title: 'Wilson parameters of ethanol (1) + water (2) by this project',
  equation: 'wilson',
  substances: ['ethanol', 'water'],
  coefficients: {
    a12: -70.6024807993,
    b12: 4003.20928469,
    c12: 9.8185224782,
    a21: -5.62760981076,
    b21: 13.8827769556,
    c21: 0.921211540103,
  },
  constants: {},
  range: { temperature: [298, 424] },
  source: 'thisproject',
});
