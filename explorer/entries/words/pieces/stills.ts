// What comes over from each of several stills, in words; what the column pays for it, as a question; the doubler's place.

import { html, nothing } from 'lit';
import '../../../components/answer/kp-answer.js';
import type { StillsQuestions } from '../../../pages/one-charge-three-stills/questions.js';
import type { Here } from '../../entry.js';
import { stillsAsks } from '../../../pages/one-charge-three-stills/own-stills.js';
import type { Piece } from '../../pieces.js';
import * as words from '../../../pages/one-charge-three-stills/words.js';
import { stillOf } from '../../../state/paths.js';

function results({ once }: Pick<Here, 'once'>, now: words.Stills): words.Results {
  return once('results', [now], () => words.resultsOf(now));
}
const lead = 'To bring over the same alcohol the column takes';
const tail = 'times the pot’s heat.';

export const recovered: Piece<StillsQuestions> = {
  asks: stillsAsks,
  cautions: ['spout', 'heating'],
  view: (here, now) => words.recoveredWords(now, results(here, now), here.units),
  notes: ({ units }, now) =>
    html`<p>
      Charge and stills are invented, of bare metal that loses heat; the air is at
      ${units.pressure.withUnit(stillOf(now.scenario).air.pressure_Pa)}. Pot and doubler have the kettle of the column.
      Every run begins cold and goes by the same run sheet; a pot sends nothing back.
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
    return words.doublerWords(
      now,
      results(here, now),
      units,
      blank('doublerCharges[0].charge.volume_m3'),
      blank('doublerCharges[0].charge.strength'),
    );
  },
};
