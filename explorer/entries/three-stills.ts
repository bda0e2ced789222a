// 'One charge, three stills': what each still makes of the charge, in words and as a table.

import { html, nothing } from 'lit';
import { strengthByStill } from '../figures/strength-by-still.js';
import type { StrengthByStillRows } from '../figures/rows.js';
import type { Answered } from '../pages/notebook-page.js';
import { azeotropeRow } from '../state/equilibrium-rows.js';
import { heatingUp, inventedStills, stillNames, stillResults } from '../state/three-stills.js';
import type { StillName, StillResults, StillsQuestions } from '../state/three-stills.js';
import { numberWithUnit } from '../components/number/number-spec.js';
import type { NumberSpecs } from '../state/number-specs.js';
import { clock, fixed, joined, percent, trimmed } from '../text/format.js';
import type { UnitSystem } from '../text/unit-systems.js';
import { ink, print, roundStrength } from './words.js';

export type Stills = Answered<StillsQuestions>;
export type Results = Readonly<Record<StillName, StillResults>>;
export { strengthByStill };

/** Results of all three above the strength that counts. */
export function resultsOf(now: Stills): Results {
  const { heat, wantedStrength } = now.scenario;
  const of = (name: StillName): StillResults => stillResults(now.answers[name].solution, wantedStrength, heat);
  return { pot: of('pot'), doubler: of('doubler'), column: of('column') };
}

/** Rows of the figure: heavier the more the still does. */
export function stillRows(now: Stills, units: UnitSystem, specs: NumberSpecs): StrengthByStillRows {
  const { pot, doubler, column, equilibrium } = now.answers;
  const plates = now.scenario.plates === 0 ? 'no plates' : numberWithUnit(specs.plates, now.scenario.plates);
  return {
    stills: [
      { label: plates, shortLabel: 'column', weight: 'result', run: column.solution },
      { label: 'one doubler', shortLabel: 'doubler', weight: 'second', run: doubler.solution },
      { label: 'bare pot', shortLabel: 'pot', weight: 'third', run: pot.solution },
    ],
    azeotrope: azeotropeRow(equilibrium, now.scenario.pressure, units.pressure),
    threshold: now.scenario.wantedStrength,
    units,
  };
}

/** What comes over above the strength that counts, and what it costs. */
export function recoveredWords(now: Stills, results: Results, units: UnitSystem): unknown {
  const wanted = ink(roundStrength(now.scenario.wantedStrength, units));
  return html`<p>
      ${above('The bare pot', results.pot, wanted, units)} ${above('The doubler', results.doubler, wanted, units)}
      ${above('The column', results.column, wanted, units)}
    </p>
    <p>${endedWords(now)} ${paidWords(now)} ${waterWords(results, units)}</p>`;
}

/** What the column does with its heat; without plates or reflux it does nothing with it. */
function paidWords({ scenario: { plates, reflux } }: Stills): unknown {
  const back = ink(percent(reflux / (1 + reflux)));
  if (reflux === 0) {
    return html`With nothing sent back the column has no push: its plates give up what they hold and then pass on what
    they get.`;
  }
  if (plates === 0) {
    return html`Without plates reflux is heat for little: the ${back} it sends back meets no vapour on its way down.`;
  }
  return html`Strength is paid for in heat: of all that rises in the column, reflux sends ${back} back to be boiled
  again.`;
}

function waterWords({ pot, column }: Results, units: UnitSystem): unknown {
  const volumes = html`${ink(volumeInWords(column.collected_m3, units))} come over where the pot sends
  ${ink(volumeInWords(pot.collected_m3, units))}.`;
  // Less than a twentieth is not worth a 'but'.
  return column.collected_m3 < 0.95 * pot.collected_m3
    ? html`But the column leaves water behind: ${volumes}`
    : html`From the column ${volumes}`;
}

/** A volume in a sentence, with a digit more where there is little of it. */
function volumeInWords(volume_m3: number, { volume }: UnitSystem): string {
  const shown = volume.toShown(volume_m3);
  return shown >= 1 ? volume.withUnit(volume_m3) : joined(fixed(shown, shown >= 0.1 ? 2 : 3), volume.unit);
}

function above(name: string, results: StillResults, wanted: unknown, units: UnitSystem): unknown {
  const { volumeAbove_m3, pureAlcoholAbove_m3, shareAbove, best } = results;
  if (volumeAbove_m3 === null || pureAlcoholAbove_m3 === null || shareAbove === null) {
    return html`${name} never reaches ${wanted}: its best is ${ink(units.strength.withUnit(best))}.`;
  }
  const shown = units.volume.toShown(pureAlcoholAbove_m3);
  const pure = ink(joined(fixed(shown, shown >= 0.1 ? 2 : 3), units.volume.unit));
  return html`${name} stays above ${wanted} for ${ink(volumeInWords(volumeAbove_m3, units))} and brings over ${pure} of
  pure alcohol, ${ink(percent(shareAbove))} of what is in the charge.`;
}

/** Whether every run ended with the same share of the alcohol; a very strong charge is used up before. */
export function endedByAlcohol(now: Stills): boolean {
  return stillNames.every((name) => {
    const { ending } = now.answers[name].solution;
    return ending.kind === 'stopped' && ending.rule.kind === 'alcoholLeftBelow';
  });
}

function endedWords(now: Stills): unknown {
  const share = print(percent(1 - inventedStills.alcoholLeft));
  return endedByAlcohol(now)
    ? html`All three go on until ${share} of the charge’s alcohol is out of the still.`
    : html`Not every run gets to ${share} of the alcohol: with this charge one ends before.`;
}

/** The same in numbers, a column a still. */
export function recoveredTable(now: Stills, results: Results, units: UnitSystem): unknown {
  const { volume, strength } = units;
  const digits = volume.toShown(now.scenario.chargeVolume) < 10 ? 3 : 2;
  const pure = (m3: number): string => fixed(volume.toShown(m3), digits);
  const amount = digits === 3 ? pure : volume.text;
  const wanted = roundStrength(now.scenario.wantedStrength, units);
  const energy = energyShown(units);
  const none = '–';
  const orNone = (value: number | null, text: (value: number) => string): string =>
    value === null ? none : text(value);
  return html`<p class="table-title"><b>What comes over</b>, from the same charge</p>
    <table class="figures-table">
      <thead>
        <tr>
          <th scope="col">still</th>
          <th scope="col">bare pot</th>
          <th scope="col">one doubler</th>
          <th scope="col">column</th>
        </tr>
      </thead>
      <tbody>
        ${row(`pure alcohol above ${wanted}, ${volume.unit}`, results, (r) => orNone(r.pureAlcoholAbove_m3, pure))}
        ${row('its share of the charge’s', results, (r) => orNone(r.shareAbove, (share) => percent(share)))}
        ${row(`collected above ${wanted}, ${volume.unit}`, results, (r) => orNone(r.volumeAbove_m3, amount))}
        ${row(`its strength, ${strength.unit}`, results, (r) => orNone(r.meanAbove, strength.text))}
        ${row(`all collected, ${volume.unit}`, results, (r) => amount(r.collected_m3))}
        ${row(`its strength, ${strength.unit}`, results, (r) => strength.text(r.pureAlcohol_m3 / r.collected_m3))}
        ${row('time from the first vapour', results, (r) => clock(r.duration_s))}
        ${row(`heat in that time, ${energy.unit}`, results, (r) => energy.text(r.heat_J))}
      </tbody>
    </table>`;
}

function row(label: string, results: Results, text: (results: StillResults) => string): unknown {
  return html`<tr>
    <th scope="row">${label}</th>
    ${stillNames.map((name) => html`<td class="ink">${text(results[name])}</td>`)}
  </tr>`;
}

// An hour of the unit of power: kWh, or BTU.
function energyShown(units: UnitSystem): { unit: string; text: (joule: number) => string } {
  const hour_s = units.time.fromShown(1);
  const unit = units.power.unit.endsWith('/h') ? units.power.unit.slice(0, -2) : `${units.power.unit}h`;
  return { unit, text: (joule) => units.power.text(joule / hour_s) };
}

/** What comes before the first vapour, for the margin. */
export function heatingUpWords(now: Stills, units: UnitSystem): unknown {
  const { heat_J, duration_s } = heatingUp(now.scenario);
  const energy = energyShown(units);
  const from = joined(trimmed(units.temperature.toShown(inventedStills.filledAt_K), 1), units.temperature.unit);
  return html`<p>
    Time and heat count from the first vapour. Heating the charge up from ${from} comes before, the same for all three:
    ${ink(joined(energy.text(heat_J), energy.unit))}, ${ink(clock(duration_s))} at this heat. The still’s metal and what
    its walls lose are not counted; they would add to both.
  </p>`;
}

/** What the doubler of this page is, and is not. */
export function doublerWords(now: Stills, reflux: unknown): unknown {
  const nothingBack = now.scenario.doublerReflux === 0;
  return html`<p>
      A doubler boils a second time what the pot sends over. Here it is one ideal plate: the pot’s vapour bubbles
      through its liquid, a stronger vapour leaves it, and some of that runs back, here
      <span class="kept-together">${reflux}.</span>
      ${
        nothingBack
          ? html`With nothing running back its line lies on the pot’s: once warm, it passes on what it gets.`
          : html`What runs back is what keeps it at work. Once it is warm, a doubler with nothing running back passes on
            what it gets: in the long run its vapour is the pot’s.`
      }
    </p>
    <p>
      A real doubler starts cold with a charge of its own, often low wines or feints, and lives on that charge while it
      lasts. That is a page of its own and comes later; until then do not read this line as a thumper’s.
    </p>
    ${
      nothingBack
        ? nothing
        : html`<p><em>Try it.</em> Set what runs back to 0 : 1 and watch its line sink onto the pot’s.</p>`
    }`;
}

/** The question: the column's heat as a multiple of the pot's. */
export function heatRatio(results: Results): number {
  return results.column.heat_J / results.pot.heat_J;
}

/** The reply to an answer, with the value reached. */
export function judgedRatio(given: number, ratio: number): string {
  const right = `${fixed(ratio, 1)} times`;
  const off = Math.abs(given - ratio) / ratio;
  // Half a printed digit counts as right, a tenth as near.
  if (Math.abs(given - ratio) <= 0.051) return `Yes: ${right}.`;
  if (off <= 0.1) return `Near: it is ${right}.`;
  return given < ratio ? `More than that: ${right}.` : `Less than that: ${right}.`;
}
