// Where the parts of the picture of the still stand, px. One scale for everything that has a size in the data: vessels,
// column, jars; it is the largest at which all of it fits. Pipes, heads and condensers have no size in the data and are drawn by sign.

import type { JarMoment } from '../../rows/still-moment.js';
import type { Still } from '#lib/index.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import { placed, title } from './place.js';
import type { Placed } from './place.js';

/** What of a still is drawn: all but what it is made of and loses. */
export type PicturedStill = Pick<Still, 'kettle' | 'doublers' | 'column' | 'refluxCondenser'>;

/** Width in px; 'narrow' has smaller words and fewer of them; 'steady' leaves every dash where it is. */
export interface PictureSize {
  readonly width: number;
  readonly layout: 'wide' | 'narrow';
  readonly steady: boolean;
}

/**
 * Where words stand: each beside its part; the spout's and the jars' in lines under the others; or, where vessels stand too
 * close for numbers under them, all in a list under the picture.
 */
export type WordsMode = 'beside' | 'below' | 'listed';

export interface VesselPlace {
  readonly left: number;
  readonly width: number;
  readonly centre: number;
  readonly brim: number;
  /** Where its shoulder ends in neck, column or pipe, and how wide that is. */
  readonly neck: number;
  readonly neckWidth: number;
}

export interface ColumnPlace {
  readonly left: number;
  readonly width: number;
  readonly bottom: number;
  readonly top: number;
  /** How many times as wide as to scale. */
  readonly widened: number;
}

export interface JarPlace {
  readonly left: number;
  readonly width: number;
  readonly height: number;
}

export interface StillLayout {
  readonly size: PictureSize;
  /** px/m. */
  readonly scale: number;
  readonly floor: number;
  readonly height: number;
  readonly vessels: readonly VesselPlace[];
  readonly column: ColumnPlace | null;
  /** Top of the tower's walls: of the column, or of the last vessel's neck. */
  readonly towerTop: number;
  readonly towerCentre: number;
  /** Height of the vapour pipe's middle line. */
  readonly vapourPipe: number;
  /** Middle of the total condenser beside the column's top. */
  readonly refluxX: number;
  readonly coolerX: number;
  readonly coolerTop: number;
  readonly coolerBottom: number;
  /** The spout's mouth. */
  readonly spout: readonly [x: number, y: number];
  readonly labels: {
    readonly line: number;
    readonly columnX: number;
    readonly mode: WordsMode;
  };
}

/** Px; what is drawn by sign. */
export const signs = {
  pipe: 7,
  /** Condenser beside the column: width, height, drum under it. */
  shell: { width: 30, height: 42 },
  drum: { width: 36, height: 12 },
  cooler: { width: 24, height: 104, least: 46 },
  jarShape: 1.5,
  jarGap: 8,
  above: { total: 12, partial: 32, none: 32 },
  /** A pot's helmet, and the condenser on top of a column. */
  helmet: 70,
  partial: 44,
} as const;
const tallest = { wide: 700, narrow: 580 };
const widestKettle = { wide: 190, narrow: 118 };

const modes: Readonly<Record<PictureSize['layout'], readonly WordsMode[]>> = {
  wide: ['beside', 'listed'],
  narrow: ['beside', 'below', 'listed'],
};
/** Words stand beside their parts as long as that costs no more than this of the largest scale there could be. */
const worth = 0.55;

/** Lays a still out at the largest scale at which everything fits. */
export function stillLayout(
  still: PicturedStill,
  jars: readonly JarMoment[],
  units: UnitSystem,
  size: PictureSize,
): StillLayout {
  const largestJar_m3 = Math.max(1e-6, ...jars.map((jar) => jar.size_m3));
  const wanted = { still, largestJar_m3, jarCount: jars.length, units, size };
  const scaled = modes[size.layout].map((mode) => ({
    mode,
    scale: largestScale((scale) => fits(placed(wanted, mode, scale), size), still, size),
  }));
  const most = Math.max(...scaled.map(({ scale }) => scale));
  const { mode, scale } = scaled.find((one) => one.scale >= worth * most)!;
  const { above, below, ...rest } = placed(wanted, mode, scale);
  const floor = title + above;
  // Heights were counted up from the floor.
  const turned = (up: number): number => floor - up;
  return {
    size,
    scale,
    floor,
    height: floor + below,
    vessels: rest.vessels.map((vessel) => ({ ...vessel, brim: turned(vessel.brim), neck: turned(vessel.neck) })),
    column: rest.column && { ...rest.column, bottom: turned(rest.column.bottom), top: turned(rest.column.top) },
    towerTop: turned(rest.towerTop),
    towerCentre: rest.towerCentre,
    vapourPipe: turned(rest.vapourPipe),
    refluxX: rest.refluxX,
    coolerX: rest.coolerX,
    coolerTop: turned(rest.coolerTop),
    coolerBottom: turned(rest.coolerBottom),
    spout: [rest.spout[0], turned(rest.spout[1])],
    labels: rest.labels,
  };
}

/** The largest at which it fits, between a hair's breadth and the widest kettle; 0 if it never does. */
function largestScale(fitsAt: (scale: number) => boolean, { kettle }: PicturedStill, size: PictureSize): number {
  let high = widestKettle[size.layout] / kettle.diameter_m;
  let low = Math.min(1, high / 2);
  if (fitsAt(high)) return high;
  if (!fitsAt(low)) return 0;
  for (let turn = 0; turn < 40 && high - low > 1e-4 * high; turn++) {
    const middle = (low + high) / 2;
    if (fitsAt(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** A jar of so many m³ at a scale: half as high again as wide. */
export function jarSize(size_m3: number, scale: number): { readonly width: number; readonly height: number } {
  const width = scale * Math.cbrt((4 * size_m3) / (Math.PI * signs.jarShape));
  return { width, height: signs.jarShape * width };
}

/** Height of the helmet on a vessel so wide. */
export function helmetHeight(width: number): number {
  return Math.min(signs.helmet, Math.max(26, 0.42 * width));
}

function fits({ above, below, right }: Placed, { width, layout }: PictureSize): boolean {
  return right <= width && title + above + below <= tallest[layout];
}
