// Written by reference/parameters/build-data.mjs from reference/parameters/redlich-kister-ethanol-water.json; edit that file, not this one.
import { parameterSet } from './parameter-set.js';

/** The reference model of ethanol (1) + water (2): expansion of the excess Gibbs energy; SI units. Source: thisproject in reference/bibliography.bib, reference/regression/regress.mjs, with the weights of reference/measurements/weights.json. */
export const REDLICH_KISTER_ETHANOL_WATER = parameterSet({
  key: 'redlich-kister-ethanol-water',
  title: 'The reference model of ethanol (1) + water (2): expansion of the excess Gibbs energy',
  equation: 'redlichKister',
  substances: ['ethanol', 'water'],
  coefficients: {
    a1: 1.81585644545,
    a2: -0.0417504776731,
    a3: 0.0521819169968,
    a4: -0.0215078339085,
    a5: -0.0518701210247,
    a6: -0.000277037652917,
    b1: 0.180598160638,
    b2: -0.733974895835,
    b3: -0.533133886739,
    b4: -0.499208859436,
    b5: -0.13240720478,
    b6: 0.657645320709,
    c1: -8.65367859033,
    c2: -3.87162528866,
    c3: -5.22112898286,
    c4: -3.47174402747,
    c5: 1.97499375074,
    c6: 5.54132589789,
    d1: -5.56626646908,
    d2: -11.6267943306,
    d3: -9.60109359833,
  },
  constants: { rho: 2, T0: 350, cross: -0.23 },
  range: { temperature: [298, 424] },
  source: 'thisproject',
});
