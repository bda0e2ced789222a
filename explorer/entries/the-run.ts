// The first entry of 'The ceiling': how the spout runs over the charge, and what it comes to, in words.

import { html, nothing } from 'lit';
import type { RunHistoryRows, NamedRun } from '../figures/rows.js';
import { invented, type CeilingQuestions } from '../state/derive.js';
import { azeotropeRow } from '../state/equilibrium-rows.js';
import { runResults, type RunResults } from '../state/run-results.js';
import { numberWithUnit } from '../components/number/number-spec.js';
import type { NumberSpecs } from '../state/number-specs.js';
import { clock, fixed, percent } from '../text/format.js';
import type { UnitSystem } from '../text/unit-systems.js';
import type { Answered } from '../pages/notebook-page.js';
import { ink, pencil, print, roundStrength } from './words.js';

type Ceiling = Answered<CeilingQuestions>;

/** Strength of the measure line, % vol / 100. */
export const measuredStrength = 0.9;

/** Rows of the run's figure: the run in ink, kept ones in pencil. */
export function runRows(
  now: Ceiling,
  kept: readonly Ceiling[],
  along: 'volume' | 'time',
  units: UnitSystem,
  specs: NumberSpecs,
): RunHistoryRows {
  const named = (one: Ceiling, hand: 'ink' | 'pencil'): NamedRun => {
    const label = difference(one, now, hand, specs);
    const pencilled = hand === 'pencil';
    return {
      label: pencilled ? `${label}, before` : label,
      shortLabel: pencilled ? `${label.replace(/\u00a0plates?$/u, '')} before` : label,
      hand,
      run: one.answers.run.solution,
    };
  };
  return {
    runs: [named(now, 'ink'), ...kept.filter((one) => one !== now).map((one) => named(one, 'pencil'))],
    azeotrope: azeotropeRow(now.answers.equilibrium, now.scenario.pressure, units.pressure),
    along,
    measure: touchesOnly(runResults(now.answers.run.solution, measuredStrength)) ? null : measuredStrength,
    strengthFrom: invented.endStrength,
    units,
  };
}

/** A run is called after its plates, or after the first thing in which it differs. */
function difference(one: Ceiling, now: Ceiling, hand: 'ink' | 'pencil', specs: NumberSpecs): string {
  const keys = ['plates', 'reflux', 'efficiency', 'chargeStrength', 'chargeVolume', 'heat', 'pressure'] as const;
  const key = hand === 'ink' ? 'plates' : (keys.find((name) => one.scenario[name] !== now.scenario[name]) ?? 'plates');
  return numberWithUnit(specs[key], one.scenario[key]);
}

/** The results in words. */
export function runWords(now: Ceiling, kept: Ceiling | undefined, units: UnitSystem, specs: NumberSpecs): unknown {
  const results = runResults(now.answers.run.solution, measuredStrength);
  const threshold = print(roundStrength(measuredStrength, units));
  const plates = ink(numberWithUnit(specs.plates, now.scenario.plates));
  const first = touchesOnly(results)
    ? html`With ${plates} the spout touches ${threshold} only at the very start.`
    : results.volumeAbove_m3 === null
      ? html`With ${plates} the spout never reaches ${threshold}. Its best is
        ${ink(units.strength.withUnit(results.best))}.`
      : html`With ${plates} the spout stays above ${threshold} for the first
        ${ink(units.volume.withUnit(results.volumeAbove_m3))} and brings over
        ${ink(units.volume.withUnit(results.pureAlcoholAbove_m3!))} of pure alcohol by then,
        ${ink(percent(results.shareAbove!))} of what is in the charge.`;
  return html`<p>${first} ${kept === undefined ? nothing : before(kept, now, units, specs)}</p>
    ${ceilingWords(now, results.best, units)}
    <p>${endWords(now, units)}</p>`;
}

/** Above the threshold for less than can be read off. */
function touchesOnly({ shareAbove }: RunResults): boolean {
  return shareAbove !== null && shareAbove < 0.005;
}

function before(kept: Ceiling, now: Ceiling, units: UnitSystem, specs: NumberSpecs): unknown {
  const results = runResults(kept.answers.run.solution, measuredStrength);
  const name = pencil(difference(kept, now, 'pencil', specs));
  if (touchesOnly(results)) return html`The ${name} you had before touched it only at the very start.`;
  return results.volumeAbove_m3 === null
    ? html`The ${name} you had before never reached it.`
    : html`The ${name} you had before held it for ${pencil(units.volume.withUnit(results.volumeAbove_m3))}.`;
}

function ceilingWords(now: Ceiling, best: number, units: UnitSystem): unknown {
  const { azeotrope } = now.answers.equilibrium;
  if (azeotrope === null) return nothing;
  const short = units.strength.toShown(azeotrope.strength) - units.strength.toShown(best);
  return html`<p>
    It never touches the line. The strongest it gets is ${ink(units.strength.withUnit(best))},
    ${ink(fixed(short, short < 0.1 ? 2 : 1))} short of ${print(units.strength.withUnit(azeotrope.strength))}. More
    plates or more reflux make that distance smaller; nothing makes it go away.
  </p>`;
}

function endWords(now: Ceiling, units: UnitSystem): unknown {
  const { solution } = now.answers.run;
  const results = runResults(solution, measuredStrength);
  const took = ink(clock(results.duration_s));
  const all = html`${ink(units.volume.withUnit(results.collected_m3))} with
  ${ink(units.volume.withUnit(results.pureAlcohol_m3))} of pure alcohol, ${ink(percent(results.shareCollected))} of the
  charge’s`;
  const { ending } = solution;
  if (ending.kind === 'stopped' && ending.rule.kind === 'spoutStrengthBelow') {
    const end = print(roundStrength(invented.endStrength, units));
    return html`The spout is down to ${end} ${took} after the first vapour. By then ${all} has come over.`;
  }
  if (ending.kind === 'stopped') {
    const share = ink(percent(results.collected_m3 / now.scenario.chargeVolume));
    return html`After ${took} ${share} of the charge’s volume has come over, ${all}, and the run is ended before the
    kettle runs low.`;
  }
  return html`The run broke off after ${took}: ${ending.message}`;
}
