// Where the parts of the picture of the still stand at a given scale, and how much room that takes. What has a size in the
// data follows the scale; pipes, heads, condensers and words keep their px.

import type { UnitSystem } from '../../text/unit-systems.js';
import { helmetHeight, jarSize, signs } from './layout.js';
import type { PicturedStill, PictureSize, StillLayout, VesselPlace, WordsMode } from './layout.js';

export interface Wanted {
  readonly still: PicturedStill;
  readonly largestJar_m3: number;
  readonly jarCount: number;
  readonly units: UnitSystem;
  readonly size: PictureSize;
}

/** A layout whose heights count up from the floor, with the room it takes above, below and to the right. */
export type Placed = Omit<StillLayout, 'size' | 'scale' | 'floor' | 'height'> & {
  readonly above: number;
  readonly below: number;
  readonly right: number;
};

/** Room of the title, px. */
export const title = 34;
const words = {
  wide: { line: 19, column: 126, caption: 82, beside: 104, name: 48 },
  narrow: { line: 18, column: 112, caption: 72, beside: 96, name: 44 },
};
const thinnestColumn = 16;

// Heights here count up from the floor.
export function placed(wanted: Wanted, mode: WordsMode, scale: number): Placed {
  const { still, largestJar_m3, jarCount, size, units } = wanted;
  const listed = mode === 'listed';
  const { line, beside } = words[size.layout];
  const columnWords = listed ? 6 : words[size.layout].column;
  const caption = listed ? words[size.layout].name : captionWidth(units, size);
  const column = columnSize(still, scale);
  const vessels: VesselPlace[] = [];
  let left = 1;
  const all = [still.kettle, ...still.doublers];
  all.forEach((vessel, i) => {
    const width = vessel.diameter_m * scale;
    const carries = i === all.length - 1;
    const overhang = carries && column !== null ? Math.max(0, (column.width - width) / 2) : 0;
    const brim = (4 * vessel.volume_m3 * scale) / (Math.PI * vessel.diameter_m ** 2);
    const shoulder = Math.min(28, Math.max(7, 0.15 * width));
    const neckWidth = !carries ? signs.pipe : (column?.width ?? Math.max(12, 0.36 * width));
    const at = left + overhang;
    vessels.push({ left: at, width, centre: at + width / 2, brim, neck: brim + shoulder, neckWidth });
    left = Math.max(at + width + overhang, left + caption) + (size.layout === 'wide' ? 12 : 8);
  });
  const tower = vessels.at(-1)!;
  const columnPlace =
    column === null
      ? null
      : {
          left: tower.centre - column.width / 2,
          width: column.width,
          bottom: tower.neck,
          top: tower.neck + column.height,
          widened: column.widened,
        };
  const jar = jarSize(largestJar_m3, scale);
  const towerTop = columnPlace?.top ?? tower.neck;
  const coolerBottom = jar.height + 30;
  const inlets = still.doublers.map((_, i) => Math.max(vessels[i]!.neck, vessels[i + 1]!.neck) + 18);
  const vapourPipe = Math.max(
    towerTop + headRoom(still, tower.width),
    coolerBottom + signs.cooler.least + 20,
    ...inlets.map((up) => up + 14),
  );
  const towerRight = columnPlace === null ? tower.centre + tower.neckWidth / 2 : columnPlace.left + columnPlace.width;
  const columnX = towerRight + 16;
  const beyondWords = columnPlace === null ? 0 : columnX + columnWords + 22;
  const beyondCondenser = still.refluxCondenser.kind === 'total' ? towerRight + 84 : 0;
  const coolerX = Math.max(beyondWords, beyondCondenser, tower.left + tower.width + 26, left - 2);
  const spoutX = Math.max(coolerX + 20, left + jar.width / 2, tower.left + tower.width + 10 + jar.width / 2);
  const shown = Math.min(jarCount - 1, size.layout === 'wide' ? 5 : mode === 'beside' ? 2 : mode === 'below' ? 1 : 0);
  // The strength under a jar is as wide as that.
  const jarsRight = spoutX + Math.max(jar.width, 36) / 2 + shown * (Math.max(jar.width, 30) + signs.jarGap);
  const coolerTop = Math.min(
    vapourPipe - 20 - (still.refluxCondenser.kind === 'total' ? 60 : 0),
    coolerBottom + signs.cooler.height,
  );
  return {
    vessels,
    column: columnPlace,
    towerTop,
    towerCentre: tower.centre,
    vapourPipe,
    refluxX: towerRight + 40,
    coolerX,
    coolerTop: Math.max(coolerTop, coolerBottom + signs.cooler.least),
    coolerBottom,
    spout: [spoutX, jar.height + 10],
    labels: { line, columnX, mode },
    above: vapourPipe + signs.above[still.refluxCondenser.kind],
    below: linesBelow(still, mode) * line + 16,
    right: Math.max(jarsRight, mode === 'beside' ? spoutX + 14 + beside : 0),
  };
}

/** Room between tower and vapour pipe: condenser and drum, partial condenser, helmet of a pot, or a bend. */
function headRoom(still: PicturedStill, width: number): number {
  if (still.refluxCondenser.kind === 'total') return 100;
  if (still.refluxCondenser.kind === 'partial') return signs.partial + 22;
  return still.column.kind === 'none' ? helmetHeight(width) + 14 : 22;
}

function columnSize(
  { column }: PicturedStill,
  scale: number,
): { readonly width: number; readonly height: number; readonly widened: number } | null {
  if (column.kind === 'none') return null;
  const exact = column.diameter_m * scale;
  const width = Math.max(thinnestColumn, exact);
  const height = scale * (column.kind === 'plates' ? column.count * column.spacing_m : column.height_m);
  return { width, height: column.kind === 'plates' ? height : height + 16, widened: width / exact };
}

/** Room for the longest number under a vessel. */
function captionWidth(units: UnitSystem, { layout }: PictureSize): number {
  const longest = Math.max(units.strength.unit.length + 4, units.volume.unit.length + 5);
  return Math.max(words[layout].caption, (layout === 'wide' ? 7.4 : 6.9) * longest + 8);
}

/** Lines of words under the floor. */
function linesBelow(still: PicturedStill, mode: WordsMode): number {
  if (mode === 'beside') return 5;
  if (mode === 'below') return 7;
  return 1 + 1 + still.doublers.length + (still.column.kind === 'none' ? 0 : 3) + 2;
}
