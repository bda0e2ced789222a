// What the run by the page's sheet comes to, step by step, and how it ended.

import { html } from 'lit';
import type { RunStep } from '#lib/index.js';
import { clock, fixed, joined, percent } from '../../../text/format.js';
import type { UnitSystem } from '../../../text/unit-systems.js';
import type { Piece } from '../../pieces.js';
import { sheetAsks, sheetRun, type SheetAsks } from '../../run-sheet/asks.js';
import { endedBy } from '../../run-sheet/ended-by.js';
import { endSaid, stepSaid } from '../../run-sheet/said.js';
import { ink } from '../../words.js';
import type { SheetRun } from '../../../state/run-sheet.js';

export const sheetInWords: Piece<SheetAsks> = {
  asks: sheetAsks,
  cautions: ['spout', 'kettle'],
  view: ({ units }, now) =>
    html`${stepsInWords(sheetRun(now), sheetRun(now).problem.sheet, units)} ${sumInWords(sheetRun(now), units)}`,
};

function stepsInWords(run: SheetRun, steps: readonly RunStep[], units: UnitSystem): unknown {
  const starts = run.stepStarts.map((row) => run.time_s[row]!);
  const end_s = run.time_s.at(-1)!;
  return html`<ol class="steps-in-words">
    ${starts.map((from_s, index) => {
      const step = steps[index];
      if (step === undefined) return '';
      const to_s = starts[index + 1] ?? end_s;
      const lastOne = index === starts.length - 1;
      const met =
        lastOne && run.ending.kind === 'stopped'
          ? run.ending.rule
          : endedBy(run, step, run.stepStarts[index]!, run.stepStarts[index + 1] ?? run.rows - 1);
      const how = lastOne && run.ending.kind !== 'stopped' ? brokenOff(run, units) : `until ${endSaid(met, units)}`;
      const name = capital(stepSaid(step, units));
      // Met when it began, or too short to be told.
      return to_s - from_s < 1
        ? html`<li>${name}: over as soon as it began, ${how}.</li>`
        : html`<li>${name} for ${ink(clock(to_s - from_s))}, ${how}.</li>`;
    })}
  </ol>`;
}

/** A run that no rule ended: it never boiled, or the solver’s own words. */
function brokenOff(run: SheetRun, units: UnitSystem): string {
  if (run.ending.kind !== 'neverMet' || run.firstVapour_s !== null) return run.ending.message;
  const stands = units.temperature.withUnit(run.kettleTemperature_K.at(-1)!);
  return `and it never boils: the kettle stays at ${stands}, where the walls lose all the heat it gets`;
}

function sumInWords(run: SheetRun, units: UnitSystem): unknown {
  const last = run.rows - 1;
  const charged = run.pureAlcoholCollected_m3[0]! + run.pureAlcoholLeft_m3[0]!;
  const hour_s = units.time.fromShown(1);
  const energy = joined(
    units.power.text(run.supplied_J[last]! / hour_s),
    units.power.unit.endsWith('/h') ? units.power.unit.slice(0, -2) : `${units.power.unit}h`,
  );
  let lost_J = 0;
  for (let row = 1; row <= last; row += 1) lost_J += run.lost_W[row]! * (run.time_s[row]! - run.time_s[row - 1]!);
  return html`<p>
    After ${ink(clock(run.time_s[last]!))} and ${ink(energy)} of heat, ${ink(percent(lost_J / run.supplied_J[last]!))}
    of it lost by the walls, ${ink(units.volume.withUnit(run.collectedVolume_m3[last]!))} have come over with
    ${ink(joined(fixed(units.volume.toShown(run.pureAlcoholCollected_m3[last]!), 2), units.volume.unit))} of pure
    alcohol, ${ink(percent(run.pureAlcoholCollected_m3[last]! / charged))} of the charge’s.
  </p>`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
