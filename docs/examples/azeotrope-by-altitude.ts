// Where the azeotrope stands at an altitude, how hot it boils there, and how sure that is.

import { azeotrope, azeotropeUncertainty, pressureAtAltitude, strengthFromMoleFraction } from 'kettle-and-plate';

for (const altitude_m of [0, 500, 1000, 2000, 3000, 4000]) {
  const pressure_Pa = pressureAtAltitude(altitude_m);
  const found = azeotrope(pressure_Pa);
  const error = azeotropeUncertainty(pressure_Pa);
  if (!found.found || !error.found) {
    console.log(`${String(altitude_m)} m: no azeotrope`);
    continue;
  }
  const strength = 100 * strengthFromMoleFraction(found.moleFraction);
  const celsius = found.temperature_K - 273.15;
  console.log(
    `${String(altitude_m).padStart(4)} m  ${(pressure_Pa / 1000).toFixed(1)} kPa  x = ${found.moleFraction.toFixed(4)} ± ${error.moleFraction.toFixed(4)}  ${strength.toFixed(2)} % vol  ${celsius.toFixed(2)} °C`,
  );
}
