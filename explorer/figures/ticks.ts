// Round numbers for an axis: a domain widened to them, ticks on them, and the decimals that tell them apart. Steps are
// 1, 2 or 5 times a power of ten.

/** The round step of which about `count` fit between two numbers; as 1 / inverse where it is below 1, so that it is exact. */
interface Step {
  readonly size: number;
  readonly inverse: number | null;
}

/** Between two factors the nearer one by ratio. */
const factors = [
  [Math.sqrt(50), 10],
  [Math.sqrt(10), 5],
  [Math.SQRT2, 2],
] as const;

function stepOf(low: number, high: number, count: number): Step {
  const rough = (high - low) / Math.max(1, count);
  const power = Math.floor(Math.log10(rough));
  const factor = factors.find(([least]) => rough / 10 ** power >= least)?.[1] ?? 1;
  if (power >= 0) return { size: factor * 10 ** power, inverse: null };
  const inverse = 10 ** -power / factor;
  return { size: 1 / inverse, inverse };
}

const below = (at: number, { size, inverse }: Step): number => (inverse === null ? at / size : at * inverse);
const multiple = (k: number, { size, inverse }: Step): number => (inverse === null ? k * size : k / inverse);

/** Both ends moved out to multiples of a step of which about `count` fit between them. */
export function roundDomain([low, high]: readonly [number, number], count: number): [number, number] {
  let domain: [number, number] = [low, high];
  let last = Number.NaN;
  // A wider domain may want a wider step; it seldom does so twice.
  for (let again = 0; again < 10; again += 1) {
    const step = stepOf(...domain, count);
    if (step.size === last) return domain;
    last = step.size;
    domain = [multiple(Math.floor(below(domain[0], step)), step), multiple(Math.ceil(below(domain[1], step)), step)];
  }
  return domain;
}

/** Multiples of a round step within a domain, about `count`, and the decimals they are written with. */
export function roundTicks(
  [low, high]: readonly [number, number],
  count: number,
): { readonly ticks: number[]; readonly decimals: number } {
  const step = stepOf(low, high, count);
  let [first, last] = [Math.round(below(low, step)), Math.round(below(high, step))];
  if (multiple(first, step) < low) first += 1;
  if (multiple(last, step) > high) last -= 1;
  const ticks = Array.from({ length: Math.max(0, last - first + 1) }, (_, k) => multiple(first + k, step));
  return { ticks, decimals: Math.max(0, -Math.floor(Math.log10(step.size))) };
}
