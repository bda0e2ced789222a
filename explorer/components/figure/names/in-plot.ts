// From a panel to what the rule of names works on: what stands in the plot, and what is to be named, in px. Words that
// belong to a mark itself (a bracket, a warning, a length) are names like the others.

import type { Mark, Named, Panel, PlotName } from '../../../figures/figure.js';
import { bracketHeight, warningTick, type MarkContext } from '../marks.js';
import { PlotLine, type Point } from './geometry.js';
import { marginGap } from '../geometry.js';
import type { MarginWanted } from './margin-names.js';
import type { Anchor, Around, WantedName } from './wanted.js';

/** What is named in the plot, and what beside it. */
export interface NamesOfPanel {
  readonly around: Around;
  readonly plot: readonly WantedName[];
  readonly ends: readonly (MarginWanted & { readonly inPlot: WantedName })[];
  readonly margin: readonly (MarginWanted & { readonly name: PlotName })[];
  /** Heights of lines that run through the gap. */
  readonly crossing: readonly number[];
}

/** A curve that comes this near to the right edge, as a share of the width, may be named beyond it. */
const reaches = 0.85;
/** Px of fall per px of run from which a curve counts as steep, and the part of the width it is looked at over. */
const steep = 0.45;
const reach = 1 / 24;
const endGap = 8;

export function namesOfPanel(
  panel: Panel,
  context: MarkContext,
  cursorShown: number | null,
  measure: (text: string, bold: boolean) => number,
): NamesOfPanel {
  const { x, y, width, height, wide } = context;
  const lines = new Map<string, PlotLine>();
  const strokes: PlotLine[] = [];
  const points: Point[] = [];
  const lineOf = (of: readonly Point[]): PlotLine => new PlotLine(of, width, height);
  for (const mark of panel.marks) {
    if (mark.kind === 'curve')
      lines.set(mark.key, lineOf(Array.from(mark.x, (at, i) => ({ x: x(at), y: y(mark.y[i]!) }))));
    else if (mark.kind === 'level') lines.set(`level ${mark.key}`, lineOf(across(y(mark.y), width)));
    else strokes.push(...strokesOf(mark, context).map(lineOf));
    points.push(...pointsOf(mark, context));
  }
  const passing = cursorShown === null ? [] : [lineOf([0, height].map((at) => ({ x: x(cursorShown), y: at })))];
  const around = { width, height, lines: [...lines.values()], strokes, passing, points };

  const wanted = (
    name: Pick<PlotName, 'key' | 'text' | 'bold' | 'optional'>,
    hand: WantedName['hand'],
    anchor: Anchor,
  ) => ({ ...name, hand, anchor, width: measure(name.text, name.bold) }) satisfies WantedName;
  const plot: WantedName[] = [];
  const ends: NamesOfPanel['ends'][number][] = [];
  const margin: NamesOfPanel['margin'][number][] = [];
  for (const name of panel.names) {
    if (name.of.kind === 'level' && wide && runsOut(panel, name.of.mark)) {
      margin.push({ key: name.key, y: heightOf(panel, name.of.mark, y), lines: name.note === '' ? 1 : 2, name });
      continue;
    }
    const anchor = anchorOf(name.of, lines, panel, context);
    if (anchor === undefined) continue;
    const inPlot = wanted(name, name.hand, anchor);
    const atEnd = wide && name.of.kind === 'curve' && name.of.side === 'end' && anchor.kind === 'curve';
    const end = atEnd && inPlot.width <= marginGap - endGap ? endOf(panel, name.of, context) : undefined;
    if (end === undefined) plot.push(inPlot);
    else ends.push({ key: name.key, y: end, lines: 1, inPlot });
  }
  for (const mark of panel.marks) {
    const said = wordsOf(mark, context);
    if (said !== undefined)
      plot.push(
        wanted(
          { key: `${mark.kind} ${mark.key}`, text: said.text, bold: false, optional: false },
          said.hand,
          said.anchor,
        ),
      );
  }
  const crossing = panel.marks.flatMap((mark) =>
    mark.kind === 'level' && mark.reach === 'margin' && wide ? [y(mark.y)] : [],
  );
  return { around, plot, ends, margin, crossing };
}

function across(y: number, width: number): Point[] {
  return [0, width].map((x) => ({ x, y }));
}

function levelOf(panel: Panel, key: string): Extract<Mark, { kind: 'level' }> | undefined {
  return panel.marks.find(
    (mark): mark is Extract<Mark, { kind: 'level' }> => mark.kind === 'level' && mark.key === key,
  );
}

function runsOut(panel: Panel, key: string): boolean {
  return levelOf(panel, key)?.reach === 'margin';
}

function heightOf(panel: Panel, key: string, y: (shown: number) => number): number {
  return y(levelOf(panel, key)?.y ?? NaN);
}

/** Height of a curve's last point where it is near the right edge; undefined where the curve ends before it. */
function endOf(panel: Panel, of: Named, { x, y, width, height }: MarkContext): number | undefined {
  const curve = panel.marks.find((mark) => mark.kind === 'curve' && of.kind === 'curve' && mark.key === of.mark);
  if (curve?.kind !== 'curve' || curve.x.length === 0) return undefined;
  const last = curve.x.length - 1;
  const at = y(curve.y[last]!);
  return x(curve.x[last]!) >= reaches * width && at >= 0 && at <= height ? at : undefined;
}

function anchorOf(
  of: Named,
  lines: ReadonlyMap<string, PlotLine>,
  panel: Panel,
  { x, y, width }: MarkContext,
): Anchor | undefined {
  switch (of.kind) {
    case 'curve': {
      const line = lines.get(of.mark);
      if (line === undefined || line.span[0] > line.span[1]) return undefined;
      const bend = of.side === 'bend' ? bendOf(line, width) : null;
      if (bend !== null) return { kind: 'curve', line, x: bend, side: 'right' };
      const side = of.side === 'bend' || of.side === 'end' ? 'above' : of.side;
      return { kind: 'curve', line, x: of.at * width, side };
    }
    case 'level': {
      const line = lines.get(`level ${of.mark}`);
      const at = heightOf(panel, of.mark, y);
      return line === undefined || line.span[0] > line.span[1]
        ? undefined
        : { kind: 'level', line, y: at, side: of.side };
    }
    case 'point':
      return { kind: 'point', at: { x: x(of.x), y: y(of.y) }, side: of.side };
    case 'box': {
      const box = panel.marks.find((mark) => mark.kind === 'box' && mark.key === of.mark);
      if (box?.kind !== 'box') return undefined;
      return {
        kind: 'box',
        box: { left: x(box.x[0]), right: x(box.x[1]), top: y(box.y[1]), bottom: y(box.y[0]) },
      };
    }
  }
}

/** Where a line first falls more than it runs on; null where it is shallow. */
function bendOf(line: PlotLine, width: number): number | null {
  const [first, last] = line.span;
  const run = width * reach;
  for (let at = Math.max(first, run); at + run <= last; at += 4) {
    const here = line.between(at, at);
    const then = line.between(at + run, at + run);
    if (here !== undefined && then !== undefined && then.top - here.top > steep * run) return at;
  }
  return null;
}

function strokesOf(mark: Mark, { x, y, height }: MarkContext): Point[][] {
  if (mark.kind === 'box') {
    const corner = (i: 0 | 1, j: 0 | 1): Point => ({ x: x(mark.x[i]), y: y(mark.y[j]) });
    return [[corner(0, 0), corner(1, 0), corner(1, 1), corner(0, 1), corner(0, 0)]];
  }
  if (mark.kind === 'measure') {
    const [from, to, at] = [x(mark.from), x(mark.to), y(mark.at)];
    return [
      [
        { x: from, y: at },
        { x: to, y: at },
        { x: to, y: y(mark.dropFrom) },
      ],
    ];
  }
  if (mark.kind === 'bracket') {
    const at = bracketHeight(mark, height);
    return [[x(mark.from), x(mark.to)].map((px) => ({ x: px, y: at }))];
  }
  if (mark.kind === 'warning') return [[-warningTick, warningTick].map((dy) => ({ x: x(mark.x), y: y(mark.y) + dy }))];
  return [];
}

function pointsOf(mark: Mark, { x, y }: MarkContext): Point[] {
  if (mark.kind === 'dot') return [{ x: x(mark.x), y: y(mark.y) }];
  if (mark.kind === 'points') return Array.from(mark.x, (at, i) => ({ x: x(at), y: y(mark.y[i]!) }));
  return [];
}

function wordsOf(
  mark: Mark,
  { x, y, height }: MarkContext,
): { readonly text: string; readonly hand: WantedName['hand']; readonly anchor: Anchor } | undefined {
  if (mark.kind === 'bracket' || mark.kind === 'measure') {
    if (mark.words === '') return undefined;
    const at = mark.kind === 'bracket' ? bracketHeight(mark, height) : y(mark.at);
    return {
      text: mark.words,
      hand: 'ink',
      anchor: { kind: 'stretch', from: x(mark.from), to: x(mark.to), y: at },
    };
  }
  if (mark.kind !== 'warning') return undefined;
  return {
    text: mark.words,
    hand: 'red',
    anchor: { kind: 'point', at: { x: x(mark.x), y: y(mark.y) }, side: 'right' },
  };
}
