// Alcohol in the vapour against alcohol in the liquid: the equilibrium curve, the diagonal, and the
// staircase that climbs between them from the kettle as it is now.

import { fixedAxis } from './axes.js';
import type { PlotName, Drawing, FigureSize, Mark } from './figure.js';
import { cornerWindow } from './last-corner-window.js';
import type { StaircaseDiagramRows } from '../rows/equilibrium.js';
import { staircaseMarks, staircaseTable } from './staircase-marks.js';
import { nameOf, printedName } from './names.js';
import { fixed } from '../text/format.js';

const x = fixedAxis({ title: 'alcohol in the liquid', unit: 'mole fraction' }, [0, 1], 0.2, 1);
const y = fixedAxis({ title: 'Alcohol in the vapour', unit: 'mole fraction' }, [0, 1], 0.2, 1);

/** Ticks of a whole diagram read 0 and 1, not 0.0 and 1.0. */
const tickText = (shown: number): string => String(Math.round(shown * 10) / 10);

export function xyDiagram(rows: StaircaseDiagramRows, size: FigureSize): Drawing {
  const [from, to] = cornerWindow(rows.azeotrope);
  const marks: Mark[] = [...staircaseMarks(rows), { kind: 'box', key: 'corner', x: [from, to], y: [from, to] }];
  return {
    description: describe(rows),
    x: { ...x, tickText },
    panels: [
      {
        key: 'xy',
        height: size.width,
        y: { ...y, tickText },
        marks,
        names: [...printedNames(rows, size), ...inkNames(rows)],
        cursorSeries: [],
        framed: true,
        rightScale: null,
      },
    ],
    rightRoom: 0,
    cursor: null,
    readOut: null,
    table: () => staircaseTable(rows),
  };
}

function printedNames(rows: StaircaseDiagramRows, size: FigureSize): PlotName[] {
  const names = [
    nameOf('corner', 'the last corner', 'print', false, { kind: 'box', mark: 'corner' }),
    printedName('equilibrium', 'equilibrium curve', 0.42, 'left'),
    printedName('diagonal', size.layout === 'wide' ? 'vapour as strong as liquid' : 'vapour = liquid', 0.5, 'right'),
  ];
  return rows.raoult === null ? names : [...names, printedName('raoult', 'by Raoult’s law', 0.6, 'left')];
}

function inkNames(rows: StaircaseDiagramRows): PlotName[] {
  const { liquidMoleFraction: liquid, vapourMoleFraction: vapour } = rows.staircase;
  const kettle = liquid[0] ?? 0;
  const text = `kettle, ${rows.units.strength.withUnit(rows.kettleStrength)}`;
  const names: PlotName[] = [
    nameOf('kettle', text, 'ink', false, { kind: 'point', x: kettle, y: 0, side: kettle < 0.6 ? 'right' : 'left' }),
  ];
  const line = rows.operatingLine;
  if (line !== null) {
    names.push(
      nameOf('operating', line.label, 'ink', false, { kind: 'curve', mark: 'operating', at: 0.3, side: 'right' }),
    );
  }
  // Numbers stand left of the corners, by the edge right of them; where the steps grow too small to be told apart they are left out.
  for (let k = 0; k < liquid.length; k++) {
    const width = k === 0 ? 1 : vapour[k]! - vapour[k - 1]!;
    if (width < 0.045) break;
    const of = { kind: 'point', x: liquid[k]!, y: vapour[k]!, side: 'left' } as const;
    names.push({ ...nameOf(`step ${k + 1}`, String(k + 1), 'ink', true, of), optional: true });
  }
  return names;
}

function describe(rows: StaircaseDiagramRows): string {
  const { strength: steps } = rows.staircase;
  const { withUnit } = rows.units.strength;
  const last = steps.length > 0 ? `, step ${steps.length} reaches ${withUnit(steps[steps.length - 1]!)}` : '';
  const first = steps.length > 0 ? `: step 1 gives ${withUnit(steps[0]!)}${last}` : '';
  const stop =
    rows.azeotrope === null
      ? 'the curve stays above the diagonal to the end'
      : `curve and diagonal meet at a mole fraction of ${fixed(rows.azeotrope.moleFraction, 3)}`;
  return `Alcohol in the vapour against alcohol in the liquid, mole fractions; from a kettle of ${withUnit(rows.kettleStrength)} the staircase climbs in ${steps.length} steps${first}; ${stop}.`;
}
