// Up a column at one moment: strength of liquid and vapour, or temperature, with the plates upright as they stand. Two
// figures of one pair; what stood there at an earlier moment in pencil.

import type { ColumnProfileRows, ProfileMoment } from '../rows/column-profile.js';
import { fixedAxis, roundAxis } from './axes.js';
import type { Axis, Drawing, FigureSize, Mark, PlotName } from './figure.js';
import { nameOf } from './names.js';
import type { Hand } from '../rows/shown.js';

const height = { wide: 320, narrow: 280 };
/** With more stages than this they are no longer marked one by one. */
const mostDots = 24;

/** Alcohol up the column: liquid of each stage and the vapour that leaves it. */
export function columnStrength(rows: ColumnProfileRows, size: FigureSize): Drawing {
  const { strength } = rows.units;
  const top = Math.round(strength.toShown(1));
  const axis = fixedAxis({ title: 'strength', unit: strength.unit }, [0, top], top / 5, 0);
  const marks: Mark[] = [];
  const names: PlotName[] = [];
  rows.moments.forEach((moment, index) => {
    const liquid = moment.liquid.map(strength.toShown);
    add({ moment, index, x: liquid, key: 'liquid', text: 'liquid', axis }, marks, names);
    if (index > 0 || moment.stage.length < 2) return;
    const vapour = moment.vapour.map(strength.toShown);
    marks.unshift(curveOf('vapour', 'ink', 'second', vapour, moment.stage));
    names.push(beside('vapour', 'vapour', 'ink', vapour, axis, 'right'));
  });
  return drawing(rows, size, axis, { marks, names }, 'Strength', (moment, i) => strength.withUnit(moment.liquid[i]!));
}

/** Temperature up the column. */
export function columnTemperature(rows: ColumnProfileRows, size: FigureSize): Drawing {
  const { temperature } = rows.units;
  const now = rows.moments[0]?.temperature_K ?? [];
  const extent = [Math.min(rows.range_K[0], ...now), Math.max(rows.range_K[1], ...now)].map(temperature.toShown);
  const axis = roundAxis({ title: 'temperature', unit: temperature.unit }, [extent[0]!, extent[1]!], {
    steps: 5,
    ticks: 5,
  });
  const marks: Mark[] = [];
  const names: PlotName[] = [];
  // What is colder than the axis is drawn for is an earlier moment of heating up: it is left out.
  const shown = rows.moments.filter((moment) =>
    moment.temperature_K.every((at) => temperature.toShown(at) >= axis.domain[0]),
  );
  shown.forEach((moment, index) => {
    const x = moment.temperature_K.map(temperature.toShown);
    add({ moment, index, x, key: 'temperature', text: `at ${moment.label}`, axis }, marks, names);
  });
  return drawing(rows, size, axis, { marks, names }, 'Temperature', (moment, i) =>
    temperature.withUnit(moment.temperature_K[i]!),
  );
}

interface Line {
  readonly moment: ProfileMoment;
  readonly index: number;
  readonly x: readonly number[];
  readonly key: string;
  readonly text: string;
  readonly axis: Axis;
}

/** The first moment in ink with a dot a stage, the others in pencil under it. */
function add({ moment, index, x, key, text, axis }: Line, marks: Mark[], names: PlotName[]): void {
  if (index > 0) {
    if (x.length < 2) return;
    marks.unshift(curveOf(`${key} ${String(index)}`, 'pencil', 'pencil', x, moment.stage));
    names.push(beside(`${key} ${String(index)}`, `at ${moment.label}`, 'pencil', x, axis, 'left'));
    return;
  }
  marks.push(curveOf(key, 'ink', 'result', x, moment.stage));
  if (x.length <= mostDots) {
    x.forEach((at, i) =>
      marks.push({ kind: 'dot', key: `${key} ${String(moment.stage[i])}`, hand: 'ink', x: at, y: moment.stage[i]! }),
    );
  }
  names.push(beside(key, text, 'ink', x, axis, 'left'));
}

function curveOf(
  key: string,
  hand: Hand,
  weight: 'result' | 'second' | 'pencil',
  x: readonly number[],
  y: readonly number[],
): Mark {
  return { kind: 'curve', key, hand, weight, shape: 'straight', x, y };
}

/** A name beside its curve, about a third up. */
function beside(
  key: string,
  text: string,
  hand: Hand,
  x: readonly number[],
  axis: Axis,
  side: 'left' | 'right',
): PlotName {
  const [low, high] = axis.domain;
  const at = ((x[Math.round(0.35 * (x.length - 1))] ?? low) - low) / (high - low);
  return nameOf(key, text, hand, hand === 'ink' && key !== 'vapour', { kind: 'curve', mark: key, at, side });
}

function drawing(
  rows: ColumnProfileRows,
  size: FigureSize,
  x: Axis,
  drawn: { readonly marks: readonly Mark[]; readonly names: readonly PlotName[] },
  quantity: string,
  text: (moment: ProfileMoment, i: number) => string,
): Drawing {
  const plates = rows.kind === 'plates';
  const step = Math.max(1, Math.ceil(rows.stages / 6));
  const y = fixedAxis(
    { title: plates ? 'Plate' : 'Stage of the packing', unit: `0 is the ${rows.base}` },
    // A bare pot is a single point: its axis still needs a length.
    [0, Math.max(1, rows.stages)],
    step,
    0,
  );
  return {
    description: describe(rows, quantity, text),
    x,
    panels: [
      {
        key: 'profile',
        height: height[size.layout],
        y,
        marks: drawn.marks,
        names: drawn.names,
        cursorSeries: [],
        framed: false,
        rightScale: null,
      },
    ],
    rightRoom: 0,
    cursor: null,
    readOut: null,
    table: () => ({
      caption: `${quantity} up the column`,
      columns: [
        { title: plates ? 'plate' : 'stage', unit: '' },
        ...rows.moments.map(({ label }) => ({ title: `at ${label}`, unit: '' })),
      ],
      rows: Array.from({ length: rows.stages + 1 }, (_, stage) => [
        stageName(rows, stage),
        ...rows.moments.map((moment) => textAt(moment, stage, text)),
      ]),
    }),
  };
}

function textAt(moment: ProfileMoment, stage: number, text: (moment: ProfileMoment, i: number) => string): string {
  const i = moment.stage.indexOf(stage);
  return i < 0 ? 'dry' : text(moment, i);
}

function stageName({ base }: ColumnProfileRows, stage: number): string {
  return stage === 0 ? base : String(stage);
}

function describe(
  rows: ColumnProfileRows,
  quantity: string,
  text: (moment: ProfileMoment, i: number) => string,
): string {
  const now = rows.moments[0];
  if (now === undefined) return `${quantity} up the column of ${String(rows.stages)} stages: no moment is chosen.`;
  const stages = [...new Set([0, Math.round(rows.stages / 2), rows.stages])];
  const word = rows.kind === 'plates' ? 'plate' : 'stage';
  const parts = stages.map(
    (stage) => `${stage === 0 ? rows.base : `${word} ${String(stage)}`} ${textAt(now, stage, text)}`,
  );
  return `${quantity} up the column, ${now.label} after the start: ${parts.join(', ')}.`;
}
