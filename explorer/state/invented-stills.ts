// The stills of the pages that do not ask for one: upright vessels of bare metal as high as wide, and a section of plates
// as wide as its vapour needs. Invented, and said to be so where they are used.

import { toSI, waterForDuty, type Doubler, type DoublerCharge, type HoldUp, type Still } from '#lib/index.js';

/** What nobody set. */
export const inventedParts = {
  /** Room in the kettle, as a multiple of its charge; in a doubler, of its own. */
  kettleRoom: 1.35,
  doublerRoom: 2,
  /** Loss of a bare wall and heat capacity of its metal, a square metre. */
  wallLoss_W_m2K: 8,
  wallMetal_J_m2K: 7000,
  air_K: toSI(20, '°C'),
  /** Superficial speed of the vapour at full heat that a section is made for, m/s. */
  vapourSpeed_m_s: 0.5,
  plateSpacing_m: 0.15,
  /** Clear liquid on a plate, m. */
  plateLiquid_m: 0.012,
  plateDrop_Pa: toSI(0.25, 'kPa'),
} as const;

/** Vapour of a watt, m³/s: a mole takes 40 kJ and 0.03 m³ near the boiling point at sea level. */
const vapourOfWatt_m3_s = 7.4e-7;

/** What has to be known of a still to draw up the rest. */
export interface StillWanted {
  readonly chargeVolume: number;
  readonly heat: number;
  readonly pressure: number;
  readonly doublerCharges: readonly DoublerCharge['charge'][];
  /** 0 for none; plates come with a total condenser, a pot with none. */
  readonly plates: number;
  readonly efficiency: number;
  /** Sieve plates of this diameter and spacing, m, that work worse when driven hard; bubble caps as wide as the vapour needs where it is left out. */
  readonly sieve?: { readonly diameter: number; readonly spacing: number };
}

/** A pot, with doublers or plates. */
export function inventedStill(wanted: StillWanted): Still {
  const { chargeVolume, heat, pressure, doublerCharges, plates } = wanted;
  const { kettleRoom, doublerRoom, air_K } = inventedParts;
  const { height_m, ...kettle } = vessel(kettleRoom * chargeVolume);
  return {
    kettle: { ...kettle, heatingSurfaceHeight_m: 0.15 * height_m, power_W: heat },
    doublers: doublerCharges.map((charge): Doubler => {
      const filled_m3 = charge.kind === 'volume' ? charge.volume_m3 : 0;
      const { height_m: high_m, ...doubler } = vessel(doublerRoom * filled_m3);
      // The pipe's mouth a little above the bottom.
      return { ...doubler, dipDepth_m: (0.9 * high_m) / doublerRoom, overflow: 'back' };
    }),
    column: plates === 0 ? { kind: 'none' } : section(wanted),
    head: { heatLoss_W_K: 0, metal_J_K: 0, film_m3: 1e-4 },
    refluxCondenser:
      plates === 0 ? { kind: 'none' } : { kind: 'total', holdUp: held(3e-4 * chargeVolume), subcooling_K: 0 },
    // For a third more than the heat, with water of 15 °C that warms by 30 K.
    productCondenser: {
      holdUp: held(3e-4 * chargeVolume),
      flow_kg_s: 1.33 * waterForDuty(heat, 30),
      inlet_K: 288.15,
      transfer_W_K: (1.33 * heat) / 40,
    },
    air: { pressure_Pa: pressure, temperature_K: air_K },
  };
}

function section({ plates, efficiency, heat, chargeVolume, sieve }: StillWanted): Still['column'] {
  const { vapourSpeed_m_s, plateSpacing_m, plateLiquid_m, plateDrop_Pa } = inventedParts;
  const needed_m2 = (heat * vapourOfWatt_m3_s) / vapourSpeed_m_s;
  const diameter_m = sieve?.diameter ?? Math.sqrt((4 * needed_m2) / Math.PI);
  const area_m2 = (Math.PI * diameter_m ** 2) / 4;
  const spacing_m = sieve?.spacing ?? plateSpacing_m;
  const wall_m2 = Math.PI * diameter_m * spacing_m;
  // A very small still has smaller plates: none holds more than this share of the charge.
  const volume_m3 = Math.min(area_m2 * plateLiquid_m, chargeVolume / 300);
  return {
    kind: 'plates',
    count: plates,
    plateKind: sieve === undefined ? 'bubbleCap' : 'sieve',
    diameter_m,
    spacing_m,
    weirHeight_m: 2 * plateLiquid_m,
    openAreaShare: sieve === undefined ? 0.1 : 0.06,
    holeDiameter_m: sieve === undefined ? 0.006 : 0.003,
    holdUp: { kind: 'volume', volume_m3 },
    efficiency,
    efficiencyFalls: sieve !== undefined,
    heatLoss_W_K: inventedParts.wallLoss_W_m2K * wall_m2,
    metal_J_K: inventedParts.wallMetal_J_m2K * (wall_m2 + 2 * area_m2),
    drop_Pa: plateDrop_Pa,
  };
}

function held(volume_m3: number): HoldUp {
  return { kind: 'volume', volume_m3 };
}

interface Vessel {
  readonly volume_m3: number;
  readonly diameter_m: number;
  readonly height_m: number;
  readonly heatLoss_W_K: number;
  readonly metal_J_K: number;
}

function vessel(volume_m3: number): Vessel {
  const diameter_m = Math.cbrt((4 * volume_m3) / Math.PI);
  const wall_m2 = 1.5 * Math.PI * diameter_m ** 2;
  return {
    volume_m3,
    diameter_m,
    height_m: diameter_m,
    heatLoss_W_K: inventedParts.wallLoss_W_m2K * wall_m2,
    metal_J_K: inventedParts.wallMetal_J_m2K * wall_m2,
  };
}
