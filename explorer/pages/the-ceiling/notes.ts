// Notes in the margin of 'The ceiling'.

import { html, nothing } from 'lit';
import { fromSI, type PlainSolution } from '#lib/index.js';
import { fixed, joined, trimmed } from '../../text/format.js';
import { cautions } from '../../entries/cautions.js';
import { modelName, source } from '../../entries/words.js';

/** The three hands, said once. */
export const hands = html`<p>
  <b class="ink">Ink</b> is yours: what you set, and what follows from it. <b>Print</b> holds for every still.
  <b class="pencil">Pencil</b> is what you had before.
</p>`;

export const spoutCaution = cautions.spout;

/** What is simplified in the run of this page, and what stands on its plates. */
export function inventedStill({ problem: { still, model } }: Pick<PlainSolution, 'problem'>): unknown {
  const { column } = still;
  const plates =
    column.kind === 'plates' && column.holdUp.kind === 'volume'
      ? html`A plate holds ${joined(trimmed(column.holdUp.volume_m3 * 1e6, 0), 'mL')} of liquid and costs
        ${joined(fixed(fromSI(column.drop_Pa, 'kPa'), 2), 'kPa')} of pressure.`
      : nothing;
  return html`<p>
    The charge and the still are invented; all that nobody set stands at the foot of the page. ${plates}
    ${model === 'equalFlows' ? html`Each mole of vapour that condenses on a plate raises another, and no wall loses heat.` : nothing}
  </p>`;
}

export function modelSource(model: { readonly name: string; readonly source: string }): unknown {
  return source(html`Equilibrium by ${modelName(model.name)}: ${model.source}.`);
}

export const stairNote = html`<p>
  These steps are ideal and everything is sent back, so each comes down to the diagonal. No column does better.
</p>`;

export const platesNote = html`<p>
  Move the cursor of the first figure: kettle, plates and head move with it. The kettle stands under the weight of all
  plates and boils a little hotter than the curve at head pressure says.
</p>`;

/** The measured azeotrope beside the model's own, which a model may miss a little. */
export function azeotropeSource(model: { readonly moleFraction: number } | null, pressure: string): unknown {
  const own = model === null ? 'knows none' : `puts it at ${fixed(model.moleFraction, 4)}`;
  return source(
    html`Measured at 1 atm: mole fraction 0.8943 at 78.15 °C (Carey and Lewis, 1932). The model drawn here ${own} at
    ${pressure}. Under vacuum it moves up, and far down it is gone; no still on these pages runs there.`,
  );
}

export const modelNote = html`<p>
  All but Raoult’s law are fitted to measurements. Where a model puts the azeotrope a little lower, the last steps are
  many more, or never arrive.
</p>`;

export const tableNote = html`<p>
  Plates grow down the table, reflux along it. Reflux costs hours and heat: at 3 : 1 four parts of vapour are boiled for
  each part kept.
</p>`;
