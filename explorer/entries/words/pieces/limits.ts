// What the metal says to the run by the page's sheet: the limits it passes, when, how far, and what would cure it; and what the
// still could take.

import { html } from 'lit';
import {
  completeStill,
  diameterForHeat,
  FLOOD_LIMIT,
  gaugeOffset,
  heatAtFlooding,
  waterForDuty,
  type Limit,
  type PlatedSection,
} from '#lib/index.js';
import type { Scenario } from '../../../state/scenario.js';
import { sheetQuestion, runSheetIn } from '../../../state/run-sheet.js';
import { clock, fixed, joined, percent } from '../../../text/format.js';
import type { UnitSystem } from '../../../text/unit-systems.js';
import type { Piece } from '../../pieces.js';
import { sheetAsks, type SheetAsks, type SheetNow } from '../../run-sheet/asks.js';
import { ink, print, source } from '../../words.js';

/** Where plates are loaded most: rich vapour under the head. */
const loaded = { returned: 0.75, vapourMoleFraction: 0.85, liquidMoleFraction: 0.84, temperature_K: 351.5 };

/** Half a per cent of a limit. */
const leastShare = 0.005;

/** What cooling water is let warm by, K. */
const WATER_RISE_K = 30;

export const limitsInWords: Piece<SheetAsks> = {
  asks: sheetAsks,
  cautions: ['heating', 'kettle', 'spout'],
  view: ({ units, common }, now) =>
    html`${saidLimits(now.answers.sheetRun.solution.limits)} ${couldTake(now, sectionOf(now.scenario, common), units)}
    ${gaugeOff(now, units)}`,
  notes: () =>
    html`<p>
        The run is drawn on whatever the still would say. For plates narrower than half a metre and nearer than 150 mm
        the formulas are extrapolated: take them for a guide, and the still’s own noises for the truth.
      </p>
      ${source(
        html`Flooding: Fair (1961) in the fit of Lygeros and Magoulas (1986); weeping and pressure: Sinnott, Chemical
        Engineering Design (2005); least reflux: McCabe and Thiele (1925).`,
      )}`,
};

function saidLimits(limits: readonly Limit[]): unknown {
  if (limits.length === 0) return html`<p>Nothing: by these formulas the still takes the whole run.</p>`;
  return html`<ul class="limits-said">
    ${limits.map(
      ({ kind, from_s, to_s, worst, worst_s, message, cure }) =>
        html`<li data-limit=${kind}>
          <span class="red">From ${clock(from_s)} to ${clock(to_s)}.</span> ${message} ${worstWords(worst, worst_s)}
          ${cure}
        </li>`,
    )}
  </ul>`;
}

/** A share that would print as 0 % says nothing: only when it is worst is said. */
function worstWords(worst: number, worst_s: number): unknown {
  return worst < leastShare
    ? html`It is worst after ${ink(clock(worst_s))}.`
    : html`At worst, after ${ink(clock(worst_s))}, it stands at ${ink(percent(worst))} of the limit.`;
}

/** Rating and sizing: what this column could take, and how wide it would have to be. */
function couldTake({ scenario }: SheetNow, section: PlatedSection | null, units: UnitSystem): unknown {
  const { volume, temperature } = units;
  const rise = temperature.toShown(300 + WATER_RISE_K) - temperature.toShown(300);
  // A litre of water is a kilogram, near enough for a tap.
  const water_m3_min = (waterForDuty(scenario.heat, WATER_RISE_K) * 60) / 1000;
  const cooling = html`To condense all of ${ink(units.power.withUnit(scenario.heat))}, water that may warm by
  ${print(joined(fixed(rise, 0), temperature.unit))} has to run at
  ${ink(joined(volume.text(water_m3_min), `${volume.unit}/min`))}.`;
  if (section === null) return html`<p>${cooling}</p>`;
  const passing = { ...loaded, pressure_Pa: scenario.pressure };
  const most = heatAtFlooding(section, passing, FLOOD_LIMIT);
  const wide = diameterForHeat(section, passing, scenario.heat, FLOOD_LIMIT);
  return html`<p>
    These plates take up to ${ink(units.power.withUnit(most))} before they are at ${print(percent(FLOOD_LIMIT))} of
    flooding; for ${ink(units.power.withUnit(scenario.heat))} they would have to be ${ink(units.across.withUnit(wide))}
    wide. ${cooling}
  </p>`;
}

/** What a thermometer in the kettle is off if one forgets the plates above it. */
function gaugeOff({ answers, scenario }: SheetNow, units: UnitSystem): unknown {
  const kettle = answers.sheetRun.solution.holders[0]!.pressure_Pa;
  const over = kettle - scenario.pressure;
  if (over < 1) return '';
  const off = gaugeOffset(scenario.pressure, over);
  const shown = units.temperature.toShown(300 + off) - units.temperature.toShown(300);
  return html`<p>
    The kettle stands under ${ink(units.pressure.withUnit(over))} more than the head, the weight of what is above it,
    and boils ${ink(joined(fixed(shown, 1), units.temperature.unit))} hotter for it. Who forgets that reads the kettle
    weaker than it is.
  </p>`;
}

function sectionOf(scenario: Scenario, common: Parameters<typeof runSheetIn>[0]): PlatedSection | null {
  const { column } = completeStill(sheetQuestion(scenario, runSheetIn(common)).problem.still);
  return column.kind === 'plates' ? column : null;
}
