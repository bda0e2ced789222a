// A table of strengths: % vol, US proof, % mass and mole fraction, and litres of pure alcohol in 10 L.

import {
  massFractionFromStrength,
  moleFractionFromStrength,
  proofFromStrength,
  pureAlcoholVolume,
} from 'kettle-and-plate';

console.log('% vol   proof  % mass  mole fr.  L pure in 10 L');
for (let percent = 10; percent <= 90; percent += 10) {
  const strength = percent / 100;
  const row = [
    percent.toFixed(0).padStart(5),
    proofFromStrength(strength).toFixed(1).padStart(7),
    (100 * massFractionFromStrength(strength)).toFixed(2).padStart(7),
    moleFractionFromStrength(strength).toFixed(4).padStart(9),
    (1000 * pureAlcoholVolume(0.01, strength)).toFixed(2).padStart(9),
  ];
  console.log(row.join(' '));
}
