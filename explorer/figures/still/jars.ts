// The jars of the picture of the still: one under the spout, those filled before it in a row to its right, to scale.

import type { JarMoment } from '../../rows/still-moment.js';
import type { StillMoment } from '../../rows/still-moment.js';
import { jarSize, signs } from './layout.js';
import type { StillLayout } from './layout.js';
import { line, path, px, streamMark } from './marks.js';
import type { StillMark } from './marks.js';

export interface PlacedJar {
  readonly jar: JarMoment;
  readonly centre: number;
  readonly width: number;
  readonly height: number;
}

/** Room that a jar with its strength under it takes at the least. */
const least = { wide: 38, narrow: 34 };

/** The jars there is room for, the one under the spout first; of those filled the latest, in their order. */
export function placedJars({ jars }: StillMoment, layout: StillLayout): { shown: PlacedJar[]; leftOut: number } {
  const { size, scale, spout } = layout;
  const under = jars.find((jar) => jar.state === 'underSpout');
  const filled = jars.filter((jar) => jar.state === 'filled');
  const shown: PlacedJar[] = [];
  if (under !== undefined) shown.push({ jar: under, centre: spout[0], ...jarSize(under.size_m3, scale) });
  const largest = jarSize(Math.max(0, ...jars.map((jar) => jar.size_m3)), scale).width;
  const pitch = Math.max(largest + signs.jarGap, least[size.layout]);
  const first = spout[0] + largest / 2 + signs.jarGap;
  const room = Math.max(0, Math.floor((size.width - first) / pitch + 1e-6));
  const leftOut = Math.max(0, filled.length - room);
  filled.slice(leftOut).forEach((jar, i) => {
    shown.push({ jar, centre: first + (i + 0.5) * pitch, ...jarSize(jar.size_m3, scale) });
  });
  return { shown, leftOut };
}

export function jarMarks(moment: StillMoment, layout: StillLayout): StillMark[] {
  const { floor, spout } = layout;
  const { shown } = placedJars(moment, layout);
  const marks = shown.flatMap((placed): StillMark[] => {
    const { jar, centre, width, height } = placed;
    const surface = levelOf(placed, floor);
    const left = centre - width / 2;
    const key = `jar ${String(jar.number)}`;
    const top = floor - height;
    return [
      path(`${key} liquid`, 'liquid', `M${px(left)} ${px(surface)}h${px(width)}V${px(floor)}h${px(-width)}z`),
      path(`${key} surface`, 'surface', jar.strength === null ? '' : line([left, surface], [left + width, surface])),
      path(key, 'wall', line([left, top], [left, floor], [left + width, floor], [left + width, top])),
    ];
  });
  const under = shown.find(({ jar }) => jar.state === 'underSpout');
  const fall = line([...spout], [spout[0], under === undefined ? floor : levelOf(under, floor)]);
  return [...streamMark('falling', 'stream', fall, moment.distillate), ...marks];
}

function levelOf({ jar, height }: PlacedJar, floor: number): number {
  // To its mark, the jar is filled to nine tenths of its height.
  return floor - height * 0.9 * Math.min(1.05, jar.filled_m3 / Math.max(1e-12, jar.size_m3));
}
