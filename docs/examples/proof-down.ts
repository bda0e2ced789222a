// Bringing 10 L at 72 % vol down to 40 % vol: water by mass and volume, what is lost by contraction, in one step and in three.

import { dilute, reduceInSteps } from 'kettle-and-plate';

const spirit = { volume_m3: 0.01, strength: 0.72 };
const { water_kg, water_m3, spirit: made, lost_m3 } = dilute({ spirit, strength: 0.4 });
console.log(`water: ${water_kg.toFixed(3)} kg, ${(1000 * water_m3).toFixed(3)} L at 20 °C`);
console.log(`made: ${(1000 * made.volume_m3).toFixed(3)} L, lost by mixing ${(1e6 * lost_m3).toFixed(0)} mL`);

for (const step of reduceInSteps({ spirit, strength: 0.4, steps: 3 })) {
  console.log(`add ${step.water_kg.toFixed(3)} kg: ${(100 * step.spirit.strength).toFixed(2)} % vol`);
}
