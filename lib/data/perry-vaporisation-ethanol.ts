// Written by reference/parameters/build-data.mjs from reference/parameters/perry-vaporisation-ethanol.json; edit that file, not this one.
import { parameterSet } from './parameter-set.js';

/** Heat of vaporisation of ethanol; SI units. Source: perry2008 in reference/bibliography.bib, Table 2-150. */
export const PERRY_VAPORISATION_ETHANOL = parameterSet({
  key: 'perry-vaporisation-ethanol',
  title: 'Heat of vaporisation of ethanol',
  equation: 'heatOfVaporisationEthanol',
  substances: ['ethanol'],
  coefficients: { C1: 55789, C2: 0.31245 },
  constants: { criticalTemperature: 514 },
  range: { temperature: [159.05, 514] },
  source: 'perry2008',
});
