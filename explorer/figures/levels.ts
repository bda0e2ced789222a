// Level lines and their names: a ceiling with the region beyond it hatched, a line that runs out to the margin, one that
// stays in the plot.

import type { AzeotropeRow } from '../rows/equilibrium.js';
import type { RunLevel } from '../rows/run.js';
import type { FigureUnits } from '../rows/shown.js';
import type { Axis, Mark, PlotName } from './figure.js';

/** The marks of a level, `at` in shown units. */
export function levelMarks({ key, hand, at, form }: RunLevel, y: Axis): Mark[] {
  const reach = form === 'inside' ? 'plot' : 'margin';
  const line: Mark = { kind: 'level', key, hand, weight: form === 'ceiling' ? 'azeotrope' : 'minor', y: at, reach };
  return form === 'ceiling' ? [{ kind: 'hatch', key: 'beyond', from: at, to: y.domain[1] }, line] : [line];
}

export function levelName({ key, label, note, hand, form }: RunLevel): PlotName {
  const of = { kind: 'level', mark: key, side: 'right' } as const;
  return { key, text: label, note, hand, bold: form === 'ceiling', optional: false, of };
}

/** The ceiling of a figure of strength, marks and name; nothing where there is no azeotrope. */
export function ceilingOf(
  azeotrope: AzeotropeRow | null,
  units: FigureUnits,
  y: Axis,
): { readonly marks: readonly Mark[]; readonly names: readonly PlotName[] } {
  if (azeotrope === null) return { marks: [], names: [] };
  const level: RunLevel = {
    key: 'azeotrope',
    label: `azeotrope ${units.strength.withUnit(azeotrope.strength)}`,
    note: `no plate passes it at ${azeotrope.pressure}`,
    hand: 'print',
    at: units.strength.toShown(azeotrope.strength),
    form: 'ceiling',
  };
  return { marks: levelMarks(level, y), names: [levelName(level)] };
}
