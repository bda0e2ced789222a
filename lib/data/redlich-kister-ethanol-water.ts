// Written by reference/parameters/build-data.mjs from reference/parameters/redlich-kister-ethanol-water.json; edit that file, not this one.
import { parameterSet } from './parameter-set.js';

/** The reference model of ethanol (1) + water (2): expansion of the excess Gibbs energy; SI units. Source: thisproject in reference/bibliography.bib, reference/regression/regress.mjs, with the weights of reference/measurements/weights.json. */
export const REDLICH_KISTER_ETHANOL_WATER = parameterSet({
  key: 'redlich-kister-ethanol-water',
  title: 'The reference model of ethanol (1) + water (2): expansion of the excess Gibbs energy',
  equation: 'redlichKister',
  substances: ['ethanol', 'water'],
  coefficients: {
    a1: 1.81485954146,
    a2: -0.0234884297939,
    a3: 0.0463054393238,
    a4: 0.00775835468344,
    a5: -0.0450590416728,
    a6: -0.0363355591489,
    b1: 0.206421177896,
    b2: -0.764940163584,
    b3: -0.456863790079,
    b4: -0.65992423976,
    b5: -0.237869518002,
    b6: 0.860780116962,
    c1: -8.68062348012,
    c2: -3.82177548104,
    c3: -6.75917670704,
    c4: -3.07428379402,
    c5: 4.18343452524,
    c6: 5.24312955934,
    d1: -6.52945728146,
    d2: -11.3203867576,
    d3: -10.815689844,
  },
  constants: { rho: 2, T0: 350 },
  range: { temperature: [298, 424] },
  source: 'thisproject',
});
