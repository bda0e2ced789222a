// A bare pot by Rayleigh's equation, and the same pot with its energy: 20 L of a 10 % wash, down to a tenth of its alcohol.

import { solve } from 'kettle-and-plate';

const still = { kettle: { volume_m3: 0.03, power_W: 2000 } };
const charge = { kind: 'volume', volume_m3: 0.02, strength: 0.1 } as const;
const sheet = [{ reflux: 'none', until: [{ kind: 'alcoholLeftBelow', share: 0.1 }] }] as const;

for (const run of [solve({ model: 'rayleigh', still, charge, sheet }), solve({ still, charge, sheet })]) {
  const last = run.rows - 1;
  const litres = 1000 * (run.collectedVolume_m3[last] ?? 0);
  const strength = (1000 * (run.pureAlcoholCollected_m3[last] ?? 0)) / litres;
  const hours = (run.time_s[last] ?? 0) / 3600;
  console.log(
    `${run.problem.model}: ${litres.toFixed(2)} L at ${(100 * strength).toFixed(1)} % vol in ${hours.toFixed(2)} h; ${run.ending.message}`,
  );
}
