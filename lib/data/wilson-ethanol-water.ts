// Written by reference/parameters/build-data.mjs from reference/parameters/wilson-ethanol-water.json; edit that file, not this one.
import { parameterSet } from './parameter-set.js';

/** Wilson parameters of ethanol (1) + water (2), independent of temperature; SI units. Source: gmehling1977 in reference/bibliography.bib, Perry's Chemical Engineers' Handbook, 7th ed. 1997, Table 13-4, lists the same values (from memory). */
export const WILSON_ETHANOL_WATER = parameterSet({
  key: 'wilson-ethanol-water',
  title: 'Wilson parameters of ethanol (1) + water (2), independent of temperature',
  equation: 'wilson',
  substances: ['ethanol', 'water'],
  coefficients: { A12: 1360.1167288, A21: 3988.5201727999997, V1: 0.00005868, V2: 0.00001807 },
  constants: { R: 8.3144448 },
  range: { temperature: [351, 374] },
  source: 'gmehling1977',
});
