// The ruler's marks, as numbers: ticks on round values, never closer than 6 px, some of them named.

/** One tick; `named` ones are longer and carry their number. */
export interface RulerTick {
  readonly value: number;
  readonly length: 'short' | 'middle' | 'named';
}

const closestTicks_px = 6;
const closestNames_px = 48;

/** Ticks from `low` to `high` on a ruler `width_px` long, not finer than `step`. */
export function rulerTicks(low: number, high: number, step: number, width_px: number): readonly RulerTick[] {
  const perPixel = (high - low) / Math.max(width_px, 1);
  const short = Math.max(roundStep(closestTicks_px * perPixel), roundStep(step));
  const named = roundStep(Math.max(closestNames_px * perPixel, short));
  const middle = named / short === 10 ? named / 2 : named;
  const ticks: RulerTick[] = [];
  const slack = short * 1e-6;
  for (let k = Math.ceil((low - slack) / short); k * short <= high + slack; k += 1) {
    const value = Number((k * short).toPrecision(12));
    const length = isMultiple(value, named) ? 'named' : isMultiple(value, middle) ? 'middle' : 'short';
    ticks.push({ value, length });
  }
  return ticks;
}

/** 1, 2 or 5 times a power of ten, not below `least`. */
function roundStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least) + 1e-9);
  const factor = [1, 2, 5, 10].find((candidate) => candidate * power >= least * (1 - 1e-9)) ?? 10;
  return Number((factor * power).toPrecision(12));
}

function isMultiple(value: number, of: number): boolean {
  const times = value / of;
  return Math.abs(times - Math.round(times)) < 1e-6;
}
