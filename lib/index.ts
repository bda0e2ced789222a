// The public door: named re-exports, nothing else.
export { InputError, type InputFault, type Outcome } from './errors.js';

// strength, substances, units
export { densityOfMixture } from './mixture/density.js';
export {
  massFractionFromMoleFraction,
  massFractionFromStrength,
  moleFractionFromMassFraction,
  moleFractionFromStrength,
  strengthFromMassFraction,
  strengthFromMoleFraction,
} from './mixture/strength.js';
export { amountsFromVolume, contraction, pureAlcoholVolume, volumeAt20C, type Amounts } from './mixture/volume.js';
export {
  heatOfVaporisationEthanol,
  heatOfVaporisationEthanolSlope,
  heatOfVaporisationWater,
  heatOfVaporisationWaterSlope,
} from './substances/vaporisation.js';
export type {
  CubicMetre,
  JoulePerMole,
  Kelvin,
  Kilogram,
  KilogramPerCubicMetre,
  MassFraction,
  Mole,
  MoleFraction,
  Pascal,
  ProofUS,
  Second,
  VolumeFraction20C,
  Watt,
} from './units/quantities.js';
