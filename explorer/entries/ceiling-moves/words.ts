// Words and notes of 'The ceiling moves'.

import { html, nothing } from 'lit';
import { toSI } from '#lib/index.js';
import { atEnd, endOf } from '../../state/drift-rows.js';
import { measuredAzeotropeRows } from '../../state/measured-rows.js';
import { countInWords, fixed, joined } from '../../text/format.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import type { AzeotropeAt, DriftAnswer } from '../../worker/kinds/drift.js';
import { pointOf } from '../measured-notes.js';
import { ink, plusMinus, print, source } from '../words.js';

const atm_Pa = toSI(1, 'atm');

/** The azeotrope at the reader's pressure. */
export function hereWords({ pressure_Pa, azeotrope, extrapolated }: AzeotropeAt, units: UnitSystem): unknown {
  const at = ink(units.pressure.withUnit(pressure_Pa));
  const outside = extrapolated
    ? html` This lies outside the temperatures the model was fitted to: it is <em>extrapolated</em>.`
    : nothing;
  if (azeotrope === null) {
    return html`<p>
      At ${at} there is ${ink('no azeotrope')}: the vapour is stronger than the liquid to the end, and with plates
      enough nothing would stop a column short of pure alcohol.${outside}
    </p>`;
  }
  const { moleFraction, strength, temperature_K } = azeotrope;
  return html`<p>
    At ${at} the azeotrope stands at a mole fraction of ${ink(fixed(moleFraction, 3))}, which is
    ${ink(units.strength.withUnit(strength))}, and boils at ${ink(units.temperature.withUnit(temperature_K))}.${outside}
  </p>`;
}

/** Where the ceiling goes, and what that means for a still. */
export function endWords(line: readonly DriftAnswer[], units: UnitSystem): unknown {
  const end_Pa = endOf(line);
  const end = atEnd(line)?.azeotrope ?? null;
  const air = line.flatMap(({ points }) => points).find(({ pressure_Pa }) => pressure_Pa >= atm_Pa);
  if (end_Pa === null || end === null || !air?.azeotrope) return nothing;
  // A mole of vapour takes T/P.
  const room = (end.temperature_K / end_Pa) * (air.pressure_Pa / air.azeotrope.temperature_K);
  const boils = print(units.temperature.withUnit(end.temperature_K));
  return html`<p>
      Lower pressure moves it up: the colder the boil, the more the push of alcohol outweighs that of water. At
      ${print(units.pressure.withUnit(end_Pa))}, where alcohol boils at ${boils}, the azeotrope reaches pure alcohol and
      is gone. ${softEnd(end_Pa, units)}
    </p>
    <p>
      So a still under vacuum could pass what no plate passes in the open air. It pays for it: so far down the same
      vapour takes ${print(countInWords(Math.round(room)))} times the room, the column has to be wider for it, and the
      condenser must be well below ${boils}, or what should be spirit leaves through the pump.
    </p>`;
}

/** A measurement that still finds an azeotrope where the model has none. */
function softEnd(end_Pa: number, { pressure }: UnitSystem): unknown {
  const below = measuredAzeotropeRows.find((point) => point.pressure_Pa < end_Pa);
  if (below === undefined) return nothing;
  return html`That end is soft: ${below.source.replace(/, (\d+)$/, ' ($1)')} still measured one at
  ${print(pressure.withUnit(below.pressure_Pa))}.`;
}

/** How sure the model is at the reader's pressure. */
export function errorNote({ pressure_Pa, azeotrope }: AzeotropeAt, units: UnitSystem): unknown {
  if (azeotrope === null) return nothing;
  const { moleFraction, moleFractionError, strength, strengthError } = azeotrope;
  const { toShown, unit } = units.strength;
  const error = Math.abs(toShown(strength) - toShown(strength - strengthError));
  return html`<p>
    At ${units.pressure.withUnit(pressure_Pa)} the ceiling is
    <b class="ink number">${plusMinus(toShown(strength), error, unit)}</b>, or ${fixed(moleFraction, 4)} ±
    ${fixed(moleFractionError, 4)} by mole: one standard error, from the scatter of the measurements behind the model.
    What they all share is not in it.
  </p>`;
}

/** A limit of the range this near a whole degree is that degree. */
const whole = 0.01;

/** The published points by kind, and where the line is no more than a guess. */
export function sourcesNote(line: readonly DriftAnswer[], units: UnitSystem): unknown {
  const kinds = [...new Set(measuredAzeotropeRows.map(({ kind }) => kind))];
  const named = kinds.map((kind) => {
    const points = measuredAzeotropeRows.filter((point) => point.kind === kind);
    const sources = [...new Set(points.map((point) => point.source))];
    return html`${pointOf(points[0]!)} ${kind}: ${sources.join('; ')}. `;
  });
  const [low, high] = line[0]!.range_K.map((t) => units.temperature.toShown(t)) as [number, number];
  return html`${source(named)}
    <p>
      The model was fitted from ${fixed(Math.ceil(low - whole), 0)} to
      ${joined(fixed(Math.floor(high + whole), 0), units.temperature.unit)}. Outside it the line is dashed and called
      extrapolated, in its numbers too.
    </p>`;
}
