// How many ideal stages it takes, by model.

import { html } from 'lit';
import { namedStrengths } from '../../../state/derive.js';
import { fixed, trimmed } from '../../../text/format.js';
import type { UnitSystem } from '../../../text/unit-systems.js';
import type { EquilibriumAnswer } from '../../../worker/kinds/equilibrium.js';
import type { StagesAnswer } from '../../../worker/kinds/stages.js';
import { asking, type CeilingAsks, type CeilingNow } from '../../../pages/the-ceiling/asks.js';
import { modelNote } from '../../../pages/the-ceiling/notes.js';
import type { Piece } from '../../pieces.js';
import { modelName } from '../../words.js';

type Names =
  'equilibrium' | 'nrtl' | 'wilson' | 'raoult' | 'stages' | 'stagesByNrtl' | 'stagesByWilson' | 'stagesByRaoult';

export const stagesByModel: Piece<CeilingAsks<Names>> = {
  asks: asking('equilibrium', 'nrtl', 'wilson', 'raoult', 'stages', 'stagesByNrtl', 'stagesByWilson', 'stagesByRaoult'),
  view: ({ units }, now) => modelTable(now, units),
  notes: () => modelNote,
};

/** The count by model. */
function modelTable(now: CeilingNow<Names>, units: UnitSystem): unknown {
  const { equilibrium, nrtl, wilson, raoult, stages, stagesByNrtl, stagesByWilson, stagesByRaoult } = now.answers;
  return html`<p class="table-title">
      <b>Ideal stages at total reflux</b>, the kettle counted; strengths in ${units.strength.unit}
    </p>
    <table class="figures-table">
      <thead>
        <tr>
          <th scope="col">model</th>
          <th scope="col">azeotrope</th>
          ${namedStrengths.map((strength) => html`<th scope="col">to ${trimmed(units.strength.toShown(strength), 1)}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${row(`${modelName(equilibrium.model.name)}, used here`, equilibrium, stages, units, true)}
        ${row(modelName(nrtl.model.name), nrtl, stagesByNrtl, units, false)}
        ${row(modelName(wilson.model.name), wilson, stagesByWilson, units, false)}
        ${row(modelName(raoult.model.name), raoult, stagesByRaoult, units, false)}
      </tbody>
    </table>`;
}

function row(
  name: string,
  { azeotrope }: EquilibriumAnswer,
  { stages }: StagesAnswer,
  units: UnitSystem,
  used: boolean,
): unknown {
  const hand = used ? 'ink' : '';
  return html`<tr>
    <th scope="row">${name}</th>
    <td>${azeotrope === null ? 'none' : fixed(units.strength.toShown(azeotrope.strength), 2)}</td>
    ${stages.map((count) => html`<td class=${hand}>${count === null ? 'never' : fixed(count, 1)}</td>`)}
  </tr>`;
}
