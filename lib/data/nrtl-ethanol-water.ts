// Written by reference/parameters/build-data.mjs from reference/parameters/nrtl-ethanol-water.json; edit that file, not this one.
import { parameterSet } from './parameter-set.js';

/** NRTL parameters of ethanol (1) + water (2) by this project; SI units. Source: thisproject in reference/bibliography.bib, reference/regression/regress.mjs, with the weights of reference/measurements/weights.json. */
export const NRTL_ETHANOL_WATER = parameterSet({
  key: 'nrtl-ethanol-water',
  title: 'NRTL parameters of ethanol (1) + water (2) by this project',
  equation: 'nrtl',
  substances: ['ethanol', 'water'],
  coefficients: {
    a12: 2.57007639399,
    b12: 153.46682906,
    c12: -0.512851572932,
    a21: 64.4684345504,
    b21: -3705.82065674,
    c21: -8.89692991598,
    alpha: 0.362023387614,
  },
  constants: {},
  range: { temperature: [298, 424] },
  source: 'thisproject',
});
