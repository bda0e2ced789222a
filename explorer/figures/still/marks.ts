// The marks of the picture of the still, and streams drawn as dashes whose place follows what has passed.

import type { Flow } from '../../rows/still-moment.js';

/** How a path is drawn; style sheets know these names. */
export type PathLook =
  /** Walls, print. */
  | 'wall'
  | 'fine'
  | 'heater'
  | 'packing'
  /** A pipe: its wall, then the bore that is laid over it. */
  | 'pipe'
  | 'bore'
  /** Liquid, filled in ink, and its surface. */
  | 'liquid'
  | 'surface'
  /** Streams, ink. */
  | 'vapour'
  | 'stream'
  | 'leader'
  | 'warning';

export interface PathMark {
  readonly kind: 'path';
  readonly key: string;
  readonly look: PathLook;
  readonly d: string;
  /** Lengths of dash and gap, and how far the first stands along the path, px; all drawn through when left out. */
  readonly dashes?: { readonly dash: number; readonly gap: number; readonly along: number };
  readonly opacity?: number;
}

export type WordHand = 'print' | 'soft' | 'ink';

export interface WordMark {
  readonly kind: 'words';
  readonly key: string;
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly parts: readonly { readonly text: string; readonly hand: WordHand; readonly bold: boolean }[];
}

export type StillMark = PathMark | WordMark;

export type At = readonly [x: number, y: number];

/** Px between the beginnings of two dashes, and px that the dashes move by while the most that passes anywhere passes. */
const period = { vapour: 11, stream: 11 };
const journey = 1600;
/** Dashes of vapour are as long as this share of the period at the most. */
const longest = 0.5;
/** Less than this share of the largest flow is not drawn. */
const nothing = 2e-3;

export function path(key: string, look: PathLook, d: string): PathMark {
  return { kind: 'path', key, look, d };
}

/** A line through points. */
export function line(...points: readonly At[]): string {
  return points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${px(x)} ${px(y)}`).join('');
}

export function box(left: number, top: number, width: number, height: number): string {
  return `M${px(left)} ${px(top)}h${px(width)}v${px(height)}h${px(-width)}z`;
}

/** A stream along a path; nothing when nothing flows. */
export function streamMark(key: string, look: 'vapour' | 'stream', d: string, flow: Flow): PathMark[] {
  if (flow.share < nothing) return [];
  const dash = look === 'vapour' ? vapourDash(flow) : period.stream - 5;
  const along = (flow.passed * journey) % period[look];
  return [{ kind: 'path', key, look, d, dashes: { dash, gap: period[look] - dash, along } }];
}

/** Vapour rising through a room at several places across: short upright dashes, longer the more of it there is. */
export function risingVapour(across: readonly number[], bottom: number, top: number, flow: Flow): string {
  if (flow.share < nothing || bottom - top < 2) return '';
  const dash = vapourDash(flow);
  let d = '';
  across.forEach((x, column) => {
    // Each column stands otherwise than the one before, so that they make no rows.
    const shift = (flow.passed * journey + column * period.vapour * 0.382) % period.vapour;
    for (let low = bottom - shift + period.vapour; low > top; low -= period.vapour) {
      const from = Math.min(low, bottom);
      const to = Math.max(low - dash, top);
      if (from - to > 0.4) d += `M${px(x)} ${px(from)}V${px(to)}`;
    }
  });
  return d;
}

/** Places across a room, about so far apart, the outermost as far from the walls as half of that. */
export function placesAcross(left: number, width: number, apart: number): number[] {
  const count = Math.max(1, Math.round(width / apart));
  return Array.from({ length: count }, (_, i) => left + ((i + 0.5) * width) / count);
}

export function words(
  key: string,
  [x, y]: At,
  parts: WordMark['parts'],
  anchor: WordMark['anchor'] = 'start',
): WordMark {
  return { kind: 'words', key, x, y, anchor, parts };
}

export function said(text: string, hand: WordHand, bold = false): WordMark['parts'][number] {
  return { text, hand, bold };
}

/** Hundredths of a px, short. */
export function px(value: number): string {
  return String(Math.round(value * 100) / 100);
}

function vapourDash({ share }: Flow): number {
  return period.vapour * longest * Math.max(0.35, Math.min(1, share));
}
