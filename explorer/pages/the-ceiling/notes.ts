// Notes in the margin of 'The ceiling'.

import { html, nothing } from 'lit';
import { fromSI, type PlainSolution, type Uncertain } from '#lib/index.js';
import { ceilingQuestions } from '../../state/derive.js';
import type { Scenario } from '../../state/scenario.js';
import { fixed, joined, trimmed } from '../../text/format.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import type { SurenessAnswer, SurenessQuestion } from '../../worker/kinds/sureness.js';
import { cautions } from '../../entries/cautions.js';
import type { Here } from '../../entries/entry.js';
import { modelName, plusMinus, source } from '../../entries/words.js';

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

/** Asked once the figures stand: how sure the model is of the boil of the charge and of the ceiling. */
export function surenessAsks(scenario: Scenario): { readonly sureness: SurenessQuestion } {
  const { pressure_Pa, fromStrength } = ceilingQuestions(scenario).stages;
  return { sureness: { kind: 'sureness', pressure_Pa, fromStrength } };
}

/** The first vapour and the boil of the charge, with the equilibrium's own standard errors. */
export function firstVapourNote({ later, units }: Pick<Here, 'later' | 'units'>): unknown {
  const known = surenessIn(later);
  const { strength, temperature } = units;
  return sure(
    html`the first step is ${inShown(known?.firstVapour, strength)}, and the charge boils at
    ${inShown(known?.boils_K, temperature)}`,
  );
}

/** The ceiling with the equilibrium's own standard error. */
export function ceilingNote({ later, units }: Pick<Here, 'later' | 'units'>): unknown {
  const ceiling = surenessIn(later)?.ceiling;
  if (ceiling !== undefined && Number.isNaN(ceiling.value)) return nothing;
  return sure(html`the ceiling is ${inShown(ceiling, units.strength)}`);
}

function sure(words: unknown): unknown {
  return html`<p>
    <b>How sure.</b> By the scatter of the measurements behind the model ${words}: one standard error, of the
    equilibrium alone. What a gauge misreads, and what is not known of a still, is not in it.
  </p>`;
}

/** A result with its error in the unit shown; as wide while it is on its way, so that nothing moves when it comes. */
function inShown(result: Uncertain | undefined, { toShown, unit }: UnitSystem['strength' | 'temperature']): string {
  if (result === undefined) return joined('\u2007\u2007…\u2007 ± \u2007…\u2007', unit);
  const { value, uncertainty } = result;
  if (uncertainty === null) return joined(fixed(toShown(value), 1), unit);
  const error = Math.abs(toShown(value) - toShown(Math.max(0, value - uncertainty)));
  return plusMinus(toShown(value), error, unit);
}

function surenessIn(later: Here['later']): SurenessAnswer | undefined {
  const answer = later?.answers['sureness'];
  return answer?.kind === 'sureness' ? answer : undefined;
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
