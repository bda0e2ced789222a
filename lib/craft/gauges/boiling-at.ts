// The weaker of the liquids that boil at a temperature under a pressure. From water to the azeotrope the boiling point
// falls, so on that side there is one; beyond the azeotrope it rises again by 0.15 K to pure ethanol, and a temperature
// there belongs to two liquids. A kettle and the vapour of a still stand on the weak side.

import { fieldFaults, refuse } from '../../arguments.js';
import { azeotrope } from '../../equilibrium/azeotrope.js';
import { type BubblePoint, bubblePoint } from '../../equilibrium/bubble-point.js';
import { equilibriumUncertainty } from '../../equilibrium/uncertainty.js';
import { checkRange, type Outcome } from '../../errors.js';
import { bracketedRoot } from '../../numerics/root.js';
import type { Kelvin, MoleFraction, Pascal } from '../../units/quantities.js';

/** What a thermometer showed, and what has to be known to read it. */
export interface ThermometerReading {
  /** As it was read, K. */
  readonly reading_K: Kelvin;
  /** Pressure of the air, Pa; 20 kPa to 200 kPa. */
  readonly air_Pa: Pascal;
  /** What plates or a doubler put on top of it where the thermometer stands, Pa; 0 to 50 kPa, default 0. */
  readonly over_Pa?: Pascal;
  /** By how much the thermometer reads too high, K; −20 to 20, default 0: see thermometerOffset. */
  readonly offset_K?: number;
  /** Added to the model's boiling temperature, K; −5 to 5, default 0: carries the model's own uncertainty. */
  readonly model_K?: number;
}

/** Why a temperature belongs to no mixture under a pressure. */
export type NoMixture = 'hotter-than-water' | 'colder-than-azeotrope';

/** A liquid that boils at the temperature read. */
export interface BoilingAt {
  readonly moleFraction: MoleFraction;
  readonly point: BubblePoint;
  readonly pressure_Pa: Pascal;
  /** Standard error of the model's boiling temperature there, K. */
  readonly modelError_K: number;
}

/** The weakest liquid that boils at the temperature read, or why there is none. */
export function liquidBoilingAt(reading: ThermometerReading): Outcome<BoilingAt, NoMixture> {
  refuse(fieldFaults('reading', reading, ['reading_K', 'air_Pa', 'over_Pa', 'offset_K', 'model_K']));
  const { reading_K, air_Pa, over_Pa = 0, offset_K = 0, model_K = 0 } = reading;
  checkRange('reading.air_Pa', air_Pa, 20e3, 200e3, 'a pressure from 20 to 200 kPa');
  checkRange('reading.over_Pa', over_Pa, 0, 50e3, 'a pressure from 0 to 50 kPa');
  checkRange('reading.offset_K', offset_K, -20, 20, 'an offset from -20 to 20 K');
  checkRange('reading.model_K', model_K, -5, 5, 'a difference from -5 to 5 K');
  checkRange('reading.reading_K', reading_K, 250, 450, 'a temperature from 250 to 450 K');
  const pressure_Pa = air_Pa + over_Pa;
  const temperature_K = reading_K - offset_K - model_K;
  const excess = (x: MoleFraction): number => bubblePoint(x, pressure_Pa).temperature_K - temperature_K;
  if (excess(0) < 0) return none('hotter-than-water', 'It is hotter than boiling water under this pressure.');
  const lowest = azeotrope(pressure_Pa);
  const strongest = lowest.found ? lowest.moleFraction : 1;
  if (excess(strongest) > 0) {
    return none(
      'colder-than-azeotrope',
      'It is colder than any mixture of ethanol and water boils under this pressure.',
    );
  }
  const moleFraction = bracketedRoot(excess, 0, strongest, 1e-12);
  return {
    found: true,
    moleFraction,
    point: bubblePoint(moleFraction, pressure_Pa),
    pressure_Pa,
    modelError_K: equilibriumUncertainty(moleFraction, pressure_Pa).curve.temperature_K,
  };
}

function none(reason: NoMixture, message: string): { found: false; reason: NoMixture; message: string } {
  return { found: false, reason, message };
}
