// The path of a curve through points in px: straight, or smooth without ever passing beyond its points. A point whose y
// is NaN makes a gap.

/** Through all points, by straight lines or by monotone cubics. */
export function pathThrough(points: readonly (readonly [number, number])[], smooth: boolean): string {
  let path = '';
  let from = 0;
  for (let i = 0; i <= points.length; i += 1) {
    if (i < points.length && !Number.isNaN(points[i]![1])) continue;
    if (i > from) path += smooth ? monotone(points.slice(from, i)) : straight(points.slice(from, i));
    from = i + 1;
  }
  return path;
}

type Points = readonly (readonly [number, number])[];

const px = (value: number): number => Math.round(100 * value) / 100;
const at = ([x, y]: readonly [number, number]): string => `${px(x)},${px(y)}`;

function straight(points: Points): string {
  return points.length === 1 ? `M${at(points[0]!)}Z` : `M${points.map(at).join('L')}`;
}

/** Slopes after M. Steffen, A simple method for monotonic interpolation in one dimension, Astron. Astrophys. 239 (1990) 443. */
function monotone(all: Points): string {
  const points = all.filter(([x, y], i) => i === 0 || x !== all[i - 1]![0] || y !== all[i - 1]![1]);
  if (points.length < 3) return straight(points);
  const last = points.length - 1;
  const width = (i: number): number => points[i + 1]![0] - points[i]![0];
  const chord = (i: number): number => (points[i + 1]![1] - points[i]![1]) / (width(i) || Number.MIN_VALUE);
  const inner = (i: number): number => {
    const [before, after] = [chord(i - 1), chord(i)];
    const mean = (before * width(i) + after * width(i - 1)) / (width(i - 1) + width(i));
    const slope =
      (Math.sign(before) + Math.sign(after)) * Math.min(Math.abs(before), Math.abs(after), Math.abs(mean) / 2);
    return Number.isFinite(slope) ? slope : 0;
  };
  const end = (i: number, slope: number): number => (width(i) === 0 ? slope : (3 * chord(i) - slope) / 2);
  const slopes = points.map((_point, i) => (i === 0 || i === last ? 0 : inner(i)));
  slopes[0] = end(0, slopes[1]!);
  slopes[last] = end(last - 1, slopes[last - 1]!);
  let path = `M${at(points[0]!)}`;
  for (let i = 0; i < last; i += 1) {
    const [[x0, y0], [x1, y1]] = [points[i]!, points[i + 1]!];
    const third = (x1 - x0) / 3;
    path += `C${at([x0 + third, y0 + third * slopes[i]!])},${at([x1 - third, y1 - third * slopes[i + 1]!])},${at([x1, y1])}`;
  }
  return path;
}
