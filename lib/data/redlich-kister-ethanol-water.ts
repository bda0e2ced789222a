// Written by reference/parameters/build-data.mjs from reference/parameters/redlich-kister-ethanol-water.json; edit that file, not this one.
import { parameterSet } from './parameter-set.js';

/** The reference model of ethanol (1) + water (2): expansion of the excess Gibbs energy; SI units. Source: thisproject in reference/bibliography.bib, reference/regression/regress.mjs, with the weights of reference/measurements/weights.json. */
export const REDLICH_KISTER_ETHANOL_WATER = parameterSet({
  key: 'redlich-kister-ethanol-water',
  title: 'The reference model of ethanol (1) + water (2): expansion of the excess Gibbs energy',
  equation: 'redlichKister',
  substances: ['ethanol', 'water'],
  coefficients: {
    a1: 2.01451509951,
    a2: -0.238887842623,
    a3: 0.0754117423096,
    a4: -0.0245429899952,
    a5: -0.0457882355286,
    a6: -0.022333801337,
    b1: 0.122531677229,
    b2: -1.00512886183,
    b3: -0.307916106628,
    b4: -0.498619247705,
    b5: -0.205457590517,
    b6: 0.922157943305,
    c1: -10.2073772079,
    c2: -4.23602951213,
    c3: -6.93848369796,
    c4: -2.33486405813,
    c5: 6.08278442054,
    c6: 7.57952870741,
    d1: -8.96815560259,
    d2: -12.9475810091,
    d3: -8.37116740012,
  },
  constants: { rho: 2.5, T0: 350 },
  range: { temperature: [298, 424] },
  source: 'thisproject',
});
