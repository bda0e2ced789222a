// Axes in shown units: round domains, a few ticks, formats; and pixels per shown unit for placing words.

import { fixed, joined, trimmed } from '../text/format.js';
import type { Axis } from './figure.js';
import type { Column, FigureUnits, ShownQuantity } from '../rows/shown.js';
import { roundDomain, roundTicks } from './ticks.js';

/** An axis from `low` to `high`, widened to round numbers of about `steps` steps, with about `ticks` ticks. */
export function roundAxis(
  words: { readonly title: string; readonly unit: string },
  extent: readonly [number, number],
  count: { readonly steps: number; readonly ticks: number },
): Axis {
  const [low, high] = extent[1] > extent[0] ? extent : [extent[0], extent[0] + 1];
  const domain = roundDomain([low, high], count.steps);
  const { ticks, decimals } = roundTicks(domain, count.ticks);
  return { ...words, domain, ticks, tickText: (shown) => fixed(shown, decimals) };
}

/** An axis with exactly this domain and ticks. */
export function fixedAxis(
  words: { readonly title: string; readonly unit: string },
  domain: readonly [number, number],
  step: number,
  decimals: number,
): Axis {
  const ticks: number[] = [];
  for (let k = Math.ceil(domain[0] / step - 1e-6); k * step <= domain[1] + step * 1e-6; k++) ticks.push(k * step);
  return { ...words, domain, ticks, tickText: (shown) => fixed(shown, decimals) };
}

/** Axis of collected volume or of time, shared by all figures of a run. */
export function alongAxis(quantity: ShownQuantity, title: string, longest: number, width: number): Axis {
  const axis = roundAxis({ title, unit: quantity.unit }, [0, quantity.toShown(longest)], {
    steps: 6,
    ticks: width < 480 ? 4 : 6,
  });
  return axis;
}

/** Part of the axis a run may end below a step without opening the next: 40 % vol are 79.9 proof. */
const slack = 2e-3;

/** Axis of strength from `lowest` (% vol / 100) up to pure alcohol. */
export function strengthAxis(units: FigureUnits, lowest: number, title: string): Axis {
  const top = Math.round(units.strength.toShown(1));
  return roundAxis(
    { title, unit: units.strength.unit },
    [Math.max(0, units.strength.toShown(lowest) + slack * top), top],
    {
      steps: 5,
      ticks: 5,
    },
  );
}

/** Px per shown unit along an axis drawn this long. */
export function pixelsPerUnit({ domain: [low, high] }: Axis, length: number): number {
  return length / (high - low);
}

/** A number that was chosen, with its unit and without decimals that say nothing: '90 % vol'. */
export function chosen(quantity: ShownQuantity, si: number): string {
  return joined(chosenDigits(quantity, si), quantity.unit);
}

/** The same without its unit: '90'. */
export function chosenDigits(quantity: ShownQuantity, si: number): string {
  return trimmed(quantity.toShown(si), 1);
}

/** Smallest and largest finite number of several columns. */
export function extentOf(columns: readonly Column[]): [number, number] {
  let low = Infinity;
  let high = -Infinity;
  for (const column of columns) {
    for (let i = 0; i < column.length; i++) {
      const value = column[i]!;
      if (value < low) low = value;
      if (value > high) high = value;
    }
  }
  return low <= high ? [low, high] : [0, 1];
}
