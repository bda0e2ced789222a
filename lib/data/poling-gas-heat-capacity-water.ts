// Written by reference/parameters/build-data.mjs from reference/parameters/poling-gas-heat-capacity-water.json; edit that file, not this one.
import { parameterSet } from './parameter-set.js';

/** Heat capacity of water as an ideal gas; SI units. Source: poling2001 in reference/bibliography.bib, Appendix A, section C. */
export const POLING_GAS_HEAT_CAPACITY_WATER = parameterSet({
  key: 'poling-gas-heat-capacity-water',
  title: 'Heat capacity of water as an ideal gas',
  equation: 'gasHeatCapacityWater',
  substances: ['water'],
  coefficients: { a1: 4.395, a2: -0.004186, a3: 0.00001405, a4: -1.564e-8, a5: 6.32e-12 },
  constants: {},
  range: { temperature: [50, 1000] },
  source: 'poling2001',
});
