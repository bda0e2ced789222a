// Written by reference/parameters/build-data.mjs from reference/parameters/vdi-vaporisation-water.json; edit that file, not this one.
import { parameterSet } from './parameter-set.js';

/** Heat of vaporisation of water; SI units. Source: vdi2010 in reference/bibliography.bib, section D3, table of heats of vaporisation. */
export const VDI_VAPORISATION_WATER = parameterSet({
  key: 'vdi-vaporisation-water',
  title: 'Heat of vaporisation of water',
  equation: 'heatOfVaporisationWater',
  substances: ['water'],
  coefficients: { A: 6.85307, B: 7.43804, C: -2.937595, D: -3.282093, E: 8.397378 },
  constants: { criticalTemperature: 647.1 },
  range: { temperature: [273.16, 647.1] },
  source: 'vdi2010',
});
