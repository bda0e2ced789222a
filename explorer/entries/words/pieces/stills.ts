// What comes over from each of several stills, in words; what the column pays for it, as a question; the doubler's place.

import { html, nothing } from 'lit';
import { fromSI } from '#lib/index.js';
import '../../../components/answer/kp-answer.js';
import { invented } from '../../../state/derive.js';
import { inventedStills, type StillsQuestions } from '../../../state/three-stills.js';
import { fixed, joined, percent } from '../../../text/format.js';
import type { Here } from '../../entry.js';
import { stillsAsks } from '../../own-stills.js';
import type { Piece } from '../../pieces.js';
import * as words from '../../three-stills.js';

function results({ once }: Pick<Here, 'once'>, now: words.Stills): words.Results {
  return once('results', [now], () => words.resultsOf(now));
}
const minutes = (seconds: number): string => joined(fixed(fromSI(seconds, 'min'), 0), 'min');
const lead = 'To bring over the same alcohol the column takes';
const tail = 'times the pot’s heat.';

export const recovered: Piece<StillsQuestions> = {
  asks: stillsAsks,
  cautions: ['spout', 'heating'],
  view: (here, now) => words.recoveredWords(now, results(here, now), here.units),
  notes: ({ units }, now) =>
    html`<p>
      Charge and stills are invented for this page, of bare metal that loses heat; the air is at
      ${units.pressure.withUnit(now.scenario.pressure)}. Every run begins cold and ends when
      ${percent(inventedStills.alcoholLeft)} of all alcohol is left. The column first runs
      ${minutes(invented.totalReflux_s)} at total reflux.
    </p>`,
};

export const heatOfTheColumn: Piece<StillsQuestions> = {
  asks: stillsAsks,
  view: (here, now) => {
    if (!words.endedByAlcohol(now)) return nothing;
    const ratio = words.heatRatio(results(here, now));
    return html`<kp-answer
      .lead=${lead}
      .tail=${tail}
      .label=${'the column’s heat as a multiple of the pot’s'}
      .judge=${(given: number) => words.judgedRatio(given, ratio)}
      .subject=${ratio}
    ></kp-answer>`;
  },
  plain: () => `${lead} … ${tail}`,
};

export const doublerBesides: Piece<StillsQuestions> = {
  asks: stillsAsks,
  view: (here, now) => {
    const { units, blank } = here;
    return words.doublerWords(now, results(here, now), units, blank('doublerVolume'), blank('doublerStrength'));
  },
};
