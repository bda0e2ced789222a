// 'The doubler' in words: what it does first, what it does later, what it is charged with, and two of them in series.

import { html, nothing } from 'lit';
import { ofRuns } from '../../figures/run/of-runs.js';
import type { NamedRun, RunFigureRows } from '../../rows/run.js';
import type { Answered } from '../../entries/entry.js';
import {
  type DoublerQuestions,
  inventedDoubler,
  otherNames,
  ownCharge,
  resultsOf,
  type DoublerResults,
} from './questions.js';
import { insideDoubler, type InsideDoubler } from './inside.js';
import { azeotropeRow } from '../../state/equilibrium-rows.js';
import { numberWithUnit } from '../../components/number/number-spec.js';
import type { NumberSpecs } from '../../state/number-specs.js';
import { stillOf } from '../../state/paths.js';
import { clock, fixed, joined, percent } from '../../text/format.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import { ink, print, roundStrength } from '../../entries/words.js';

export type Doubling = Answered<DoublerQuestions>;

/** What all sentences of the page are made of. */
export interface DoublerNumbers {
  readonly pot: DoublerResults;
  readonly doubler: DoublerResults;
  readonly others: readonly DoublerResults[];
  readonly inside: InsideDoubler;
}

export function doublerNumbers({ scenario, answers }: Doubling): DoublerNumbers {
  const of = (name: 'pot' | 'doubler' | (typeof otherNames)[number]): DoublerResults =>
    resultsOf(answers[name].solution, scenario.charge.volume_m3);
  return {
    pot: of('pot'),
    doubler: of('doubler'),
    others: otherNames.map(of),
    inside: insideDoubler(answers.doubler.solution),
  };
}

/** Strength against litres: the doubler over the pot. */
export function doublerRows(now: Doubling, units: UnitSystem): RunFigureRows {
  const { doubler, water, pot, equilibrium } = now.answers;
  const named = (label: string, shortLabel: string, weight: NamedRun['weight'], run: NamedRun['run']): NamedRun => ({
    label,
    shortLabel,
    hand: 'ink',
    weight,
    run,
  });
  return ofRuns({
    panels: ['strength'],
    runs: [
      named('with the doubler', 'doubler', 'result', doubler.solution),
      named('with water in it', 'water', 'second', water.solution),
      named('bare pot', 'pot', 'third', pot.solution),
    ],
    along: 'volume',
    measure: null,
    strengthFrom: null,
    azeotrope: azeotropeRow(equilibrium, stillOf(now.scenario).air.pressure_Pa, units.pressure),
    threshold: null,
    units,
  });
}

/** First: it gives nothing; then what its charge is good for. */
export function firstWords(now: Doubling, numbers: DoublerNumbers, units: UnitSystem, specs: NumberSpecs): unknown {
  const { doubler, pot, inside } = numbers;
  const waits = ink(clock(doubler.spoutRuns_s - doubler.kettleBoils_s));
  const charge = ink(numberWithUnit(specs('doublerCharges[0].charge.volume_m3'), ownCharge(now.scenario).volume_m3));
  const stronger = doubler.first > pot.first;
  if (now.answers.doubler.solution.firstVapour_s === null) return neverRuns(doubler, charge);
  return html`<p>
      When the kettle boils, the spout stays dry for another ${waits}: all the vapour condenses in the doubler, until
      its ${charge} boil too. By then it holds ${ink(units.volume.withUnit(inside.whenItRuns.volume_m3))}, hot, at
      ${ink(units.strength.withUnit(inside.whenItRuns.strength))}.
    </p>
    <p>
      Its first spirit runs at ${ink(units.strength.withUnit(doubler.first))}, where the bare pot’s begins at
      ${ink(units.strength.withUnit(pot.first))}. ${stronger ? whenceWords(now, inside, units) : drowned}
    </p>`;
}

const drowned = html`So weak a charge does not lift the first spirit at all: what you put in drowns what the pot sends.`;

/** A charge below this share of the kettle's is gone before a first jar is full. */
const smallCharge = 0.02;

/** Where the strength of the first spirit came from. */
function whenceWords({ scenario }: Doubling, { whenItRuns }: InsideDoubler, units: UnitSystem): unknown {
  const own = ownCharge(scenario);
  if (own.volume_m3 < smallCharge * scenario.charge.volume_m3) {
    return html`So small a charge is gone before the first jar is full: what fills it is the pot’s own alcohol, one
    stage stronger.`;
  }
  const brought = own.volume_m3 * own.strength > 0.5 * whenItRuns.volume_m3 * whenItRuns.strength;
  return html`That is no doubling: it is what any liquid of ${ink(units.strength.withUnit(whenItRuns.strength))} gives
  when it boils.
  ${
    brought
      ? html`You brought most of that strength along in its charge.`
      : html`The pot sent most of that strength while the doubler warmed up.`
  }`;
}

/** It never boils: the pot sends too little heat to it, or none. */
function neverRuns({ kettleBoils_s, ended_s }: DoublerResults, charge: unknown): unknown {
  return html`<p>
    With these numbers nothing comes over.
    ${
      kettleBoils_s < ended_s
        ? html`The kettle boils, but it runs dry before the ${charge} in the doubler boil: all its vapour condenses
          there and stays. Charge the doubler with less, or the kettle with more.`
        : html`The kettle never boils: its walls lose all the heat it gets. Give it more heat.`
    }
  </p>`;
}

/** Later: it passes on what it gets. */
export function laterWords(now: Doubling, { doubler, pot, inside }: DoublerNumbers, units: UnitSystem): unknown {
  if (now.answers.doubler.solution.firstVapour_s === null) return nothing;
  const half = inside.halfSpent_s;
  const spent =
    half === null
      ? html`What it holds keeps more than half its strength to the end of this run.`
      : html`${ink(clock(half - doubler.spoutRuns_s))} after the first drop half of what it held then is gone; more heat
        only makes it sooner. A doubler lives on its charge, and then on what the pot sends.`;
  const gain = doubler.pureAlcohol_m3 - pot.pureAlcohol_m3;
  const own = ownCharge(now.scenario);
  const kept = ink(joined(fixed(units.volume.toShown(own.volume_m3 * own.strength), 2), units.volume.unit));
  const more = ink(joined(fixed(units.volume.toShown(Math.abs(gain)), 2), units.volume.unit));
  return html`<p>
    ${spent} After that it passes on what it gets, a little late: nothing runs back to the pot, so but for what its
    walls condense no more alcohol leaves it than comes in. By the end it has brought over ${more}
    ${gain >= 0 ? 'more' : 'less'} pure alcohol than the bare pot; ${kept} of pure alcohol went in with its charge. It
    makes no alcohol: it only moves it.
  </p>`;
}

/** The same doubler charged with other things. */
export function chargesTable(now: Doubling, { others }: DoublerNumbers, units: UnitSystem): unknown {
  const { strength, volume } = units;
  const names = ['water', 'wash', 'low wines', 'feints', 'heads and hearts'];
  const own = (index: number): number => ownCharge(now.scenario).volume_m3 * inventedDoubler.otherCharges[index]!;
  const pure = (m3: number): string => fixed(volume.toShown(m3), 2);
  return html`<p class="table-title"><b>What it is charged with</b>, the rest the same</p>
    <table class="figures-table">
      <thead>
        <tr>
          <th scope="col">charge</th>
          <th scope="col">${strength.unit}</th>
          <th scope="col">waits</th>
          <th scope="col">first spirit, ${strength.unit}</th>
          <th scope="col">pure alcohol in, ${volume.unit}</th>
          <th scope="col">out, ${volume.unit}</th>
        </tr>
      </thead>
      <tbody>
        ${others.map(
          (result, index) =>
            html`<tr>
              <th scope="row">${names[index]}</th>
              <td>${index === 0 ? '0' : strength.text(inventedDoubler.otherCharges[index]!)}</td>
              <td class="ink">${result.collected_m3 > 0 ? clock(result.spoutRuns_s - result.kettleBoils_s) : '–'}</td>
              <td class="ink">${result.collected_m3 > 0 ? strength.text(result.first) : '–'}</td>
              <td class="ink">${pure(own(index))}</td>
              <td class="ink">${pure(result.pureAlcohol_m3)}</td>
            </tr>`,
        )}
      </tbody>
    </table>`;
}

/** Two in series, as for rum: the cuts, and whether the charges come back. */
export function retortWords(now: Doubling, units: UnitSystem): unknown {
  const { jars } = now.answers.retorts.solution;
  const [spirit, high, low] = [2, 3, 4].map((step) => jars.find((jar) => jar.step === step));
  const { charge } = now.scenario;
  const { lowWines, highWines, cuts } = inventedDoubler;
  const pure = (m3: number): unknown => ink(joined(fixed(units.volume.toShown(m3), 2), units.volume.unit));
  const inCharge = ({ share, strength }: { share: number; strength: number }): number =>
    share * strength * charge.volume_m3;
  if (spirit === undefined || high === undefined || low === undefined) {
    return html`<p>
      With this charge the spout never stands above ${print(roundStrength(cuts[0], units))}: there is no spirit to keep
      apart.
    </p>`;
  }
  return html`<p>
      Two doublers in series are the old way to make rum in one run. The first is charged with low wines, the second
      with high wines: here ${ink(percent(lowWines.share))} of the kettle’s charge at
      ${print(roundStrength(lowWines.strength, units))} and ${ink(percent(highWines.share))} at
      ${print(roundStrength(highWines.strength, units))}. Down to ${print(roundStrength(cuts[0], units))} the spout
      gives ${ink(units.volume.withUnit(spirit.volume_m3))} of spirit at
      ${ink(units.strength.withUnit(spirit.strength))}; from there to ${print(roundStrength(cuts[1], units))} new high
      wines, then new low wines to ${print(roundStrength(cuts[2], units))}.
    </p>
    <p>
      The wash holds ${pure(charge.volume_m3 * charge.strength)} of pure alcohol and the spirit kept takes out
      ${pure(spirit.pureAlcohol_m3)}. The high wines give back ${pure(high.pureAlcohol_m3)} of the
      ${pure(inCharge(highWines))} they were charged with, the low wines ${pure(low.pureAlcohol_m3)} of
      ${pure(inCharge(lowWines))}. Where both come back about whole, the spirit is the wash’s own alcohol and the
      charges feed themselves, run after run; the cuts are how the distiller keeps that balance.
    </p>`;
}
