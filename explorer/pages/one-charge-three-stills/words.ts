// 'One charge, three stills': what each still makes of the charge, in words and as a table.

import { html, nothing } from 'lit';
import { ofRuns } from '../../figures/run/of-runs.js';
import type { RunFigureRows } from '../../rows/run.js';
import type { Answered } from '../../entries/entry.js';
import { azeotropeRow } from '../../state/equilibrium-rows.js';
import { columnOf, type OwnStill } from '../../state/column-of.js';
import { ownNames, stillNames, stillResults } from './questions.js';
import type { StillName, StillResults, StillRun, StillsQuestions } from './questions.js';
import { numberWithUnit } from '../../components/number/number-spec.js';
import type { NumberSpecs } from '../../state/number-specs.js';
import { clock, fixed, joined, percent } from '../../text/format.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import { ink, print, roundStrength } from '../../entries/words.js';
import { stillOf } from '../../state/paths.js';

export type Stills = Answered<StillsQuestions>;
export type Results = Readonly<Record<'pot' | 'doubler' | 'column', StillResults>> &
  Readonly<Partial<Record<StillName, StillResults>>>;

/** The stills that stand on the page, in order. */
export function namesOf({ answers }: Stills): readonly StillName[] {
  return [...stillNames, ...ownNames.filter((name) => answers[name] !== undefined)];
}

/** The run of a still that stands on the page. */
export function runOf({ answers }: Stills, name: StillName): StillRun {
  return (answers as Readonly<Partial<Record<StillName, { readonly solution: StillRun }>>>)[name]!.solution;
}

/** Results of all above the strength that counts. */
export function resultsOf(now: Stills): Results {
  const entries = namesOf(now).map((name): [StillName, StillResults] => [
    name,
    stillResults(runOf(now, name), now.scenario.asked.strength),
  ]);
  return Object.fromEntries(entries) as unknown as Results;
}

/** What a still of plates is called. */
export function columnLabel({ plates, reflux }: OwnStill, specs: NumberSpecs): string {
  const many = plates === 0 ? 'no plates' : numberWithUnit(specs('still.column.count'), plates);
  return `${many}, reflux ${numberWithUnit(specs('sheet[2].reflux'), reflux)}`;
}

/** Labels in the order of the stills. */
export function labelsOf(now: Stills, own: readonly OwnStill[], specs: NumberSpecs): readonly string[] {
  const names = ['bare pot', 'pot with a doubler', columnLabel(columnOf(now.scenario), specs)];
  return [...names, ...own.map((still) => columnLabel(still, specs))].slice(0, namesOf(now).length);
}

/** Rows of the figure: a panel a still. */
export function stillRows(now: Stills, own: readonly OwnStill[], units: UnitSystem, specs: NumberSpecs): RunFigureRows {
  const short = ['pot', 'doubler', 'column', 'own 1', 'own 2', 'own 3'];
  const labels = labelsOf(now, own, specs);
  return ofRuns({
    panels: ['each'],
    runs: namesOf(now).map((name, index) => ({
      label: labels[index]!,
      shortLabel: short[index]!,
      hand: 'ink',
      weight: 'result',
      run: runOf(now, name),
    })),
    azeotrope: azeotropeRow(now.answers.equilibrium, stillOf(now.scenario).air.pressure_Pa, units.pressure),
    along: 'volume',
    measure: null,
    strengthFrom: null,
    threshold: now.scenario.asked.strength,
    units,
  });
}

/** What comes over above the strength that counts, and what it costs. */
export function recoveredWords(now: Stills, results: Results, units: UnitSystem): unknown {
  const wanted = ink(roundStrength(now.scenario.asked.strength, units));
  return html`<p>
      ${above('The bare pot', results.pot, wanted, units)} ${above('The doubler', results.doubler, wanted, units)}
      ${above('The column', results.column, wanted, units)}
    </p>
    <p>${endedWords(now)} ${paidWords(now)} ${waterWords(results, units)}</p>`;
}

/** What the column does with its heat; without plates or reflux it does nothing with it. */
function paidWords({ scenario }: Stills): unknown {
  const { plates, reflux } = columnOf(scenario);
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
  if (pot.collected_m3 <= 0 || column.collected_m3 <= 0) return nothing;
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
  if (results.collected_m3 <= 0) return html`${name} gives nothing at all.`;
  if (volumeAbove_m3 === null || pureAlcoholAbove_m3 === null || shareAbove === null) {
    return html`${name} never reaches ${wanted}: its best is ${ink(units.strength.withUnit(best))}.`;
  }
  const shown = units.volume.toShown(pureAlcoholAbove_m3);
  const pure = ink(joined(fixed(shown, shown >= 0.1 ? pureDigits(shown) : 3), units.volume.unit));
  return html`${name} stays above ${wanted} for ${ink(volumeInWords(volumeAbove_m3, units))} and brings over ${pure} of
  pure alcohol, ${ink(percent(shareAbove))} of all that was filled in.`;
}

/** Whether every run ended with the same share of the alcohol; a very strong charge is used up before. */
export function endedByAlcohol(now: Stills): boolean {
  return stillNames.every((name) => {
    const { ending } = now.answers[name].solution;
    return ending.kind === 'stopped' && ending.rule.kind === 'alcoholLeftBelow';
  });
}

function endedWords(now: Stills): unknown {
  const last = now.scenario.sheet.at(-1)!.until.find(({ kind }) => kind === 'alcoholLeftBelow');
  if (last?.kind !== 'alcoholLeftBelow') return html`All are run by the same sheet.`;
  const share = print(percent(1 - last.share));
  return endedByAlcohol(now)
    ? html`All go on until ${share} of all alcohol filled in is out of the still.`
    : html`Not every run gets to ${share} of the alcohol: with these numbers one ends before.`;
}

/** The same in numbers, a column a still. */
export function recoveredTable(
  now: Stills,
  results: Results,
  own: readonly OwnStill[],
  units: UnitSystem,
  specs: NumberSpecs,
): unknown {
  const { volume, strength } = units;
  const charge = volume.toShown(now.scenario.charge.volume_m3);
  const digits = charge < 10 ? 3 : pureDigits(charge);
  const pure = (m3: number): string => fixed(volume.toShown(m3), digits);
  const amount = digits === 3 ? pure : volume.text;
  const wanted = roundStrength(now.scenario.asked.strength, units);
  const energy = energyShown(units);
  const orNone = (value: number | null, text: (value: number) => string): string =>
    value === null ? '–' : text(value);
  const names = namesOf(now);
  const row = (label: string, text: (result: StillResults) => string): unknown =>
    html`<tr>
      <th scope="row">${label}</th>
      ${names.map((name) => html`<td class="ink">${text(results[name]!)}</td>`)}
    </tr>`;
  return html`<p class="table-title"><b>What comes over</b>, from the same charge</p>
    <div class="wide-table" role="region" aria-label="Table of the stills" tabindex="0">
      <table class="figures-table">
        <thead>
          <tr>
            <th scope="col">still</th>
            ${labelsOf(now, own, specs).map((label) => html`<th scope="col">${label}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${row(`pure alcohol above ${wanted}, ${volume.unit}`, (r) => orNone(r.pureAlcoholAbove_m3, pure))}
          ${row('its share of all filled in', (r) => orNone(r.shareAbove, (share) => percent(share)))}
          ${row(`collected above ${wanted}, ${volume.unit}`, (r) => orNone(r.volumeAbove_m3, amount))}
          ${row(`its strength, ${strength.unit}`, (r) => orNone(r.meanAbove, strength.text))}
          ${row(`all collected, ${volume.unit}`, (r) => amount(r.collected_m3))}
          ${row(`its strength, ${strength.unit}`, (r) =>
            r.collected_m3 > 0 ? strength.text(r.pureAlcohol_m3 / r.collected_m3) : '–',
          )}
          ${row('until the first vapour', (r) => (r.collected_m3 > 0 ? clock(r.heatingUp_s) : '–'))}
          ${row('time in all', (r) => clock(r.duration_s))}
          ${row(`heat in all, ${energy.unit}`, (r) => energy.text(r.heat_J))}
          ${row('lost by the walls', (r) => percent(r.lost_J / r.heat_J))}
        </tbody>
      </table>
    </div>`;
}

/** A digit more than volumes are read to, but no more than four or five in all. */
function pureDigits(shown: number): 1 | 2 {
  return shown < 200 ? 2 : 1;
}

// An hour of the unit of power: kWh, or BTU.
function energyShown(units: UnitSystem): { unit: string; text: (joule: number) => string } {
  const hour_s = units.time.fromShown(1);
  const unit = units.power.unit.endsWith('/h') ? units.power.unit.slice(0, -2) : `${units.power.unit}h`;
  return { unit, text: (joule) => units.power.text(joule / hour_s) };
}

/** What the doubler of this page is, and where its own page stands. */
export function doublerWords(
  now: Stills,
  results: Results,
  units: UnitSystem,
  volume: unknown,
  strength: unknown,
): unknown {
  const { doubler, pot } = results;
  return html`<p>
    The doubler starts cold with a charge of its own, here ${volume} at
    <span class="kept-together">${strength}.</span> The pot’s vapour condenses in it until it
    boils${
      doubler.collected_m3 > 0 && pot.collected_m3 > 0
        ? html`, and so its spout runs ${ink(clock(Math.max(0, doubler.heatingUp_s - pot.heatingUp_s)))} later than the
          pot’s. Its best is ${ink(units.strength.withUnit(doubler.best))}, the pot’s
          ${ink(units.strength.withUnit(pot.best))}`
        : html`; with these numbers it never does`
    };
    what it does, and why, has <a href="#the-doubler">a page of its own</a>.
  </p>`;
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
