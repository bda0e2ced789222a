// The staircase of a column in the strengths a distiller measures: what rises from each liquid, condensed,
// is the liquid of the next plate. Whole, or the last corner alone.

import type { StrengthStepsRows } from '../rows/course.js';
import { fixedAxis, roundAxis } from './axes.js';
import type { Axis, PlotName, DataTable, Drawing, FigureSize, Mark } from './figure.js';
import type { Column } from '../rows/shown.js';
import { nameOf, printedName } from './names.js';
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
  const names: PlotName[] = [
    printedName('vapour', 'what rises', 0.25, 'above'),
    printedName('same', size.layout === 'wide' ? 'condensed, it is the next liquid' : 'condensed', 0.5, 'right'),
  ];
  const ceiling = azeotropeLine(rows, false);
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
function numbers(rows: StrengthStepsRows, axis: Axis): PlotName[] {
  const { toShown } = rows.units.strength;
  const [low, high] = axis.domain;
  const names: PlotName[] = [];
  let liquid = toShown(rows.kettle);
  Array.from(rows.steps).forEach((strength, plate) => {
    const rises = toShown(strength);
    const seen = liquid >= low && (rises - liquid) / (high - low) > 0.045;
    const text = plate === 0 ? 'kettle' : String(plate);
    const of = { kind: 'point', x: liquid, y: rises, side: 'left' } as const;
    if (seen) names.push({ ...nameOf(`step ${plate}`, text, 'ink', true, of), optional: true });
    liquid = rises;
  });
  return names;
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
