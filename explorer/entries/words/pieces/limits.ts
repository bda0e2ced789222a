// What the metal says to the run by the page's sheet: the limits it passes, when, how far, and what would cure it; and what the
// still could take.

import { html } from 'lit';
import {
  diameterForHeat,
  FLOOD_LIMIT,
  gaugeOffset,
  heatAtFlooding,
  waterForDuty,
  type Limit,
  type Still,
} from '#lib/index.js';
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
  view: ({ units }, now) =>
    html`${saidLimits(now.answers.sheetRun.solution.limits)} ${couldTake(stillRun(now), units)} ${gaugeOff(now, units)}`,
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
function couldTake({ kettle: { power_W }, column, air }: Still, units: UnitSystem): unknown {
  const { volume, temperature } = units;
  const rise = temperature.toShown(300 + WATER_RISE_K) - temperature.toShown(300);
  // A litre of water is a kilogram, near enough for a tap.
  const water_m3_min = (waterForDuty(power_W, WATER_RISE_K) * 60) / 1000;
  const cooling = html`To condense all of ${ink(units.power.withUnit(power_W))}, water that may warm by
  ${print(joined(fixed(rise, 0), temperature.unit))} has to run at
  ${ink(joined(volume.text(water_m3_min), `${volume.unit}/min`))}.`;
  if (column.kind !== 'plates') return html`<p>${cooling}</p>`;
  const passing = { ...loaded, pressure_Pa: air.pressure_Pa };
  const most = heatAtFlooding(column, passing, FLOOD_LIMIT);
  const wide = diameterForHeat(column, passing, power_W, FLOOD_LIMIT);
  return html`<p>
    These plates take up to ${ink(units.power.withUnit(most))} before they are at ${print(percent(FLOOD_LIMIT))} of
    flooding; for ${ink(units.power.withUnit(power_W))} they would have to be ${ink(units.across.withUnit(wide))} wide.
    ${cooling}
  </p>`;
}

/** What a thermometer in the kettle is off if one forgets the plates above it. */
function gaugeOff(now: SheetNow, units: UnitSystem): unknown {
  const { pressure_Pa } = stillRun(now).air;
  const kettle = now.answers.sheetRun.solution.holders[0]!.pressure_Pa;
  const over = kettle - pressure_Pa;
  if (over < 1) return '';
  const off = gaugeOffset(pressure_Pa, over);
  const shown = units.temperature.toShown(300 + off) - units.temperature.toShown(300);
  return html`<p>
    The kettle stands under ${ink(units.pressure.withUnit(over))} more than the head, the weight of what is above it,
    and boils ${ink(joined(fixed(shown, 1), units.temperature.unit))} hotter for it. Who forgets that reads the kettle
    weaker than it is.
  </p>`;
}

/** The still with everything that nobody set. */
function stillRun({ answers }: SheetNow): Still {
  return answers.sheetRun.solution.problem.still;
}
