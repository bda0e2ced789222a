// Written by reference/parameters/build-data.mjs from reference/parameters/nrtl-ethanol-water.json; edit that file, not this one.
import { parameterSet } from './parameter-set.js';

/** NRTL parameters of ethanol (1) + water (2), linear in 1/T; SI units. Source: nrtlcirculated in reference/bibliography.bib, no page known. */
export const NRTL_ETHANOL_WATER = parameterSet({
  key: 'nrtl-ethanol-water',
  title: 'NRTL parameters of ethanol (1) + water (2), linear in 1/T',
  equation: 'nrtl',
  substances: ['ethanol', 'water'],
  coefficients: { a12: -0.8009, b12: 246.18, a21: 3.4578, b21: -586.0809, alpha: 0.3 },
  constants: {},
  range: { temperature: [298, 374] },
  source: 'nrtlcirculated',
});
