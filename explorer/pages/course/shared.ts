// What lessons share: cautions, sources, numbers in the reader's units.

import { toSI } from '#lib/index.js';
import { modelName, roundStrength } from '../../entries/words.js';
import type { Scenario } from '../../state/scenario.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import { measureOf } from './questions.js';
import { type DrawnRun, positionIn, readAt } from '../../state/run-results.js';
import type { EquilibriumAnswer } from '../../worker/kinds/equilibrium.js';
import { fixed } from '../../text/format.js';

export const kettleCaution =
  'A kettle at the boil scalds and its vapour lights. Keep flame away, let fresh air in, never close a heated still, never open a boiling one, never leave it alone, and never let it run below its heating surface. Local codes, the maker’s instructions and licensed practice come first.';

export const spoutCaution =
  'Vapour at the spout is heavier than air and lights. Catch spirit away from flame, keep the way from the kettle to the open air free, turn the heat off at once if the cooling water fails, and see that a vent lets air in by itself as the still cools. Local codes, the maker’s instructions and licensed practice come first.';

/** Where the equilibrium comes from. */
export function modelSource({ model }: EquilibriumAnswer): string {
  return `Equilibrium by ${modelName(model.name)}: ${model.source}.`;
}

/** '90 % vol' of a strength that was chosen, in the units in use. */
export function round(strength: number, units: UnitSystem): string {
  return roundStrength(strength, units);
}

/** How much a temperature differs from another, in the unit shown: '0.4 °C'. */
export function degrees(kelvin: number, { temperature }: UnitSystem): string {
  const base = toSI(0, '°C');
  const size = Math.abs(temperature.toShown(base + kelvin) - temperature.toShown(base));
  return `${fixed(size, 1)}\u00a0${temperature.unit}`;
}

/** How much a strength differs from another, in the unit shown, without its sign. */
export function gain(from: number, to: number, { strength }: UnitSystem): string {
  const size = Math.abs(strength.toShown(to) - strength.toShown(from));
  return `${size < 1 ? fixed(size, 2) : fixed(size, 1)}\u00a0${strength.unit.replaceAll(' ', '\u00a0')}`;
}

/** What the spout reads when the first measure is in, % vol / 100: later than what the holding left behind. */
export function whenMeasureIsIn(scenario: Scenario, { solution }: { readonly solution: DrawnRun }): number {
  return readAt(solution.spoutStrength, positionIn(solution.collectedVolume_m3, measureOf(scenario)));
}
