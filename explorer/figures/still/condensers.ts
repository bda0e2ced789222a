// Head, condensers and spout of the picture of the still: drawn by sign, their streams by what flows.

import type { StillMoment } from '../../rows/still-moment.js';
import { helmetHeight, signs } from './layout.js';
import type { PicturedStill, StillLayout } from './layout.js';
import { box, line, path, px, streamMark, risingVapour, placesAcross } from './marks.js';
import type { At, StillMark } from './marks.js';

export function condenserMarks(still: PicturedStill, moment: StillMoment, layout: StillLayout): StillMark[] {
  const { kind } = still.refluxCondenser;
  const { vapourPipe, towerTop, towerCentre, coolerX, coolerTop } = layout;
  if (kind === 'total') return [...totalCondenser(moment, layout), ...cooler(moment, layout)];
  const pot = kind === 'none' && still.column.kind === 'none';
  const from = towerTop - (kind === 'partial' ? signs.partial : pot ? helmetTop(layout) : 0);
  const way = line([towerCentre, from], [towerCentre, vapourPipe], [coolerX, vapourPipe + 6], [coolerX, coolerTop]);
  return [
    ...(pot ? helmet(moment, layout) : kind === 'none' ? capOf(layout) : []),
    ...pipe('vapour pipe', way),
    ...streamMark('vapour pipe vapour', 'vapour', way, moment.head.vapour),
    ...(kind === 'partial' ? partialCondenser(moment, layout) : []),
    ...cooler(moment, layout),
  ];
}

/** Height of the helmet of the last vessel. */
function helmetTop({ vessels }: StillLayout): number {
  return helmetHeight(vessels.at(-1)!.width);
}

/** A pot's helmet: its walls draw in from the neck to the pipe. */
function helmet(moment: StillMoment, layout: StillLayout): StillMark[] {
  const { centre, neck, neckWidth } = layout.vessels.at(-1)!;
  const height = helmetTop(layout);
  const [wide, thin] = [neckWidth / 2, signs.pipe / 2];
  const side = (hand: 1 | -1): string =>
    `M${px(centre + hand * wide)} ${px(neck)}C${px(centre + hand * wide)} ${px(neck - 0.55 * height)} ` +
    `${px(centre + hand * thin)} ${px(neck - 0.5 * height)} ${px(centre + hand * thin)} ${px(neck - height)}`;
  const places = placesAcross(centre - wide, 2 * wide, 17);
  const { vapour } = moment.head;
  return [
    path('helmet', 'wall', side(1) + side(-1)),
    path('helmet vapour', 'vapour', risingVapour(places, neck, neck - 0.3 * height, vapour)),
    path('helmet throat', 'vapour', risingVapour([centre], neck - 0.3 * height, neck - height, vapour)),
  ];
}

/** The top of a column, closed to the pipe. */
function capOf({ column, towerTop }: StillLayout): StillMark[] {
  if (column === null) return [];
  return [path('cap', 'wall', line([column.left, towerTop], [column.left + column.width, towerTop]))];
}

function partialCondenser({ reflux, partial }: StillMoment, { column, vessels, towerTop }: StillLayout): StillMark[] {
  const inner = column ?? { left: vessels.at(-1)!.centre - 10, width: 20 };
  const width = Math.max(inner.width + 10, 28);
  const left = inner.left + inner.width / 2 - width / 2;
  const top = towerTop - signs.partial;
  const back = line([inner.left + 3, towerTop - 3], [inner.left + 3, towerTop + 12]);
  const rising = partial === null ? '' : risingVapour(placesAcross(left, width, 9), towerTop, top + 4, partial.vapour);
  return [
    path('partial shell', 'wall', box(left, top, width, signs.partial)),
    path('partial coil', 'fine', coil(left, top + 6, width, signs.partial - 12, 5)),
    path('partial vapour', 'vapour', rising),
    ...streamMark('partial reflux', 'stream', back, reflux),
  ];
}

/** Condenser and drum beside the top of the column, the reflux line back and the line to the cooler. */
function totalCondenser(moment: StillMoment, layout: StillLayout): StillMark[] {
  const { column, towerTop, towerCentre, vapourPipe, refluxX, coolerX, coolerTop } = layout;
  const { shell, drum } = signs;
  const shellTop = vapourPipe + 14;
  const shellBottom = shellTop + shell.height;
  const drumTop = shellBottom + 8;
  const middle = drumTop + drum.height / 2;
  const drumLeft = refluxX - drum.width / 2;
  const over = line([towerCentre, towerTop], [towerCentre, vapourPipe], [refluxX, vapourPipe], [refluxX, shellTop]);
  const wall = (column?.left ?? towerCentre - 6) + (column?.width ?? 12);
  const into = towerTop + 5;
  const between = (wall + drumLeft) / 2;
  const back = line([drumLeft, middle], [between, middle], [between, into], [wall - 6, into], [wall - 6, into + 6]);
  const away = line([drumLeft + drum.width, middle], [coolerX, middle], [coolerX, coolerTop]);
  const level = drum.height * Math.min(1, moment.drumFilled) * 0.8;
  const surface = drumTop + drum.height - level;
  return [
    ...capOf(layout),
    ...pipe('vapour pipe', over),
    ...streamMark('vapour pipe vapour', 'vapour', over, moment.head.vapour),
    path('shell', 'wall', box(refluxX - shell.width / 2, shellTop, shell.width, shell.height)),
    path('shell coil', 'fine', coil(refluxX - shell.width / 2, shellTop + 5, shell.width, shell.height - 10, 5)),
    path('shell foot', 'fine', line([refluxX, shellBottom], [refluxX, drumTop])),
    path('drum liquid', 'liquid', box(drumLeft, surface, drum.width, level)),
    path('drum surface', 'surface', level < 1 ? '' : line([drumLeft, surface], [drumLeft + drum.width, surface])),
    path('drum', 'wall', box(drumLeft, drumTop, drum.width, drum.height)),
    path('reflux line', 'fine', back),
    ...streamMark('reflux', 'stream', back, moment.reflux),
    path('distillate line', 'fine', away),
    ...streamMark('distillate', 'stream', away, moment.distillate),
  ];
}

/** The product condenser and its spout. */
function cooler(moment: StillMoment, { coolerX, coolerTop, coolerBottom, spout }: StillLayout): StillMark[] {
  const { width } = signs.cooler;
  const left = coolerX - width / 2;
  const height = coolerBottom - coolerTop;
  const way = line([coolerX, coolerBottom], [coolerX, coolerBottom + 8], [spout[0], coolerBottom + 8], [...spout]);
  return [
    path('cooler', 'wall', box(left, coolerTop, width, height)),
    path('cooler coil', 'fine', coil(left, coolerTop, width, height, Math.max(4, Math.round(height / 10)))),
    path('spout', 'fine', way),
    ...streamMark('spout stream', 'stream', way, moment.distillate),
  ];
}

function pipe(key: string, way: string): StillMark[] {
  return [path(key, 'pipe', way), path(`${key} bore`, 'bore', way)];
}

/** A worm from top to bottom of a box. */
function coil(left: number, top: number, width: number, height: number, turns: number): string {
  const step = height / turns;
  const [from, to] = [left + 5, left + width - 5];
  const points: At[] = [[left + width / 2, top]];
  for (let i = 0; i < turns; i++) points.push([i % 2 === 0 ? to : from, top + (i + 0.5) * step]);
  points.push([left + width / 2, top + height]);
  return line(...points);
}
