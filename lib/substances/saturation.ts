// Vapour pressure of a pure substance from its triple point to its critical point, by an equation of Wagner's form
//   ln(p/pc) = (Tc/T) Σ a[i] θ^(n[i]),  θ = 1 − T/Tc,  with exponents n that are multiples of 1/2,
// its slope, and its inverse, the boiling temperature.
// Source of the form: W. Wagner, Cryogenics 13 (1973) 470-482.

import { checkRange } from '../errors.js';
import type { ValueAndSlope } from '../numerics/root.js';
import type { Kelvin, Pascal } from '../units/quantities.js';

/** Coefficients of one published saturation equation, as published. */
export interface SaturationEquation {
  readonly criticalTemperature_K: Kelvin;
  readonly criticalPressure_Pa: Pascal;
  /** Lowest temperature at which it may be used. */
  readonly lowest_K: Kelvin;
  /** [coefficient a, twice the exponent n]. */
  readonly terms: readonly (readonly [number, number])[];
}

/** A substance's saturation line. */
export interface Saturation {
  readonly equation: SaturationEquation;
  /** Fills `out` with ln(p/Pa) and d ln p/dT [1/K]; no range check (for inner loops). */
  logPressure(temperature_K: Kelvin, out: ValueAndSlope): void;
  /** p(T), Pa. */
  pressure(temperature_K: Kelvin): Pascal;
  /** dp/dT, Pa/K. */
  slope(temperature_K: Kelvin): number;
  /** T(p), K. */
  boilingTemperature(pressure_Pa: Pascal): Kelvin;
}

/** The saturation line that belongs to an equation. */
export function saturationLine(equation: SaturationEquation): Saturation {
  const { criticalTemperature_K: critical, criticalPressure_Pa, lowest_K, terms } = equation;
  const logCritical = Math.log(criticalPressure_Pa);
  const coefficients = Float64Array.from(terms, (term) => term[0]);
  const powers = Int32Array.from(terms, (term) => term[1]);
  const work: ValueAndSlope = { value: 0, slope: 0 };

  // With θ = r²: S = Σ a r^(2n) and θ dS/dθ = Σ n a r^(2n).
  function logPressure(temperature_K: Kelvin, out: ValueAndSlope): void {
    const theta = 1 - temperature_K / critical;
    const root = Math.sqrt(theta);
    let power = 1;
    let done = 0;
    let sum = 0;
    let weighted = 0;
    for (let i = 0; i < powers.length; i++) {
      for (const target = powers[i]!; done < target; done++) power *= root;
      const term = coefficients[i]! * power;
      sum += term;
      weighted += 0.5 * powers[i]! * term;
    }
    const ratio = critical / temperature_K;
    out.value = logCritical + ratio * sum;
    const sumSlope = theta > 0 ? weighted / theta : coefficients[0]!;
    out.slope = -(ratio * sum + sumSlope) / temperature_K;
  }

  function checked(temperature_K: Kelvin): ValueAndSlope {
    checkRange('temperature_K', temperature_K, lowest_K, critical, `a temperature from ${lowest_K} to ${critical} K`);
    logPressure(temperature_K, work);
    return work;
  }

  const pressure = (temperature_K: Kelvin): Pascal => Math.exp(checked(temperature_K).value);
  return {
    equation,
    logPressure,
    pressure,
    slope(temperature_K) {
      const { value, slope } = checked(temperature_K);
      return Math.exp(value) * slope;
    },
    boilingTemperature(pressure_Pa) {
      const least = pressure(lowest_K);
      checkRange(
        'pressure_Pa',
        pressure_Pa,
        least,
        criticalPressure_Pa,
        `a pressure from ${least.toPrecision(6)} to ${criticalPressure_Pa} Pa`,
      );
      const target = Math.log(pressure_Pa);
      // ln p is nearly straight in 1/T, so Newton in 1/T from the chord between the ends converges in a few steps.
      const atLowest = Math.log(least);
      const share = (target - atLowest) / (logCritical - atLowest);
      let inverse = 1 / lowest_K + share * (1 / critical - 1 / lowest_K);
      for (let i = 0; i < 50; i++) {
        const temperature = 1 / inverse;
        logPressure(temperature, work);
        const step = (work.value - target) / (-work.slope * temperature * temperature);
        inverse = Math.min(1 / lowest_K, Math.max(1 / critical, inverse - step));
        if (Math.abs(step) <= 4 * Number.EPSILON * inverse) break;
      }
      return 1 / inverse;
    },
  };
}
