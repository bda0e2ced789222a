// The azeotrope as every figure of a run draws it: a line that runs out to its name and value, with
// the region beyond it hatched where nothing can pass.

import { overLine, rightEnd } from './name-places.js';
import type { Axis, CurveName, FigureSize, MarginName, Mark } from './figure.js';
import type { FigureUnits } from '../rows/shown.js';
import type { AzeotropeRow } from '../rows/equilibrium.js';

/** Marks and names of one line. */
export interface NamedLine {
  readonly marks: readonly Mark[];
  readonly names: readonly CurveName[];
  readonly marginNames: readonly MarginName[];
}

const nothing: NamedLine = { marks: [], names: [], marginNames: [] };

/** The ceiling in a figure of strength. */
export function azeotropeCeiling(
  azeotrope: AzeotropeRow | null,
  units: FigureUnits,
  axes: { readonly x: Axis; readonly y: Axis },
  layout: FigureSize['layout'],
): NamedLine {
  if (azeotrope === null) return nothing;
  const y = units.strength.toShown(azeotrope.strength);
  const text = `azeotrope ${units.strength.withUnit(azeotrope.strength)}`;
  return {
    marks: [
      { kind: 'hatch', key: 'beyond', from: y, to: axes.y.domain[1] },
      { kind: 'level', key: 'azeotrope', hand: 'print', weight: 'azeotrope', y, reach: 'margin' },
    ],
    ...nameOf(layout, { text, note: `no plate passes it at ${azeotrope.pressure}`, y, bold: true }, [
      rightEnd(axes.x, y, 14),
      rightEnd(axes.x, y, -12),
    ]),
  };
}

/** The azeotrope's boiling point in a figure of temperature: a thinner line, nothing hatched. */
export function azeotropeBoils(
  azeotrope: AzeotropeRow | null,
  units: FigureUnits,
  axes: { readonly x: Axis },
  layout: FigureSize['layout'],
): NamedLine {
  if (azeotrope === null) return nothing;
  const y = units.temperature.toShown(azeotrope.temperature_K);
  const text = `azeotrope boils at ${units.temperature.withUnit(azeotrope.temperature_K)}`;
  return {
    marks: [{ kind: 'level', key: 'azeotrope', hand: 'print', weight: 'minor', y, reach: 'margin' }],
    ...nameOf(layout, { text, note: '', y, bold: false }, overLine(axes.x, y)),
  };
}

function nameOf(
  layout: FigureSize['layout'],
  name: { text: string; note: string; y: number; bold: boolean },
  places: CurveName['places'],
): Pick<NamedLine, 'names' | 'marginNames'> {
  if (layout === 'wide') {
    return { names: [], marginNames: [{ key: 'azeotrope', hand: 'print', at: 'margin', ...name }] };
  }
  const { text, bold } = name;
  return { names: [{ key: 'azeotrope', hand: 'print', text, bold, optional: false, places }], marginNames: [] };
}
