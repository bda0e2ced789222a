// What boils at what, how much heat it takes, and what the altitude does to it: the library's equilibrium, by its
// default model, under names for formulas.

import {
  activityModel,
  altitudeAtPressure,
  azeotrope,
  bubblePoint,
  createEthanolWater,
  DEFAULT_ACTIVITY,
  heatToBoil,
  latentHeatOnSlice,
  minimumReflux,
  moleFractionFromStrength,
  pressureAtAltitude,
  relativeVolatility,
  stagesAtTotalReflux,
  strengthFromMoleFraction,
  type CurveSlice,
} from '#lib/index.js';
import { takes, type OwnFunction } from './own-function.js';

const model = activityModel(DEFAULT_ACTIVITY);
const system = createEthanolWater();
const sliceAt = (pressure_Pa: number): CurveSlice => system.curve(DEFAULT_ACTIVITY).at(pressure_Pa);
const noAzeotrope = { none: 'There is no azeotrope at that pressure' };

export const boilingFunctions: readonly OwnFunction[] = [
  {
    name: 'boilingPoint',
    takes: [takes.strength(), takes.pressure()],
    gives: 'temperature',
    says: 'temperature at which a liquid boils',
    example: { formula: 'boilingPoint(10%, 1 atm)', gives: '92.23 °C' },
    call: (strength, pressure_Pa) => bubblePoint(moleFractionFromStrength(strength), pressure_Pa, model).temperature_K,
  },
  {
    name: 'vapourStrength',
    takes: [takes.strength(), takes.pressure()],
    gives: 'strength',
    says: 'strength of the vapour over a boiling liquid, once condensed',
    example: { formula: 'vapourStrength(10%, 1 atm)', gives: '56.01 % vol' },
    call: (strength, pressure_Pa) =>
      strengthFromMoleFraction(bubblePoint(moleFractionFromStrength(strength), pressure_Pa, model).vapourMoleFraction),
  },
  {
    name: 'relativeVolatility',
    takes: [takes.strength(), takes.pressure()],
    gives: 'number',
    says: 'how much more readily ethanol leaves a boiling liquid than water',
    example: { formula: 'relativeVolatility(40%, 1 atm)', gives: '5.307' },
    call: (strength, pressure_Pa) => relativeVolatility(moleFractionFromStrength(strength), pressure_Pa, model),
  },
  {
    name: 'azeotropeStrength',
    takes: [takes.pressure()],
    gives: 'strength',
    says: 'strength at which vapour is no stronger than its liquid',
    example: { formula: 'azeotropeStrength(1 atm)', gives: '97.2 % vol' },
    call: (pressure_Pa) => {
      const found = azeotrope(pressure_Pa, model);
      return found.found ? strengthFromMoleFraction(found.moleFraction) : noAzeotrope;
    },
  },
  {
    name: 'azeotropePoint',
    takes: [takes.pressure()],
    gives: 'temperature',
    says: 'temperature at which the azeotrope boils',
    example: { formula: 'azeotropePoint(1 atm)', gives: '78.13 °C' },
    call: (pressure_Pa) => {
      const found = azeotrope(pressure_Pa, model);
      return found.found ? found.temperature_K : noAzeotrope;
    },
  },
  {
    name: 'stagesBetween',
    takes: [takes.someStrength('kettle'), takes.someStrength('head'), takes.stillPressure()],
    gives: 'number',
    says: 'ideal stages from kettle to head at total reflux, the kettle counted',
    example: { formula: 'stagesBetween(9.5%, 94%, 1 atm)', gives: '5.84' },
    call: (kettle, head, pressure_Pa) => {
      if (head < kettle) return { none: 'The head is to be at least as strong as the kettle' };
      const [from, to] = [moleFractionFromStrength(kettle), moleFractionFromStrength(head)];
      const found = stagesAtTotalReflux(sliceAt(pressure_Pa), from, to);
      return found.found ? found.stages : { none: 'No number of stages reaches that strength' };
    },
  },
  {
    name: 'leastReflux',
    takes: [takes.someStrength('kettle'), takes.someStrength('head'), takes.stillPressure()],
    gives: 'number',
    says: 'least reflux ratio that holds a head strength over a kettle, with any number of plates',
    example: { formula: 'leastReflux(9.5%, 94%, 1 atm)', gives: '2.39' },
    call: (kettle, head, pressure_Pa) => {
      const [from, to] = [moleFractionFromStrength(kettle), moleFractionFromStrength(head)];
      const found = minimumReflux(sliceAt(pressure_Pa), from, to);
      if (found.found) return found.reflux;
      return {
        none:
          found.reason === 'beyondAzeotrope' ? 'No reflux holds that strength' : 'No reflux strengthens that kettle',
      };
    },
  },
  {
    name: 'heatToBoil',
    takes: [takes.volume(), takes.someStrength(), takes.temperature(0, 110), takes.pressure()],
    gives: 'energy',
    says: 'heat that brings a charge from a temperature to the boil, the kettle itself left out',
    example: { formula: 'heatToBoil(120 L, 9.5%, 20 °C, 1 atm)', gives: '10.24 kWh' },
    call: (volume_m3, strength, from_K, pressure_Pa) => {
      if (volume_m3 <= 0) return 0;
      const boils_K = bubblePoint(moleFractionFromStrength(strength), pressure_Pa, model).temperature_K;
      if (from_K > boils_K) return { none: 'It is hotter than it boils' };
      return heatToBoil({ kind: 'volume', volume_m3: volume_m3, strength: strength }, from_K, pressure_Pa, model);
    },
  },
  {
    name: 'latentHeat',
    takes: [takes.strength(), takes.stillPressure()],
    gives: 'molarHeat',
    says: 'heat that makes a mole of vapour from a boiling liquid',
    example: { formula: 'latentHeat(10%, 1 atm)', gives: '40.17 kJ/mol' },
    call: (strength, pressure_Pa) => latentHeatOnSlice(sliceAt(pressure_Pa), moleFractionFromStrength(strength)),
  },
  {
    name: 'pressureAt',
    takes: [takes.length('altitude', -600, 11_000, '−600 m to 11 000 m')],
    gives: 'pressure',
    says: 'air pressure at an altitude, in the standard atmosphere',
    example: { formula: 'pressureAt(1609 m)', gives: '83.435 kPa' },
    call: pressureAtAltitude,
  },
  {
    name: 'altitudeAt',
    takes: [takes.airPressure()],
    gives: 'length',
    says: 'altitude at an air pressure, in the standard atmosphere',
    example: { formula: 'altitudeAt(83.4 kPa)', gives: '1612 m' },
    call: altitudeAtPressure,
  },
];
