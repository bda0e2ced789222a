// 'Why the steps stop': the staircase in words, and both sides of non-ideality.

import { html, nothing } from 'lit';
import { massFractionFromMoleFraction } from '#lib/index.js';
import { numberWithUnit } from '../../../components/number/number-spec.js';
import { namedStrengths } from '../../../state/derive.js';
import { boilingSpan_K, pressureInWords } from '../../../state/equilibrium-rows.js';
import type { NumberSpecs } from '../../../state/number-specs.js';
import { cursorPosition } from '../../../state/run-cursor.js';
import { readAt } from '../../../state/run-results.js';
import { countInWords, fixed, joined, ordinal } from '../../../text/format.js';
import type { UnitSystem } from '../../../text/unit-systems.js';
import { asking, type CeilingAsks, type CeilingNow } from '../../../pages/the-ceiling/asks.js';
import {
  azeotropeSource,
  ceilingNote,
  firstVapourNote,
  modelSource,
  platesNote,
  stairNote,
  surenessAsks,
} from '../../../pages/the-ceiling/notes.js';
import type { Piece } from '../../pieces.js';
import { measuredStrength } from '../../../pages/the-ceiling/run-difference.js';
import { ink, print, roundStrength } from '../../words.js';
import { stillOf } from '../../../state/paths.js';
import { columnOf } from '../../../state/column-of.js';

/** How a boil climbs, step by step. */
export const whySteps: Piece<CeilingAsks<'stages' | 'equilibrium'>> = {
  asks: asking('stages', 'equilibrium'),
  asksLater: surenessAsks,
  view: ({ blank, units }, now) => stairWords(now, blank('charge.strength'), units),
  notes: (here, now) => [modelSource(now.answers.equilibrium.model), firstVapourNote(here)],
};

/** What the azeotrope is. */
export const theAzeotrope: Piece<CeilingAsks<'equilibrium'>> = {
  asks: asking('equilibrium'),
  asksLater: surenessAsks,
  view: ({ units }, now) => {
    const { azeotrope } = now.answers.equilibrium;
    const mass = azeotrope && 100 * massFractionFromMoleFraction(azeotrope.moleFraction);
    return azeotropeWords(now, mass, pressureInWords(stillOf(now.scenario).air.pressure_Pa, units.pressure), units);
  },
  notes: (here, now) => {
    const pressure = pressureInWords(stillOf(now.scenario).air.pressure_Pa, here.units.pressure);
    return [stairNote, azeotropeSource(now.answers.equilibrium.azeotrope, pressure), ceilingNote(here)];
  },
};

/** What Raoult's law gets wrong at both ends. */
export const strangers: Piece<CeilingAsks<'stages' | 'stagesByRaoult'>> = {
  asks: asking('stages', 'stagesByRaoult'),
  view: ({ units }, now) => strangersWords(now, units),
};

/** Plates and thermometers at the cursor. */
export const platesAtWorkWords: Piece<CeilingAsks<'run' | 'equilibrium'>> = {
  asks: asking('run', 'equilibrium'),
  cautions: ['kettle'],
  view: ({ cursor, units, specs }, now) => {
    const at = cursorPosition(cursor, now.answers.run.solution);
    return [platesAtWork(now, at, units, specs), thermometerWords(now, at, units)];
  },
  notes: () => platesNote,
};

/** How a boil climbs, from the kettle of the setup sentence; `kettle` is its blank. */
function stairWords(now: CeilingNow<'stages'>, kettle: unknown, units: UnitSystem): unknown {
  const { ladder, stages } = now.answers.stages;
  const text = (rung: number): unknown => ink(units.strength.text(ladder[rung - 1]!));
  const to95 = stages[0] ?? null;
  const passes =
    to95 === null || to95 <= 4
      ? nothing
      : html`, and the ${ink(ordinal(Math.ceil(to95)))} passes ${print(roundStrength(namedStrengths[0], units))}`;
  return html`<p>
    Boil a mixture of alcohol and water, and the vapour is stronger than the liquid it left. An ideal plate condenses
    that vapour and boils it again: one step up. From a kettle of <span class="kept-together">${kettle},</span> with all
    of it sent back as reflux, the first step stands at ${text(1)} ${units.strength.unit}, the second at ${text(2)}, the
    fourth at ${text(4)}${passes}. Then the steps shrink, because vapour and liquid grow alike.
  </p>`;
}

/** What Raoult's law would make of the same kettle: where non-ideality helps, and where it blocks. */
function strangersWords(now: CeilingNow<'stages' | 'stagesByRaoult'>, units: UnitSystem): unknown {
  const real = now.answers.stages;
  const ideal = now.answers.stagesByRaoult;
  const four = 4;
  const stages97 = ideal.stages[2] ?? null;
  const helps = real.ladder[four - 1]! > ideal.ladder[four - 1]!;
  return html`<p>
      Raoult’s law takes the two for strangers: each boils as if the other were not there.
      ${
        helps
          ? html`At the weak end that misses a gift. ${sentence(countInWords(four))} ideal stages from this kettle give
            ${ink(units.strength.withUnit(real.ladder[four - 1]!))}; by Raoult’s law they would give only
            ${ink(units.strength.withUnit(ideal.ladder[four - 1]!))}. Water pushes alcohol out of a weak mixture, and
            the first plates do the work of many.`
          : html`At the weak end that misses a gift, for water pushes alcohol out of a weak mixture. A kettle as strong
            as this one is past it.`
      }
    </p>
    <p>
      At the strong end it misses the ceiling. Where alcohol is plenty it is the water that is pushed out, until it
      leaves as readily as the alcohol.
      ${
        stages97 === null
          ? nothing
          : html`By Raoult’s law ${ink(stagesInWords(Math.max(1, Math.ceil(stages97))))} would pass
            ${print(roundStrength(namedStrengths[2], units))}, and with enough plates nothing would stand between you
            and pure alcohol.`
      }
    </p>`;
}

/** What the azeotrope is. */
function azeotropeWords(
  now: CeilingNow<'equilibrium'>,
  massPercent: number | null,
  pressure: string,
  units: UnitSystem,
): unknown {
  const { azeotrope } = now.answers.equilibrium;
  if (azeotrope === null || massPercent === null) {
    return html`<p>At this pressure the model has no azeotrope: the vapour is stronger than the liquid to the end.</p>`;
  }
  return html`<p>
    At a mole fraction of ${print(fixed(azeotrope.moleFraction, 3))}, which is
    ${print(units.strength.withUnit(azeotrope.strength))} or ${print(`${fixed(massPercent, 1)}\u00a0%`)} by mass, the
    curve meets the diagonal: the vapour has the strength of the liquid, and one step more changes nothing. That mixture
    is the <em>azeotrope</em>, and it is the ceiling of every column run at ${print(pressure)}.
  </p>`;
}

/** The reader's own plates at the cursor's moment, and what the thermometers see there. */
function platesAtWork(now: CeilingNow<'run'>, position: number, units: UnitSystem, specs: NumberSpecs): unknown {
  const { solution } = now.answers.run;
  const { plates, efficiency, reflux } = columnOf(now.scenario);
  const spout = ink(units.strength.withUnit(readAt(solution.spoutStrength, position)));
  const kettle = ink(units.strength.withUnit(readAt(solution.kettleStrength, position)));
  if (plates === 0) {
    return html`<p>
      At the cursor above, a kettle of ${kettle} gives ${spout} at the spout: one step, and no plate to take another.
    </p>`;
  }
  const turns =
    efficiency < 1
      ? html`Each is ${ink(numberWithUnit(specs('still.column.efficiency'), efficiency))} efficient, so it turns before
        it meets the curve,`
      : html`Each is ideal, so it climbs to the curve,`;
  return html`<p>
    At the cursor above, ${ink(numberWithUnit(specs('still.column.count'), plates))} climb from ${kettle} in the kettle
    to ${spout} at the spout. ${turns} and it comes down to the line of its reflux,
    ${ink(numberWithUnit(specs('sheet[2].reflux'), reflux))}, not to the diagonal: what is drawn off is missing on the
    way back. While the kettle weakens the plates give up some of what they hold, and the steps leave that line.
  </p>`;
}

/** Kettle and head at the cursor, and how little the head can tell near the ceiling. */
function thermometerWords(now: CeilingNow<'run' | 'equilibrium'>, position: number, units: UnitSystem): unknown {
  const { solution } = now.answers.run;
  const { temperature } = units;
  const span_K = boilingSpan_K(now.answers.equilibrium, measuredStrength);
  const degrees = span_K === null ? null : temperature.toShown(300 + span_K) - temperature.toShown(300);
  return html`<p>
    The kettle boils at ${ink(temperature.withUnit(readAt(solution.kettleTemperature_K, position)))} and the head stands
    at ${ink(temperature.withUnit(readAt(solution.headTemperature_K, position)))}.
    ${
      degrees === null
        ? nothing
        : html`Near the ceiling a thermometer sees little: from ${print(roundStrength(measuredStrength, units))} to the
          azeotrope the boil moves by ${print(joined(fixed(degrees, 1), temperature.unit))} in all, less than the
          weather can move it. The head tells when the strength has fallen, not how near the ceiling it stood.`
    }
  </p>`;
}

function stagesInWords(count: number): string {
  return `${countInWords(count)} ${count === 1 ? 'stage' : 'stages'}`;
}

function sentence(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
