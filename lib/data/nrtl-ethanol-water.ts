// Written by reference/parameters/build-data.mjs from reference/parameters/nrtl-ethanol-water.json; edit that file, not this one.
import { parameterSet } from './parameter-set.js';

/** NRTL parameters of ethanol (1) + water (2) by this project; SI units. Source: thisproject in reference/bibliography.bib, reference/regression/regress.mjs, with the weights of reference/measurements/weights.json. */
export const NRTL_ETHANOL_WATER = parameterSet({
  key: 'nrtl-ethanol-water',
  title: 'NRTL parameters of ethanol (1) + water (2) by this project',
  equation: 'nrtl',
  substances: ['ethanol', 'water'],
  coefficients: {
    a12: 12.2180574482,
    b12: -401.89970109,
    c12: -1.84007835827,
    a21: 68.2198106187,
    b21: -3774.50647137,
    c21: -9.54209049001,
    alpha: 0.528906999407,
  },
  constants: {},
  range: { temperature: [298, 424] },
  source: 'thisproject',
});
