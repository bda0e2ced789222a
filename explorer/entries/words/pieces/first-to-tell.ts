// Which thermometer tells first: how early a plate's thermometer moves before the spout of the page's run has lost strength.

import { html } from 'lit';
import { firstToTell, type PlateTells } from '#lib/index.js';
import { clock, countInWords, fixed, joined } from '../../../text/format.js';
import type { UnitSystem } from '../../../text/unit-systems.js';
import type { Piece } from '../../pieces.js';
import { sheetAsks, sheetRun, type SheetAsks } from '../../run-sheet/asks.js';
import { ink } from '../../words.js';

/** A warning that leaves time to change the jar, s. */
const helps_s = 300;
const lost = 0.01;
const moves_K = 0.5;

export const thermometerThatTells: Piece<SheetAsks> = {
  asks: sheetAsks,
  view: ({ units }, now) => {
    const run = sheetRun(now);
    const told = firstToTell(run, moves_K, lost);
    if (!told.found) return html`<p>${told.message} So no thermometer has anything to warn of.</p>`;
    const fall = html`By its run sheet your still is strongest at ${ink(units.strength.withUnit(told.strongest))}, and
    has lost one % vol ${ink(clock(told.fell_s))} after lighting up.`;
    if (told.plates.length === 0)
      return html`<p>${fall} It has no plates to put a thermometer on: use the hydrometer.</p>`;
    const early = told.plates.filter((plate): plate is Early => plate.early_s !== null && plate.early_s >= helps_s);
    const best = early.at(-1);
    if (best === undefined) {
      return html`<p>
        ${fall} None of its ${countInWords(told.plates.length)} ${told.plates.length === 1 ? 'plate' : 'plates'} tells
        it five minutes ahead: use the hydrometer.
      </p>`;
    }
    return html`<p>
      ${fall} The thermometer on <b>plate ${ink(String(best.plate))}</b> of ${told.plates.length}, counted from the
      kettle, has risen by ${ink(halfDegree(units))} <b>${ink(clock(best.early_s))} before</b>, with
      ${ink(units.volume.withUnit(best.early_m3))} still to come. It stood at
      ${ink(units.temperature.withUnit(best.stoodAt_K))}. Plates below it move earlier and say less about the spout;
      those above tell too late.
    </p>`;
  },
  notes: () =>
    html`<p>
      For the still and the run sheet of <i>The still’s limits</i>. Half a degree is what a thermometer shows without
      doubt. That a plate warns before the spout is common practice, no published source.
    </p>`,
};

type Early = PlateTells & { readonly early_s: number; readonly early_m3: number };

const halfDegree = ({ temperature }: UnitSystem): string =>
  joined(fixed(moves_K * (temperature.unit === '°F' ? 1.8 : 1), 1), temperature.unit);
