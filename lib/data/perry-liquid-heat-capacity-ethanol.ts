// Written by reference/parameters/build-data.mjs from reference/parameters/perry-liquid-heat-capacity-ethanol.json; edit that file, not this one.
import { parameterSet } from './parameter-set.js';

/** Heat capacity of liquid ethanol; SI units. Source: perry2008 in reference/bibliography.bib, Table 2-153. */
export const PERRY_LIQUID_HEAT_CAPACITY_ETHANOL = parameterSet({
  key: 'perry-liquid-heat-capacity-ethanol',
  title: 'Heat capacity of liquid ethanol',
  equation: 'liquidHeatCapacityEthanol',
  substances: ['ethanol'],
  coefficients: { C1: 102.64, C2: -0.13963, C3: -0.000030341, C4: 0.0000020386 },
  constants: {},
  range: { temperature: [159.05, 390] },
  source: 'perry2008',
});
