// Your guess on any figure: until the answer is asked for, its marks and its name stay away and the guess
// stands in pencil dots, from a known point on; afterwards the answer lies in ink over the dots.

import { valueAt } from './columns.js';
import { nameOf } from './names.js';
import type { Axis, PlotName, DataTable, Drawing, Figure, Mark, Panel } from './figure.js';
import type { Column, ShownQuantity } from '../rows/shown.js';

/** What a figure is guessed on. */
export interface GuessedFigure<Rows> {
  readonly figure: Figure<Rows>;
  /** Key of the panel that is drawn on. */
  readonly panel: string;
  /** Keys of the marks and names that are the answer. */
  readonly hidden: readonly string[];
  /** The answer, SI. */
  readonly answer: (rows: Rows) => { readonly x: Column; readonly y: Column };
}

/** Rows of a guess: those of the figure under it, and what has been drawn; all places SI. */
export interface GuessRows<Rows> {
  readonly rows: Rows;
  readonly x: ShownQuantity;
  readonly y: ShownQuantity;
  /** The known point the guess goes on from. */
  readonly start: Place;
  readonly points: readonly Place[];
  /** The drawing hand's place, when it moves by keys. */
  readonly hand: Place | null;
  readonly answered: boolean;
}

interface Place {
  readonly x: number;
  readonly y: number;
}

/** Share of the axis that the dotted start takes. */
const startShare = 0.07;
const tableRows = 12;

export function guessFigure<Rows>(guessed: GuessedFigure<Rows>): Figure<GuessRows<Rows>> {
  return (given, size) => {
    const drawing = guessed.figure(given.rows, size);
    return {
      ...drawing,
      description: described(drawing.description, given),
      panels: drawing.panels.map((panel) =>
        panel.key === guessed.panel ? drawnOn(panel, drawing, guessed, given) : panel,
      ),
      cursor: null,
      readOut: null,
      table: () => table(drawing, guessed, given),
    };
  };
}

function drawnOn<Rows>(panel: Panel, drawing: Drawing, { hidden }: GuessedFigure<Rows>, given: GuessRows<Rows>): Panel {
  const shown = (key: string): boolean => given.answered || !hidden.includes(key);
  const isAnswer = (mark: Mark): boolean => hidden.includes(mark.key);
  // Asked for without a guess, the answer stands alone.
  const untouched = given.answered && given.points.length === 0;
  const marks = panel.marks.filter(({ key }) => shown(key));
  const names = panel.names.filter(({ key }) => shown(key));
  return {
    ...panel,
    marks: [
      ...marks.filter((mark) => !isAnswer(mark)),
      ...(untouched ? [] : pencil(drawing, panel.y, given)),
      ...marks.filter(isAnswer),
    ],
    names: [...(untouched ? [] : guessNames(drawing.x, panel.y, given)), ...names],
    cursorSeries: [],
  };
}

/** The dots, the known point, and the place of the keys. */
function pencil<Rows>(drawing: Drawing, axis: Axis, given: GuessRows<Rows>): Mark[] {
  const { start, points, hand, answered } = given;
  const line = [start, ...points].map((place) => shownAt(place, given));
  const [from, to] = drawing.x.domain;
  const begin = line[0]!;
  const ends = points.length > 0 ? line : [begin, beginning(begin, axis, from, to)];
  const marks: Mark[] = [
    {
      kind: 'curve',
      key: 'guess',
      hand: 'pencil',
      weight: 'guess',
      shape: 'straight',
      x: ends.map(({ x }) => x),
      y: ends.map(({ y }) => y),
    },
    { kind: 'dot', key: 'guess start', hand: 'ink', ...begin },
  ];
  if (hand !== null && !answered)
    marks.push({ kind: 'dot', key: 'guess hand', hand: 'pencil', ...shownAt(hand, given) });
  return marks;
}

function guessNames<Rows>(x: Axis, axis: Axis, given: GuessRows<Rows>): PlotName[] {
  const { start, points } = given;
  const key = 'guess';
  if (points.length === 0) {
    const end = beginning(shownAt(start, given), axis, x.domain[0], x.domain[1]);
    return [nameOf(key, 'draw on from here', 'pencil', false, { kind: 'point', ...end, side: 'right' })];
  }
  const place = shownAt(points[Math.round(0.75 * (points.length - 1))]!, given);
  const at = (place.x - x.domain[0]) / (x.domain[1] - x.domain[0]);
  return [nameOf(key, 'your guess', 'pencil', false, { kind: 'curve', mark: 'guess', at, side: 'below' })];
}

/** Where the dotted start ends: level, or a little up where it would lie on the axis. */
function beginning(begin: Place, axis: Axis, from: number, to: number): Place {
  const rise = onFoot(begin, axis) ? startShare * (axis.domain[1] - axis.domain[0]) : 0;
  return { x: begin.x + startShare * (to - from), y: begin.y + rise };
}

function onFoot({ y }: Place, { domain: [low, high] }: Axis): boolean {
  return y - low < 0.04 * (high - low);
}

function shownAt<Rows>(place: Place, { x, y }: GuessRows<Rows>): Place {
  return { x: x.toShown(place.x), y: y.toShown(place.y) };
}

function described<Rows>(whole: string, given: GuessRows<Rows>): string {
  const { x, y, start, points, answered } = given;
  const at = (place: Place): string => `${y.withUnit(place.y)} at ${x.withUnit(place.x)}`;
  const last = points.at(-1);
  const guess = last === undefined ? 'nothing is drawn yet' : `your guess runs to ${at(last)}`;
  if (answered) return `${whole} In pencil, ${guess}.`;
  return `A curve to be guessed, from ${at(start)} on; ${guess}. The answer is not shown yet.`;
}

/** Guess and answer at even places; the answer only when it has been asked for. */
function table<Rows>(drawing: Drawing, { panel, answer }: GuessedFigure<Rows>, given: GuessRows<Rows>): DataTable {
  const { x, y, start, points, answered } = given;
  const asked = answer(given.rows);
  const line = [start, ...points];
  const [from, to] = [start.x, asked.x[asked.x.length - 1]!];
  const places = Array.from({ length: tableRows + 1 }, (_, k) => from + ((to - from) * k) / tableRows);
  const [xs, ys] = [line.map((place) => place.x), line.map((place) => place.y)];
  const title = drawing.panels.find(({ key }) => key === panel)!.y.title;
  return {
    caption: answered ? `${title}: your guess and the answer` : `${title}: your guess`,
    columns: [
      { title: drawing.x.title, unit: x.unit },
      { title: 'your guess', unit: y.unit },
      ...(answered ? [{ title: 'answer', unit: y.unit }] : []),
    ],
    rows: places.map((place) => [
      x.text(place),
      place > xs.at(-1)! * (1 + 1e-9) ? '–' : y.text(valueAt(xs, ys, place)),
      ...(answered ? [y.text(valueAt(asked.x, asked.y, place))] : []),
    ]),
  };
}
