// Written by reference/parameters/build-data.mjs from reference/parameters/redlich-kister-ethanol-water.json; edit that file, not this one.
import { parameterSet } from './parameter-set.js';

/** The reference model of ethanol (1) + water (2): expansion of the excess Gibbs energy; SI units. Source: thisproject in reference/bibliography.bib, reference/regression/regress.mjs, with the weights of reference/measurements/weights.json. */
export const REDLICH_KISTER_ETHANOL_WATER = parameterSet({
  key: 'redlich-kister-ethanol-water',
  title: 'The reference model of ethanol (1) + water (2): expansion of the excess Gibbs energy',
  equation: 'redlichKister',
  substances: ['ethanol', 'water'],
  coefficients: {
    a1: 1.81485954147,
    a2: -0.0234884322346,
    a3: 0.0463054392924,
    a4: 0.0077583662153,
    a5: -0.0450590413904,
    a6: -0.0363355707751,
    b1: 0.206421177532,
    b2: -0.764940129454,
    b3: -0.456863783634,
    b4: -0.659924419534,
    b5: -0.237869528535,
    b6: 0.860780324738,
    c1: -8.68062347287,
    c2: -3.82177573978,
    c3: -6.75917679303,
    c4: -3.07428219646,
    c5: 4.18343465247,
    c6: 5.24312757648,
    d1: -6.52945725435,
    d2: -11.3203869587,
    d3: -10.8156900594,
  },
  constants: { rho: 2, T0: 350 },
  range: { temperature: [298, 424] },
  source: 'thisproject',
});
