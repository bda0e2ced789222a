// Textbook columns: stages at total reflux, the least reflux, and the staircase at a reflux between.

import {
  createEthanolWater,
  foundIn,
  minimumReflux,
  moleFractionFromStrength,
  stagesAtTotalReflux,
  staircase,
} from 'kettle-and-plate';

const slice = createEthanolWater().curve().at(101325);
const kettle = moleFractionFromStrength(0.12);
const head = moleFractionFromStrength(0.9);
console.log(
  `Fenske by the curve: ${foundIn(stagesAtTotalReflux(slice, kettle, head)).stages.toFixed(2)} stages at total reflux`,
);
const { reflux } = foundIn(minimumReflux(slice, kettle, head));
console.log(`least reflux: ${reflux.toFixed(2)}`);
for (const plates of [4, 8, 16]) {
  const { headMoleFraction } = staircase({
    slice,
    kettleMoleFraction: kettle,
    plates,
    efficiency: 1,
    reflux: 1.5 * reflux,
  });
  console.log(`${String(plates)} ideal plates at 1.5 times that: x = ${headMoleFraction.toFixed(3)}`);
}
