// What can be laid over a finished figure: published points, and in the last corner the curves of other
// models. Each takes a figure and gives a figure; the page asks for them only when the reader does.

import type { PlotName, DataTable, Drawing, Figure, Mark, Named } from './figure.js';
import type { FigureUnits } from '../rows/shown.js';
import type { AzeotropeRow, MeasuredRows, ModelRows, StaircaseDiagramRows } from '../rows/equilibrium.js';
import { nameOf } from './names.js';
import { fixed } from '../text/format.js';

/** Rows of a figure with what is laid over it. */
export interface LaidOver<Rows> {
  readonly under: Rows;
  readonly measured: readonly MeasuredRows[];
}

/** An x-y diagram with measured vapour over measured liquid. */
export function vapourPointsOver<Rows>(figure: Figure<Rows>): Figure<LaidOver<Rows>> {
  return ({ under, measured }, size) => {
    const marks = measured.map((set): Mark => ({
      ...pointsOf(set, set.set),
      x: set.liquidMoleFraction,
      y: set.vapourMoleFraction,
    }));
    return over(figure(under, size), marks, measured, (set, i) => [
      'measured',
      fixed(set.liquidMoleFraction[i]!, 4),
      fixed(set.vapourMoleFraction[i]!, 4),
      '',
    ]);
  };
}

/** A boiling diagram with measured liquid and vapour at their temperatures. */
export function boilingPointsOver<Rows extends { readonly units: FigureUnits }>(
  figure: Figure<Rows>,
): Figure<LaidOver<Rows>> {
  return ({ under, measured }, size) => {
    const { toShown } = under.units.temperature;
    const marks = measured.flatMap((set): Mark[] => {
      const y = Array.from(set.temperature_K, toShown);
      return [
        { ...pointsOf(set, `${set.set} liquid`), x: set.liquidMoleFraction, y },
        { ...pointsOf(set, `${set.set} vapour`), x: set.vapourMoleFraction, y },
      ];
    });
    return over(figure(under, size), marks, measured, (set, i) => [
      fixed(toShown(set.temperature_K[i]!), 2),
      fixed(set.liquidMoleFraction[i]!, 4),
      fixed(set.vapourMoleFraction[i]!, 4),
    ]);
  };
}

/** The last corner with other models: thin lines named where they meet the diagonal, instead of the steps' names. */
export function modelsOver(
  figure: Figure<StaircaseDiagramRows>,
): Figure<{ readonly under: StaircaseDiagramRows; readonly models: readonly ModelRows[] }> {
  return ({ under, models }, size) => {
    const drawing = figure(under, size);
    const panel = drawing.panels[0]!;
    const marks = models.flatMap((model) => modelMarks(model));
    const stays = panel.names.filter(({ key }) => !key.startsWith('step ') && key !== 'azeotrope');
    const own = under.azeotrope === null ? [] : [nameOfModel('used here', under.azeotrope, under.units, true)];
    const others = models.map((model): PlotName =>
      model.azeotrope === null
        ? { ...nameOf(`model ${model.label}`, model.label, 'print', false, besideCurve(model)), optional: true }
        : nameOfModel(model.label, model.azeotrope, under.units, false),
    );
    const said = models.map(({ label, azeotrope }) =>
      azeotrope === null ? `${label} knows none` : `${label} puts it at ${fixed(azeotrope.moleFraction, 4)}`,
    );
    return {
      ...drawing,
      description: joined(drawing.description, said.join(', ')),
      panels: [
        {
          ...panel,
          marks: [
            ...marks.filter(({ kind }) => kind === 'curve'),
            ...panel.marks,
            ...marks.filter(({ kind }) => kind === 'dot'),
          ],
          names: [...stays, ...own, ...others],
        },
      ],
    };
  };
}

function modelMarks({ label, curve, azeotrope }: ModelRows): Mark[] {
  const { liquidMoleFraction: x, vapourMoleFraction: y } = curve;
  const weight = azeotrope === null ? 'raoult' : 'third';
  const line: Mark = { kind: 'curve', key: label, hand: 'print', weight, shape: 'monotone', x, y };
  if (azeotrope === null) return [line];
  const at = azeotrope.moleFraction;
  return [line, { kind: 'dot', key: label, hand: 'print', x: at, y: at }];
}

/** A model is named at its azeotrope, or beside its curve where it has none. */
function nameOfModel(
  label: string,
  { moleFraction: at, strength }: AzeotropeRow,
  units: FigureUnits,
  bold: boolean,
): PlotName {
  const text = `${label} ${fixed(units.strength.toShown(strength), 2)}`;
  return nameOf(`model ${label}`, text, 'print', bold, { kind: 'point', x: at, y: at, side: 'left' });
}

function besideCurve({ label }: ModelRows): Named {
  return { kind: 'curve', mark: label, at: 0.3, side: 'right' };
}

function pointsOf({ form, filled }: MeasuredRows, key: string): Extract<Mark, { kind: 'points' }> {
  return { kind: 'points', key, form, filled, x: [], y: [] };
}

function over(
  drawing: Drawing,
  marks: readonly Mark[],
  measured: readonly MeasuredRows[],
  row: (set: MeasuredRows, i: number) => readonly string[],
): Drawing {
  const [panel, ...others] = drawing.panels;
  const said = measured.map((set) => `${set.liquidMoleFraction.length} of ${set.source}`);
  return {
    ...drawing,
    description: joined(drawing.description, `with measured points, ${said.join('; ')}`),
    panels: [{ ...panel!, marks: [...panel!.marks, ...marks] }, ...others],
    table: () => tableWith(drawing.table(), measured, row),
  };
}

/** The rows of the figure, then every point with its source. */
function tableWith(
  table: DataTable,
  measured: readonly MeasuredRows[],
  row: (set: MeasuredRows, i: number) => readonly string[],
): DataTable {
  return {
    ...table,
    columns: [...table.columns, { title: 'from', unit: '' }],
    rows: [
      ...table.rows.map((cells) => [...cells, 'the model']),
      ...measured.flatMap((set) => Array.from(set.liquidMoleFraction, (_, i) => [...row(set, i), set.source])),
    ],
  };
}

/** One sentence with more at its end. */
function joined(sentence: string, more: string): string {
  return `${sentence.replace(/\.$/, '')}; ${more}.`;
}
