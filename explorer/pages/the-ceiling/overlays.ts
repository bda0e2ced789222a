// What the reader may lay over the figures of 'The ceiling': published points and other models, with the
// words and notes that belong to them. Loaded when first asked for.

import { html, nothing } from 'lit';
import { boilingDiagram } from '../../figures/boiling-diagram.js';
import type { Figure } from '../../figures/figure.js';
import { lastCorner } from '../../figures/last-corner.js';
import { boilingPointsOver, modelsOver, vapourPointsOver } from '../../figures/laid-over.js';
import type { BoilingDiagramRows, ModelRows, StaircaseDiagramRows } from '../../rows/equilibrium.js';
import { xyDiagram } from '../../figures/xy-diagram.js';
import { azeotropeRow, curveRows, pressureInWords } from '../../state/equilibrium-rows.js';
import { measuredRows } from '../../state/measured-rows.js';
import { remembered } from '../../state/memo.js';
import { fixed, joined } from '../../text/format.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import type { EquilibriumAnswer } from '../../worker/kinds/equilibrium.js';
import { measuredNote } from '../../entries/measured-notes.js';
import { modelName, print } from '../../entries/words.js';

export type Overlay = 'measured' | 'models';
export type Overlays = typeof import('./overlays.js');

/** A figure with the rows it takes. */
export interface Laid {
  readonly figure: Figure<never>;
  readonly rows: unknown;
}

/** The models beside the one used here. */
interface OtherModels {
  readonly equilibrium: EquilibriumAnswer;
  readonly nrtl: EquilibriumAnswer;
  readonly wilson: EquilibriumAnswer;
  readonly raoult: EquilibriumAnswer;
}

// One function each, so that a figure is not taken for another.
const compared = modelsOver(lastCorner);
const over = {
  xy: vapourPointsOver(xyDiagram),
  corner: vapourPointsOver(lastCorner),
  compared: vapourPointsOver(compared),
  plates: vapourPointsOver(xyDiagram),
  boiling: boilingPointsOver(boilingDiagram),
};

const modelRows = remembered(
  ({ nrtl, wilson, raoult }: OtherModels, withRaoult: boolean, pressure: number, units: UnitSystem): ModelRows[] =>
    (withRaoult ? [nrtl, wilson, raoult] : [nrtl, wilson]).map((answer) => ({
      label: modelName(answer.model.name),
      curve: curveRows(answer.slice),
      azeotrope: azeotropeRow(answer, pressure, units.pressure),
    })),
);

/** The x-y diagram and its last corner with what is laid over them; the same for the same arguments. */
export const overStaircase = remembered(
  (
    data: StaircaseDiagramRows,
    laid: readonly Overlay[],
    answers: OtherModels,
    pressure: number,
    units: UnitSystem,
  ): { readonly xy: Laid; readonly corner: Laid } => {
    const points = laid.includes('measured');
    const corner: Laid = laid.includes('models')
      ? {
          figure: compared,
          rows: { under: data, models: modelRows(answers, data.raoult === null, pressure, units) },
        }
      : { figure: lastCorner, rows: data };
    if (!points) return { xy: { figure: xyDiagram, rows: data }, corner };
    return {
      xy: { figure: over.xy, rows: { under: data, measured: measuredRows } },
      corner: {
        figure: corner.figure === compared ? over.compared : over.corner,
        rows: { under: corner.rows, measured: measuredRows },
      },
    };
  },
);

/** The x-y diagram of the plates at work with what is laid over it. */
export const overPlates = remembered((data: StaircaseDiagramRows, laid: readonly Overlay[]): Laid =>
  laid.includes('measured')
    ? { figure: over.plates, rows: { under: data, measured: measuredRows } }
    : { figure: xyDiagram, rows: data },
);

/** The boiling diagram with what is laid over it. */
export const overBoiling = remembered((data: BoilingDiagramRows, laid: readonly Overlay[]): Laid =>
  laid.includes('measured')
    ? { figure: over.boiling, rows: { under: data, measured: measuredRows } }
    : { figure: boilingDiagram, rows: data },
);

/** Sources of the points, beside the words to press. */
export function notes(laid: readonly Overlay[], pressure: number, units: UnitSystem): unknown {
  if (!laid.includes('measured')) return nothing;
  const here = pressureInWords(pressure, units.pressure);
  return html`<aside class="notes beside-words">${measuredNote(here === joined('1', 'atm') ? null : here)}</aside>`;
}

/** How far apart the models put the ceiling. */
export function modelWords(laid: readonly Overlay[], answers: OtherModels, units: UnitSystem): unknown {
  if (!laid.includes('models')) return nothing;
  const { equilibrium, nrtl, wilson, raoult } = answers;
  const { toShown, unit } = units.strength;
  const found = [equilibrium, nrtl, wilson].flatMap(({ model, azeotrope }) =>
    azeotrope === null
      ? []
      : [{ name: modelName(model.name), at: toShown(azeotrope.strength), x: azeotrope.moleFraction }],
  );
  const none = [equilibrium, nrtl, wilson, raoult].filter(({ azeotrope }) => azeotrope === null);
  const spread = (of: (one: (typeof found)[number]) => number): number =>
    Math.max(...found.map(of)) - Math.min(...found.map(of));
  return html`<p class="overlay-words">
    ${found.map(
      ({ name, at }, i) =>
        html`${i === 0 ? '' : i === found.length - 1 ? ' and ' : ', '}${name}${i === 0 ? ' puts the ceiling' : ''} at
        ${print(i === found.length - 1 ? joined(fixed(at, 2), unit) : fixed(at, 2))}`,
    )}:
    ${print(
      joined(
        fixed(
          spread(({ at }) => at),
          2,
        ),
        unit,
      ),
    )}
    apart, or
    ${print(
      fixed(
        spread(({ x }) => x),
        4,
      ),
    )}
    in mole fraction. ${none.map(({ model }) => `${modelName(model.name)} knows none. `)}
  </p>`;
}
