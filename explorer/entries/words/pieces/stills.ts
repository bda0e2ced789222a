// What comes over from each of several stills, in words; what the column pays for it, as a question; the doubler's place.

import { html, nothing } from 'lit';
import { fromSI } from '#lib/index.js';
import '../../../components/answer/kp-answer.js';
import { invented } from '../../../state/derive.js';
import { remembered } from '../../../state/memo.js';
import { inventedStills, type StillsQuestions } from '../../../state/three-stills.js';
import { fixed, joined, percent } from '../../../text/format.js';
import { stillsAsks } from '../../own-stills.js';
import type { Piece } from '../../pieces.js';
import * as words from '../../three-stills.js';

const results = remembered(words.resultsOf);
const minutes = (seconds: number): string => joined(fixed(fromSI(seconds, 'min'), 0), 'min');
const lead = 'To bring over the same alcohol the column takes';
const tail = 'times the pot’s heat.';

export const recovered: Piece<StillsQuestions> = {
  asks: stillsAsks,
  cautions: ['spout', 'heating'],
  view: ({ units }, now) => words.recoveredWords(now, results(now), units),
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
  view: (_, now) => {
    if (!words.endedByAlcohol(now)) return nothing;
    const ratio = words.heatRatio(results(now));
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
  view: ({ units, blank }, now) =>
    words.doublerWords(now, results(now), units, blank('doublerVolume'), blank('doublerStrength')),
};
