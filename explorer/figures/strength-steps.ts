// The staircase of a column in the strengths a distiller measures: what rises from each liquid, condensed,
// is the liquid of the next plate. Whole, or the last corner alone.

import type { StrengthStepsRows } from '../rows/course.js';
import { fixedAxis, roundAxis } from './axes.js';
import { valueAt } from './columns.js';
import type { Axis, CurveName, DataTable, Drawing, FigureSize, Mark, NamePlace } from './figure.js';
import type { Column } from '../rows/shown.js';
import { azeotropeLine } from './vapour-over-liquid.js';

/** Side of the last corner, % vol / 100. */
const cornerSide = 0.1;

/** The whole way from water to pure alcohol. */
export function strengthSteps(rows: StrengthStepsRows, size: FigureSize): Drawing {
  const top = Math.round(rows.units.strength.toShown(1));
  const axis = roundAxis({ title: 'alcohol in the liquid', unit: rows.units.strength.unit }, [0, top], {
    steps: 5,
    ticks: 5,
  });
  return drawn(rows, size, axis, 'Strength of the vapour, condensed');
}

/** The last tenth, ten times larger. */
export function strengthCorner(rows: StrengthStepsRows, size: FigureSize): Drawing {
  const { toShown, unit } = rows.units.strength;
  const window = [Math.round(toShown(1 - cornerSide)), Math.round(toShown(1))] as const;
  const axis = fixedAxis({ title: 'alcohol in the liquid', unit }, window, (window[1] - window[0]) / 5, 0);
  return drawn(rows, size, axis, 'The last tenth');
}

function drawn(rows: StrengthStepsRows, size: FigureSize, x: Axis, title: string): Drawing {
  const { toShown } = rows.units.strength;
  const column = (values: Column): number[] => Array.from(values, toShown);
  const [liquid, vapour] = [column(rows.liquidStrength), column(rows.vapourStrength)];
  const [low, high] = x.domain;
  const stair = corners(toShown(rows.kettle), column(rows.steps));
  const marks: Mark[] = [
    {
      kind: 'curve',
      key: 'same',
      hand: 'print',
      weight: 'diagonal',
      shape: 'straight',
      x: [low, high],
      y: [low, high],
    },
    { kind: 'curve', key: 'vapour', hand: 'print', weight: 'equilibrium', shape: 'monotone', x: liquid, y: vapour },
    { kind: 'curve', key: 'steps', hand: 'ink', weight: 'staircase', shape: 'straight', ...stair },
  ];
  const at = (share: number): number => low + share * (high - low);
  const beside = (px: number, dx: number, dy: number, anchor: NamePlace['anchor']): NamePlace => ({
    x: px,
    y: valueAt(liquid, vapour, px),
    dx,
    dy,
    anchor,
  });
  const names: CurveName[] = [
    name('vapour', 'what rises', false, [
      ...[0.35, 0.3].map((s) => beside(at(s), 0, -16, 'middle')),
      ...[0.2, 0.12, 0.3].map((s) => beside(at(s), -8, -10, 'end')),
    ]),
    name(
      'same',
      size.layout === 'wide' ? 'condensed, it is the next liquid' : 'condensed',
      false,
      [0.5, 0.4, 0.6].map((s) => ({ x: at(s), y: at(s), dx: 12, dy: 14, anchor: 'start' })),
    ),
  ];
  const ceiling = azeotropeLine(rows, x, size.width, false);
  marks.push(...ceiling.marks);
  names.push(...ceiling.names);
  return {
    description: describe(rows),
    x,
    panels: [
      {
        key: 'steps',
        height: size.width,
        y: { ...x, title },
        marks,
        names: [...names, ...numbers(rows, x)],
        marginNames: [],
        cursorSeries: [],
        framed: true,
        rightScale: null,
      },
    ],
    rightRoom: 0,
    cursor: null,
    readOut: null,
    table: () => table(rows),
  };
}

/** Up to what rises, over to the liquid it becomes, and so on. */
function corners(kettle: number, steps: readonly number[]): { x: number[]; y: number[] } {
  const x = [kettle];
  const y = [0];
  let liquid = kettle;
  for (const rises of steps) {
    x.push(liquid, rises);
    y.push(rises, rises);
    liquid = rises;
  }
  return { x, y };
}

/** The kettle and the plates by number, as long as they can be told apart. */
function numbers(rows: StrengthStepsRows, axis: Axis): CurveName[] {
  const { toShown } = rows.units.strength;
  const [low, high] = axis.domain;
  const names: CurveName[] = [];
  let liquid = toShown(rows.kettle);
  Array.from(rows.steps).forEach((strength, plate) => {
    const rises = toShown(strength);
    const seen = liquid >= low && (rises - liquid) / (high - low) > 0.045;
    const places: NamePlace[] = [
      { x: liquid, y: rises, dx: -6, dy: -10, anchor: 'end' },
      { x: liquid, y: rises, dx: 8, dy: 12, anchor: 'start' },
    ];
    if (seen) names.push(name(`step ${plate}`, plate === 0 ? 'kettle' : String(plate), true, places, 'ink'));
    liquid = rises;
  });
  return names;
}

function name(
  key: string,
  text: string,
  bold: boolean,
  places: readonly NamePlace[],
  hand: 'print' | 'ink' = 'print',
): CurveName {
  return { key, text, hand, bold, optional: hand === 'ink', places };
}

function table(rows: StrengthStepsRows): DataTable {
  const { text, unit } = rows.units.strength;
  const steps = Array.from(rows.steps);
  return {
    caption: 'The steps in numbers',
    columns: [
      { title: 'boils', unit: '' },
      { title: 'liquid', unit },
      { title: 'vapour, condensed', unit },
    ],
    rows: steps.map((rises, plate) => [
      plate === 0 ? 'kettle' : `plate ${plate}`,
      text(plate === 0 ? rows.kettle : steps[plate - 1]!),
      text(rises),
    ]),
  };
}

function describe(rows: StrengthStepsRows): string {
  const { withUnit } = rows.units.strength;
  const plates = rows.steps.length - 1;
  const first = rows.steps[0];
  const last = rows.steps[plates];
  if (first === undefined || last === undefined) return `A kettle of ${withUnit(rows.kettle)} and no step.`;
  const over = plates === 0 ? '' : `, and from plate ${plates} ${withUnit(last)}`;
  return `A staircase between liquid and vapour: from a kettle of ${withUnit(rows.kettle)} rises ${withUnit(first)}${over}.`;
}
