// Written by reference/parameters/build-data.mjs from reference/parameters/perry-liquid-heat-capacity-water.json; edit that file, not this one.
import { parameterSet } from './parameter-set.js';

/** Heat capacity of liquid water; SI units. Source: perry2008 in reference/bibliography.bib, Table 2-153. */
export const PERRY_LIQUID_HEAT_CAPACITY_WATER = parameterSet({
  key: 'perry-liquid-heat-capacity-water',
  title: 'Heat capacity of liquid water',
  equation: 'liquidHeatCapacityWater',
  substances: ['water'],
  coefficients: { C1: 276.37, C2: -2.0901, C3: 0.008125, C4: -0.000014116, C5: 9.370100000000001e-9 },
  constants: {},
  range: { temperature: [273.16, 533.15] },
  source: 'perry2008',
});
