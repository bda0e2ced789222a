// One plate of the picture of the still, enlarged where there is room beside a slim column: its liquid behind the weir,
// what rises through it, what comes down to it and leaves it. To a scale of its own, which is named.

import type { Still } from '#lib/index.js';
import { fixed } from '../../text/format.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import type { StillMoment } from '../../rows/still-moment.js';
import { fallingDrops } from './column.js';
import type { PicturedStill, StillLayout } from './layout.js';
import { box, line, path, placesAcross, px, risingVapour, said, words } from './marks.js';
import type { StillMark } from './marks.js';
import { strengthOrNone } from './words.js';

type Plated = Extract<Still['column'], { readonly kind: 'plates' }>;

/** Width it is enlarged to, px, and the room it needs beside the cooler. */
const wanted = 132;
const beside = 64;
/** Shown of the spacing below and above the plate. */
const shown = { below: 0.55, above: 0.8 };
/** Less than this enlarges nothing. */
const least = 1.6;

export function detailMarks(
  still: PicturedStill,
  moment: StillMoment,
  layout: StillLayout,
  units: UnitSystem,
): StillMark[] {
  const { column, size, scale, coolerX, vapourPipe, coolerTop, labels } = layout;
  if (column === null || still.column.kind !== 'plates' || size.layout !== 'wide') return [];
  const left = coolerX + beside;
  const plate = still.column;
  const high = plate.spacing_m * (shown.below + shown.above);
  const top = vapourPipe + 3 * labels.line;
  const room = coolerTop + 60 - top;
  const enlarged = Math.min(wanted / plate.diameter_m, room / high);
  const [width, height] = [plate.diameter_m * enlarged, high * enlarged];
  if (enlarged / scale < least || width < 60 || left + width > size.width) return [];
  const index = Math.floor((moment.stages.length - 1) / 2);
  const times = fixed(enlarged / scale, enlarged / scale < 10 ? 1 : 0);
  const stage = moment.stages[index]!;
  const depth = [
    said(', ', 'soft'),
    said(units.across.withUnit(stage.depth_m), 'ink'),
    said(' of clear liquid', 'soft'),
  ];
  const y = top - labels.line;
  return [
    ...drawn(plate, moment, index, { left, top, width, height, enlarged }),
    words(
      'detail name',
      [left, y - labels.line],
      [said(`plate ${String(index + 1)}`, 'print', true), said(`, ${times} times larger`, 'soft')],
    ),
    words(
      'detail liquid',
      [left, y],
      [said(strengthOrNone(stage.strength, units), 'ink'), ...(stage.strength === null ? [] : depth)],
    ),
  ];
}

interface Frame {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly enlarged: number;
}

function drawn(plate: Plated, { stages, kettle, doublers }: StillMoment, index: number, frame: Frame): StillMark[] {
  const { left, top, width, height, enlarged } = frame;
  const [stage, right, bottom] = [stages[index]!, left + width, top + height];
  const y = top + shown.above * plate.spacing_m * enlarged;
  const pass = 0.13 * width;
  const weir = Math.max(3, plate.weirHeight_m * enlarged);
  const depth = stage.strength === null ? 0 : Math.min(stage.depth_m * enlarged, y - top - 4);
  // Down-pipe from the plate above at the left, over the weir and down at the right.
  const foot = y - 0.45 * weir;
  const [from, to] = [left + pass, right - pass];
  const arriving = index === 0 ? (doublers.at(-1) ?? kettle).vapour : stages[index - 1]!.vapour;
  const above = stages[index + 1]?.liquid ?? stage.liquid;
  const across = placesAcross(from, to - from, 13);
  return [
    path('detail liquid', 'liquid', depth === 0 ? '' : box(left, y - depth, to - left, depth)),
    path('detail surface', 'surface', depth === 0 ? '' : line([left, y - depth], [to, y - depth])),
    path(
      'detail vapour',
      'vapour',
      risingVapour(across, bottom, y + 3, arriving) + risingVapour(across, y - 2, top, stage.vapour),
    ),
    path(
      'detail falling',
      'stream',
      fallingDrops(left + pass / 2, top, y - depth, above) +
        fallingDrops(right - pass / 2, y - Math.max(depth, weir), bottom, stage.liquid),
    ),
    path('detail plate', 'wall', tray(plate, left, to, from, y)),
    path('detail weirs', 'wall', line([to, y - weir], [to, bottom]) + line([from, top], [from, foot])),
    path('detail walls', 'wall', line([left, top], [left, bottom]) + line([right, top], [right, bottom])),
  ];
}

/** The plate itself: holes, caps or valves between the down-pipes. */
function tray({ plateKind }: Plated, left: number, right: number, from: number, y: number): string {
  if (plateKind === 'sieve') {
    let d = line([left, y], [from, y]);
    for (let x = from + 3; x + 6 < right; x += 9) d += line([x, y], [x + 6, y]);
    return d;
  }
  let d = line([left, y], [right, y]);
  for (const x of placesAcross(from, right - from, 26)) {
    d += plateKind === 'bubbleCap' ? `M${px(x - 7)} ${px(y - 1)}v-6q7 -6 14 0v6` : line([x - 6, y - 4], [x + 6, y - 4]);
  }
  return d;
}
