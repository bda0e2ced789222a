// Strength in its bases, volume, mass and density: the library's alcoholometry under names for formulas.

import {
  amountsFromVolume,
  densityOfLiquid,
  densityOfMixture,
  massFractionFromStrength,
  moleFractionFromStrength,
  proofFromStrength,
  proofGallonsFromPureAlcohol,
  pureAlcoholVolume,
  strengthFromMassFraction,
  strengthFromMoleFraction,
  strengthFromProof,
  toSI,
  trueStrengthFromReading,
  volumeAt20C,
} from '#lib/index.js';
import { takes, type OwnFunction } from './own-function.js';

const twentyCelsius_K = toSI(20, '°C');

export const strengthFunctions: readonly OwnFunction[] = [
  {
    name: 'massFraction',
    takes: [takes.strength()],
    gives: 'massShare',
    says: 'mass fraction of ethanol at a strength',
    example: { formula: 'massFraction(40%)', gives: '33.3 % mass' },
    call: massFractionFromStrength,
  },
  {
    name: 'strengthFromMass',
    takes: [takes.massShare()],
    gives: 'strength',
    says: 'strength by volume at 20 °C from a mass fraction',
    example: { formula: 'strengthFromMass(40%)', gives: '47.395 % vol' },
    call: strengthFromMassFraction,
  },
  {
    name: 'moleFraction',
    takes: [takes.strength()],
    gives: 'moleShare',
    says: 'mole fraction of ethanol at a strength',
    example: { formula: 'moleFraction(40%)', gives: '0.1633' },
    call: moleFractionFromStrength,
  },
  {
    name: 'strengthFromMole',
    takes: [takes.moleShare()],
    gives: 'strength',
    says: 'strength by volume at 20 °C from a mole fraction',
    example: { formula: 'strengthFromMole(0.5)', gives: '78.615 % vol' },
    call: strengthFromMoleFraction,
  },
  {
    name: 'proof',
    takes: [takes.strength()],
    gives: 'proof',
    says: 'US proof, at 60 °F, of a strength at 20 °C',
    example: { formula: 'proof(40%)', gives: '79.86 proof' },
    call: proofFromStrength,
  },
  {
    name: 'strengthFromProof',
    takes: [takes.proof()],
    gives: 'strength',
    says: 'strength by volume at 20 °C from US proof',
    example: { formula: 'strengthFromProof(80)', gives: '40.07 % vol' },
    call: strengthFromProof,
  },
  {
    name: 'trueStrength',
    takes: [takes.strength('reading'), takes.temperature(-20, 40)],
    gives: 'strength',
    says: 'strength from a hydrometer for 20 °C read in warmer or colder liquid, soda-lime glass',
    example: { formula: 'trueStrength(42%, 28 °C)', gives: '38.82 % vol' },
    call: (strength, temperature_K) => {
      const found = trueStrengthFromReading({ scale: 'volume', strength: strength, temperature_K: temperature_K });
      return found.found ? found.strength : { none: found.message };
    },
  },
  {
    name: 'pureAlcohol',
    takes: [takes.volume(), takes.strength()],
    gives: 'volume',
    says: 'pure alcohol in a volume at 20 °C; the same as volume * strength',
    example: { formula: 'pureAlcohol(120 L, 9.5%)', gives: '11.4 L' },
    call: pureAlcoholVolume,
  },
  {
    name: 'proofGallons',
    takes: [takes.volume('pureAlcohol')],
    gives: 'number',
    says: 'US proof gallons in a volume of pure alcohol at 20 °C',
    example: { formula: 'proofGallons(1 L)', gives: '0.5258' },
    call: proofGallonsFromPureAlcohol,
  },
  {
    name: 'density',
    takes: [takes.strength(), takes.temperature(-20, 130)],
    gives: 'density',
    says: 'density of a liquid of a strength at a temperature',
    example: { formula: 'density(40%, 15 °C)', gives: '951.33 kg/m³' },
    call: (strength, temperature_K) => densityOfLiquid(massFractionFromStrength(strength), temperature_K),
  },
  {
    name: 'massOf',
    takes: [takes.volume(), takes.strength()],
    gives: 'mass',
    says: 'mass of a volume at 20 °C',
    example: { formula: 'massOf(120 L, 9.5%)', gives: '118.24 kg' },
    call: (volume_m3, strength) => volume_m3 * densityOfMixture(massFractionFromStrength(strength), twentyCelsius_K),
  },
  {
    name: 'mixedVolume',
    takes: [takes.volume('volume'), takes.strength(), takes.volume('volume2'), takes.strength('strength2')],
    gives: 'volume',
    says: 'volume at 20 °C of two liquids mixed, contraction included; water has strength 0',
    example: { formula: 'mixedVolume(10 L, 96%, 10 L, 0)', gives: '19.392 L' },
    call: (...given) => {
      const { ethanol_mol, water_mol } = mixed(given);
      return volumeAt20C(ethanol_mol, water_mol);
    },
  },
  {
    name: 'mixedStrength',
    takes: [takes.volume('volume'), takes.strength(), takes.volume('volume2'), takes.strength('strength2')],
    gives: 'strength',
    says: 'strength of two liquids mixed; water has strength 0',
    example: { formula: 'mixedStrength(10 L, 96%, 10 L, 0)', gives: '49.505 % vol' },
    call: (...given) => {
      const { ethanol_mol, water_mol } = mixed(given);
      if (ethanol_mol + water_mol === 0) return { none: 'Nothing mixed with nothing has no strength' };
      return strengthFromMoleFraction(ethanol_mol / (ethanol_mol + water_mol));
    },
  },
];

function mixed([volume, strength, volume2, strength2]: readonly number[]): { ethanol_mol: number; water_mol: number } {
  const one = amountsFromVolume(volume!, strength!);
  const other = amountsFromVolume(volume2!, strength2!);
  return { ethanol_mol: one.ethanol_mol + other.ethanol_mol, water_mol: one.water_mol + other.water_mol };
}
