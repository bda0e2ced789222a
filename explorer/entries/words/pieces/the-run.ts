// What a run comes to, in words: how long the spout holds, how close it gets to the line, what came over.

import { html, nothing } from 'lit';
import { numberWithUnit } from '../../../components/number/number-spec.js';
import type { NumberSpecs } from '../../../state/number-specs.js';
import { runResults } from '../../../state/run-results.js';
import { clock, fixed, percent } from '../../../text/format.js';
import type { UnitSystem } from '../../../text/unit-systems.js';
import { asking, type CeilingAsks, type CeilingNow } from '../../../pages/the-ceiling/asks.js';
import { inventedStill } from '../../../pages/the-ceiling/notes.js';
import type { Provided } from '../../entry.js';
import type { Piece } from '../../pieces.js';
import { columnOf } from '../../../state/column-of.js';
import { simplification } from '../../../state/simplification.js';
import { endSaid } from '../../run-sheet/said.js';
import { difference, differences, measuredStrength, touchesOnly } from '../../../pages/the-ceiling/run-difference.js';
import { ink, pencil, print, roundStrength } from '../../words.js';

type Names = 'run' | 'equilibrium';
type Now = CeilingNow<Names>;

export const runInWords: Piece<CeilingAsks<Names>> = {
  asks: asking('run', 'equilibrium'),
  cautions: ['spout'],
  view: ({ kept, units, specs }, now) => runWords(now, kept.at(-1), units, specs),
  notes: (_, now) => inventedStill(now.answers.run.solution),
  provides: (_, now) => provided(now),
};

/** Results for formulas and tables of the same page. */
function provided(now: Now): readonly Provided[] {
  const { solution } = now.answers.run;
  const { best, volumeAbove_m3, pureAlcoholAbove_m3, collected_m3, pureAlcohol_m3, duration_s } = runResults(
    solution,
    measuredStrength,
  );
  const so = simplification(solution);
  const label = (words: string): string => (so === null ? words : `${words}, ${so}`);
  const drawn_s = duration_s - (solution.firstVapour_s ?? 0);
  return [
    { name: 'run_best', label: label('strongest at the spout'), quantity: 'strength', value: best },
    { name: 'run_above_90', label: label('collected above 90 % vol'), quantity: 'volume', value: volumeAbove_m3 ?? 0 },
    {
      name: 'run_pure_above_90',
      label: label('pure alcohol in that'),
      quantity: 'volume',
      value: pureAlcoholAbove_m3 ?? 0,
    },
    { name: 'run_collected', label: label('collected in all'), quantity: 'volume', value: collected_m3 },
    { name: 'run_pure', label: label('pure alcohol in all'), quantity: 'volume', value: pureAlcohol_m3 },
    { name: 'run_time', label: label('from the first vapour to the end'), quantity: 'time', value: drawn_s },
  ];
}

/** The results in words. */
function runWords(now: Now, kept: Now | undefined, units: UnitSystem, specs: NumberSpecs): unknown {
  const results = runResults(now.answers.run.solution, measuredStrength);
  const threshold = print(roundStrength(measuredStrength, units));
  const plates = ink(numberWithUnit(specs('still.column.count'), columnOf(now.scenario).plates));
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

function before(kept: Now, now: Now, units: UnitSystem, specs: NumberSpecs): unknown {
  const results = runResults(kept.answers.run.solution, measuredStrength);
  const name = pencil(difference(kept.scenario, now.scenario, 'pencil', specs));
  // The first difference is the name of it; the others are said after it.
  const others = differences(kept.scenario, now.scenario, specs).slice(1);
  const also = others.length === 0 ? nothing : html` Different then too: ${pencil(others.join(', '))}.`;
  if (touchesOnly(results)) return html`The ${name} you had before touched it only at the very start.${also}`;
  return results.volumeAbove_m3 === null
    ? html`The ${name} you had before never reached it.${also}`
    : html`The ${name} you had before held it for ${pencil(units.volume.withUnit(results.volumeAbove_m3))}.${also}`;
}

function ceilingWords(now: Now, best: number, units: UnitSystem): unknown {
  const { azeotrope } = now.answers.equilibrium;
  if (azeotrope === null) return nothing;
  const short = units.strength.toShown(azeotrope.strength) - units.strength.toShown(best);
  return html`<p>
    It never touches the line. The strongest it gets is ${ink(units.strength.withUnit(best))},
    ${ink(fixed(short, short < 0.1 ? 2 : 1))} short of ${print(units.strength.withUnit(azeotrope.strength))}. More
    plates or more reflux make that distance smaller; nothing makes it go away.
  </p>`;
}

function endWords(now: Now, units: UnitSystem): unknown {
  const { solution } = now.answers.run;
  const results = runResults(solution, measuredStrength);
  const took = ink(clock(results.duration_s - (solution.firstVapour_s ?? 0)));
  const all = html`${ink(units.volume.withUnit(results.collected_m3))} with
  ${ink(units.volume.withUnit(results.pureAlcohol_m3))} of pure alcohol, ${ink(percent(results.shareCollected))} of the
  charge’s`;
  const so = simplification(solution);
  const how =
    so === null
      ? nothing
      : html`These numbers are ${so}, so that they follow your hand;
          <a href="#the-stills-limits">The still’s limits</a> runs the same still by the same sheet with both.`;
  const { ending } = solution;
  if (ending.kind !== 'stopped') return html`The run broke off after ${took}: ${ending.message}. ${how}`;
  return html`${took} after the first vapour the run is over: ${endSaid(ending.rule, units)}. By then ${all} has come
  over. ${how}`;
}
