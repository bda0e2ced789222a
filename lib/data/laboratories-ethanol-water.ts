// Written by reference/parameters/build-data.mjs from reference/parameters/laboratories-ethanol-water.json; edit that file, not this one.
import { parameterSet } from './parameter-set.js';

/** What laboratories differ by in measurements of ethanol (1) + water (2); SI units. Source: thisproject in reference/bibliography.bib, reference/regression/laboratories.mjs. */
export const LABORATORIES_ETHANOL_WATER = parameterSet({
  key: 'laboratories-ethanol-water',
  title: 'What laboratories differ by in measurements of ethanol (1) + water (2)',
  equation: 'laboratoryErrors',
  substances: ['ethanol', 'water'],
  coefficients: {
    crossVolatility: 0.0035,
    cross_K: 0.0087,
    composition: 0.083,
    vapour: 0.034,
    vapourWeak: 0.071,
    temperature_K: 0.16,
    atOneMPa_K: 1,
    azeotrope: 0.0013,
    azeotropeAway: 0.0039,
  },
  constants: {},
  range: { temperature: [298, 424] },
  source: 'thisproject',
});
