// Written by reference/parameters/build-data.mjs from reference/parameters/poling-gas-heat-capacity-ethanol.json; edit that file, not this one.
import { parameterSet } from './parameter-set.js';

/** Heat capacity of ethanol as an ideal gas; SI units. Source: poling2001 in reference/bibliography.bib, Appendix A, section C. */
export const POLING_GAS_HEAT_CAPACITY_ETHANOL = parameterSet({
  key: 'poling-gas-heat-capacity-ethanol',
  title: 'Heat capacity of ethanol as an ideal gas',
  equation: 'gasHeatCapacityEthanol',
  substances: ['ethanol'],
  coefficients: { a1: 4.396, a2: 0.000628, a3: 0.00005546, a4: -7.024e-8, a5: 2.685e-11 },
  constants: {},
  range: { temperature: [50, 1000] },
  source: 'poling2001',
});
