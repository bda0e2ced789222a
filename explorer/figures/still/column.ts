// Plates or packing of the picture of the still: what stands on each plate, what rises between them, what runs down.

import type { Flow, StageMoment, StillMoment } from '../../rows/still-moment.js';
import type { ColumnPlace, PicturedStill, StillLayout } from './layout.js';
import { box, line, path, placesAcross, px, risingVapour, streamMark } from './marks.js';
import type { StillMark } from './marks.js';

/** Open end of a plate, where liquid runs down to the next, px. */
const downcomer = 4;
const apart = 9;

export function columnMarks(still: PicturedStill, moment: StillMoment, layout: StillLayout): StillMark[] {
  const { column: place } = layout;
  const { column } = still;
  if (place === null || column.kind === 'none') return [];
  const inside = column.kind === 'plates' ? plates(column, moment, layout, place) : packing(moment, place);
  const { left, width, bottom, top } = place;
  return [
    ...inside,
    path('column walls', 'wall', line([left, bottom], [left, top]) + line([left + width, top], [left + width, bottom])),
  ];
}

/** Height on the page of the middle of a stage, lowest 0. */
export function stageHeight(still: PicturedStill, place: ColumnPlace, stage: number, count: number): number {
  const { bottom, top } = place;
  if (still.column.kind === 'plates') return bottom - ((stage + 0.5) * (bottom - top)) / count;
  const { low, high } = packedRoom(place);
  return low - ((stage + 0.5) * (low - high)) / count;
}

function plates(
  { weirHeight_m }: { readonly weirHeight_m: number },
  { kettle, doublers, stages }: StillMoment,
  { scale }: StillLayout,
  place: ColumnPlace,
): StillMark[] {
  const { left, width, bottom, top } = place;
  const spacing = (bottom - top) / stages.length;
  const weir = Math.max(2, weirHeight_m * scale);
  let [trays, weirs, liquid, surface, vapour, falling] = ['', '', '', '', '', ''];
  const below = doublers.at(-1) ?? kettle;
  stages.forEach((stage, i) => {
    const y = bottom - (i + 0.5) * spacing;
    const right = i % 2 === 0;
    const from = right ? left : left + downcomer;
    const to = right ? left + width - downcomer : left + width;
    const end = right ? to : from;
    trays += line([from, y], [to, y]);
    weirs += line([end, y], [end, y - weir]);
    const depth = Math.min(stage.depth_m * scale, spacing - 2);
    if (stage.strength !== null) {
      liquid += box(from, y - depth, to - from, depth);
      surface += line([from, y - depth], [to, y - depth]);
    }
    const arriving = i === 0 ? below.vapour : stages[i - 1]!.vapour;
    const low = i === 0 ? bottom : y + spacing - depth - 1;
    const across = placesAcross(from, to - from, apart);
    vapour += risingVapour(across, low, y + 2, arriving);
    if (i === stages.length - 1) vapour += risingVapour(across, y - depth - 1, top, stage.vapour);
    const drop = right ? left + width - downcomer / 2 : left + downcomer / 2;
    falling += fallingDrops(drop, y - depth, y + spacing * 0.6, stage.liquid);
  });
  return [
    path('plates liquid', 'liquid', liquid),
    path('plates', 'fine', trays + weirs),
    path('plates surface', 'surface', surface),
    path('plates vapour', 'vapour', vapour),
    path('plates falling', 'stream', falling),
  ];
}

/** Liquid on its way down to the next plate. */
export function fallingDrops(x: number, top: number, bottom: number, flow: Flow): string {
  // Vapour turned upside down: the same dashes, counted from above.
  const upside = risingVapour([x], -top, -bottom, flow);
  return upside.replace(/M([\d.-]+) (-?[\d.]+)V(-?[\d.]+)/gu, (_all, at: string, from: string, to: string) => {
    return `M${at} ${px(-Number(from))}V${px(-Number(to))}`;
  });
}

function packing({ kettle, doublers, stages }: StillMoment, place: ColumnPlace): StillMark[] {
  const { left, width, bottom, top } = place;
  const { low, high } = packedRoom(place);
  const stage = (low - high) / stages.length;
  const below = doublers.at(-1) ?? kettle;
  const across = placesAcross(left, width, apart);
  const wet = stages.map((one: StageMoment, i) => ({
    ...path(`packing ${String(i)} liquid`, 'liquid', box(left, low - (i + 1) * stage, width, stage)),
    opacity: one.strength === null ? 0 : Math.min(1, one.filled),
  }));
  const vapour = stages.map((one, i) =>
    risingVapour(across, low - i * stage, low - (i + 1) * stage, i === 0 ? below.vapour : one.vapour),
  );
  const last = stages.at(-1)!;
  return [
    ...wet,
    path('packing hatch', 'packing', crossed(left, high, width, low - high)),
    path('packing ends', 'fine', line([left, low], [left + width, low]) + line([left, high], [left + width, high])),
    path(
      'packing vapour',
      'vapour',
      risingVapour(across, bottom, low + 1, below.vapour) +
        vapour.join('') +
        risingVapour(across, high - 1, top, last.vapour),
    ),
    ...streamMark('packing falling', 'stream', line([left + 3, low], [left + 3, bottom]), stages[0]!.liquid),
  ];
}

function packedRoom({ bottom, top }: ColumnPlace): { readonly low: number; readonly high: number } {
  return { low: bottom - 8, high: top + 8 };
}

/** Lines at 45° both ways through a box. */
function crossed(left: number, top: number, width: number, height: number): string {
  const step = 7;
  let d = '';
  for (let at = step; at < width + height; at += step) {
    const [x0, y0] = at < height ? [0, at] : [at - height, height];
    const [x1, y1] = at < width ? [at, 0] : [width, at - width];
    d += line([left + x0, top + y0], [left + x1, top + y1]);
    d += line([left + width - x0, top + y0], [left + width - x1, top + y1]);
  }
  return d;
}
