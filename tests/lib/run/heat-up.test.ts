// Heat to the first vapour, by hand calculation.

import { describe, expect, it } from 'vitest';
import { activityModel, heatToBoil, InputError } from '#lib/index.js';

const charge = { kind: 'volume', volume_m3: 0.1, strength: 0.1 } as const;
const raoult = activityModel('raoult');

describe('heatToBoil', () => {
  it('is close to mass times the heat capacity of water times the rise for a weak wash', () => {
    // 100 L at 10 % vol weigh 98.5 kg (OIML R 22: 984.7 kg/m³) and boil near 92.5 °C. cp of water 4.19, of ethanol some
    // 2.9 kJ/(kg K) over that range (CRC Handbook 2.44 at 25 °C, rising to 3.0 at 78 °C); by mass 8 % ethanol.
    const byHand_J = 98.5 * (0.92 * 4190 + 0.08 * 2800) * 72.5;
    const handErrors = 0.05; // rounded heat capacities, and Raoult's boiling point 4 K higher
    const real = activityModel('nrtl');
    expect(Math.abs(heatToBoil(charge, 293.15, 101325, real) / byHand_J - 1)).toBeLessThan(handErrors);
  });

  it('is water by the steam tables: 100 kg from 20 to 99.97 °C take 33.5 MJ', () => {
    // IAPWS-95 through common steam tables: h(99.97 °C) − h(20 °C) = 418.99 − 83.9 = 335.1 kJ/kg.
    const almostWater = { kind: 'amount', amount_mol: 100 / 0.018015268, moleFraction: 1e-9 } as const;
    const tableRounding = 0.005;
    expect(Math.abs(heatToBoil(almostWater, 293.15, 101325, raoult) / 33.51e6 - 1)).toBeLessThan(tableRounding);
  });

  it('refuses a charge that is hotter than it boils', () => {
    expect(() => heatToBoil(charge, 380, 101325, raoult)).toThrow(InputError);
    expect(() => heatToBoil(charge, 380, 101325, raoult)).toThrow('from_K is 380; expected a temperature from');
  });
});
