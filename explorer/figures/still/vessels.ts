// Kettle and doublers of the picture of the still: walls, liquid to its level, heating surface, dip pipes and drains.

import type { DoublerMoment, StillMoment, VesselMoment } from '../../rows/still-moment.js';
import type { PicturedStill, StillLayout, VesselPlace } from './layout.js';
import { signs } from './layout.js';
import { box, line, path, placesAcross, px, risingVapour, streamMark } from './marks.js';
import type { At, StillMark } from './marks.js';

/** Vapour above the liquid: px between dashes across. */
const apart = 17;
/** Part of the vessel's width at which a pipe from below goes in. */
const inlet = 0.24;

export function vesselMarks(still: PicturedStill, moment: StillMoment, layout: StillLayout): StillMark[] {
  const all: readonly VesselMoment[] = [moment.kettle, ...moment.doublers];
  return [
    ...layout.vessels.flatMap((place, i) => contents(`vessel ${String(i)}`, place, all[i]!, layout)),
    ...heater(layout, moment),
    ...layout.vessels.map((place, i) => path(`vessel ${String(i)} wall`, 'wall', walls(place, layout))),
    ...moment.doublers.flatMap((doubler, i) => dipPipe(i, doubler, all[i]!, layout)),
    ...still.doublers.flatMap((doubler, i) => (doubler.overflow === 'back' ? drain(i, moment, layout) : [])),
  ];
}

/** Liquid with its surface, and vapour above it. */
function contents(key: string, place: VesselPlace, part: VesselMoment, layout: StillLayout): StillMark[] {
  const { floor, scale } = layout;
  const surface = floor - Math.min(part.level_m * scale, floor - place.neck);
  const { left, width } = place;
  const across = placesAcross(left, width, apart);
  const inside = across.filter((x) => x > place.centre - place.neckWidth / 2 && x < place.centre + place.neckWidth / 2);
  const rising =
    risingVapour(across, surface - 2, place.brim, part.vapour) +
    risingVapour(inside.length > 0 ? inside : [place.centre], place.brim, place.neck, part.vapour);
  return [
    path(`${key} liquid`, 'liquid', box(left, surface, width, floor - surface)),
    path(`${key} surface`, part.strength === null ? 'fine' : 'surface', line([left, surface], [left + width, surface])),
    path(`${key} vapour`, 'vapour', rising),
  ];
}

/** Floor, walls to the brim, shoulders in to the neck. */
function walls({ left, width, centre, brim, neck, neckWidth }: VesselPlace, { floor }: StillLayout): string {
  const [right, half] = [left + width, neckWidth / 2];
  const bend = (brim - neck) * 0.75;
  return (
    `M${px(centre - half)} ${px(neck)}C${px(centre - half)} ${px(neck + bend)} ${px(left)} ${px(brim - bend)} ${px(left)} ${px(brim)}` +
    `V${px(floor)}H${px(right)}V${px(brim)}` +
    `C${px(right)} ${px(brim - bend)} ${px(centre + half)} ${px(neck + bend)} ${px(centre + half)} ${px(neck)}`
  );
}

/** A coil up to the height of the heating surface, and that height drawn across; in red with the level below it. */
function heater({ vessels, floor, scale }: StillLayout, { kettle }: StillMoment): StillMark[] {
  const { left, width } = vessels[0]!;
  const top = floor - kettle.heatingSurface_m * scale;
  const [from, to] = [left + 0.14 * width, left + 0.86 * width];
  const turns = Math.max(1, Math.round((floor - top) / 9));
  const step = (floor - top) / (turns + 0.5);
  const coil: At[] = [];
  for (let i = 0; i <= turns; i++) {
    const y = top + i * step;
    coil.push(
      ...(i % 2 === 0
        ? ([
            [from, y],
            [to, y],
          ] as const)
        : ([
            [to, y],
            [from, y],
          ] as const)),
    );
  }
  const marks = [
    path('heater coil', 'fine', line(...coil)),
    path('heating surface', kettle.covered ? 'heater' : 'warning', line([left, top], [left + width, top])),
  ];
  if (kettle.covered) return marks;
  const level = floor - kettle.level_m * scale;
  return [...marks, path('low level', 'warning', line([left + width - 5, level], [left + width + 7, level]))];
}

/** From the vessel before, over and down into the doubler's liquid, and the vapour that bubbles up from its mouth. */
function dipPipe(i: number, doubler: DoublerMoment, from: VesselMoment, layout: StillLayout): StillMark[] {
  const { vessels, floor, scale } = layout;
  const [before, here] = [vessels[i]!, vessels[i + 1]!];
  const x = here.left + inlet * here.width;
  const over = Math.min(before.neck, here.neck) - 18;
  const mouth = floor - doubler.mouth_m * scale - 1;
  const way = line([before.centre, before.neck + 3], [before.centre, over], [x, over], [x, mouth]);
  const key = `pipe ${String(i)}`;
  const surface = floor - doubler.level_m * scale;
  const beside = [x - signs.pipe, x + signs.pipe, x + 2 * signs.pipe].filter((at) => at > here.left + 3);
  return [
    path(key, 'pipe', way),
    path(`${key} bore`, 'bore', way),
    ...streamMark(`${key} vapour`, 'vapour', way, from.vapour),
    path(`${key} bubbles`, 'vapour', risingVapour(beside, mouth - 1, surface + 2, from.vapour)),
    ...(doubler.covered ? [] : [path(`${key} bare`, 'warning', line([x - 8, mouth], [x + 8, mouth]))]),
  ];
}

/** The drain pipe from a doubler's brim back to the vessel below. */
function drain(i: number, moment: StillMoment, { vessels }: StillLayout): StillMark[] {
  const [before, here] = [vessels[i]!, vessels[i + 1]!];
  const brim = here.brim + 3;
  const entry = Math.max(before.brim + 3, brim + 6);
  const middle = (before.left + before.width + here.left) / 2;
  const way = line([here.left, brim], [middle, brim], [middle, entry], [before.left + before.width, entry]);
  const { liquid } = moment.doublers[i]!;
  return [path(`drain ${String(i)}`, 'fine', way), ...streamMark(`drain ${String(i)} stream`, 'stream', way, liquid)];
}
