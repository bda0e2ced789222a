// What comes of spirits that are poured together. Masses add up; the volume is less than the sum of the volumes, and the
// mixture warms, because ethanol and water give off heat when they mix:
//
//   m1 = Σ m1_i,  m2 = Σ m2_i,  V = (m1 + m2)/ρ(p, 20 °C)
//   Σ n_i h(x_i, T_i) = n h(x, T)  solved for T: nothing lost to the air or the vessel

import { ZERO_CELSIUS } from '../constants.js';
import { InputError } from '../errors.js';
import { liquidEnthalpy, liquidHeatCapacity } from '../mixture/enthalpy.js';
import { bracketedRoot } from '../numerics/root.js';
import type { CubicMetre, Kelvin, Kilogram } from '../units/quantities.js';
import { amountsOfMasses, massesAt, type Masses, type Spirit, spiritOfMasses } from './spirit.js';

/** A mixture of spirits. */
export interface Mixed {
  /** All of it; with a temperature where every part had one, with companions where any part had some. */
  readonly spirit: Spirit;
  readonly mass_kg: Kilogram;
  /** By how much its volume at 20 °C is less than the sum of the volumes of its parts; below 0 where it is more. */
  readonly lost_m3: CubicMetre;
  /** How much warmer it is than its parts would be without the heat of mixing; undefined where a temperature is missing, K. */
  readonly warmed_K: number | undefined;
}

/**
 * What comes of any number of spirits poured together: volume, strength, temperature.
 *
 * Equation: m1 = Σ m1_i, m2 = Σ m2_i, V = (m1 + m2)/ρ(p, 20 °C); Σ n_i h(x_i, T_i) = n h(x, T) for T.
 * @param spirits The parts: `volume_m3`, [m³ at 20 °C], 0 or more; `strength`, 0..1, 0 for water; `temperature_K`, [K], 273.15..333.15, may be left out; `companions_kg`, [kg], may be left out. At least one part that is not empty.
 * @returns The mixture as one spirit, its mass [kg], the volume lost [m³], and how much mixing warmed it [K].
 * @throws InputError when there is no part, all are empty, or a field is outside its range.
 * @example mix([{ volume_m3: 0.05, strength: 1 }, { volume_m3: 0.05, strength: 0 }]).lost_m3 // → 0.003537
 * Source: conservation of mass and energy; OIML R 22, 1975; heat of mixing by the default activity model.
 */
export function mix(spirits: readonly Spirit[]): Mixed {
  const given: unknown = spirits;
  if (!Array.isArray(given) || given.length === 0) {
    throw new InputError({ argument: 'spirits', value: given, expected: 'a list of one spirit or more' });
  }
  const parts = spirits.map((spirit, i) => massesAt(spirit, `spirits[${String(i)}]`));
  const whole: Masses = {
    ethanol_kg: sum(parts.map(({ ethanol_kg }) => ethanol_kg)),
    water_kg: sum(parts.map(({ water_kg }) => water_kg)),
  };
  const mass_kg = whole.ethanol_kg + whole.water_kg;
  if (mass_kg === 0) {
    throw new InputError({ argument: 'spirits', value: spirits, expected: 'at least one that is not empty' });
  }
  const mixture = spiritOfMasses(whole);
  const warmth = temperatures(spirits, parts, whole);
  const companions_kg = companionsOf(spirits);
  return {
    spirit: {
      ...mixture,
      ...(warmth === undefined ? {} : { temperature_K: warmth.mixed_K }),
      ...(companions_kg === undefined ? {} : { companions_kg }),
    },
    mass_kg,
    lost_m3: sum(spirits.map(({ volume_m3 }) => volume_m3)) - mixture.volume_m3,
    warmed_K: warmth && warmth.mixed_K - warmth.apart_K,
  };
}

/** The temperature of the mixture, and what it would be if mixing gave off no heat; undefined where a part has none. */
function temperatures(
  spirits: readonly Spirit[],
  parts: readonly Masses[],
  whole: Masses,
): { mixed_K: Kelvin; apart_K: Kelvin } | undefined {
  const filled = spirits.flatMap(({ temperature_K }, i) => {
    const { ethanol_mol, water_mol } = amountsOfMasses(parts[i]!);
    const amount_mol = ethanol_mol + water_mol;
    return amount_mol > 0 ? [{ temperature_K, amount_mol, x: ethanol_mol / amount_mol }] : [];
  });
  if (filled.some(({ temperature_K }) => temperature_K === undefined)) return undefined;
  const had_J = sum(filled.map(({ temperature_K, amount_mol, x }) => amount_mol * enthalpy(x, temperature_K!)));
  const { ethanol_mol, water_mol } = amountsOfMasses(whole);
  const amount_mol = ethanol_mol + water_mol;
  const at = (held_J: (T: Kelvin) => number): Kelvin => bracketedRoot((T) => held_J(T) - had_J, LOW_K, HIGH_K, 1e-9);
  return {
    mixed_K: at((T) => amount_mol * enthalpy(ethanol_mol / amount_mol, T)),
    apart_K: at((T) => sum(filled.map((part) => part.amount_mol * enthalpy(part.x, T)))),
  };
}

function companionsOf(spirits: readonly Spirit[]): Readonly<Record<string, Kilogram>> | undefined {
  const all = spirits.flatMap(({ companions_kg }) => Object.entries(companions_kg ?? {}));
  if (all.length === 0) return undefined;
  const whole: Record<string, Kilogram> = {};
  for (const [name, mass_kg] of all) whole[name] = (whole[name] ?? 0) + mass_kg;
  return whole;
}

/** Smallest first, so that the order of the parts does not matter to the last bit. */
function sum(numbers: readonly number[]): number {
  return [...numbers].sort((one, other) => one - other).reduce((whole, part) => whole + part, 0);
}

/** Molar enthalpy; just below 0 °C, where the equations of liquid water end, along a straight line. */
function enthalpy(x: number, T: Kelvin): number {
  if (T >= ZERO_CELSIUS) return liquidEnthalpy(x, T);
  return liquidEnthalpy(x, ZERO_CELSIUS) + (T - ZERO_CELSIUS) * liquidHeatCapacity(x, ZERO_CELSIUS);
}

/** Between which the mixture's temperature lies: parts from 0 to 60 °C, cooled by some 1 K or warmed by some 10 K at most. */
const LOW_K = ZERO_CELSIUS - 5;
const HIGH_K = 340;
