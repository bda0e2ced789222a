// The picture of the page's still at the page's cursor: levels, plates, flows and jars of the run by its sheet.

import { html } from 'lit';
import '../../components/still/kp-still.js';
import { stillPicture } from '../../figures/still/picture.js';
import { cursorPosition, timeCursor } from '../../state/run-cursor.js';
import { stillMoment } from '../../state/still-moment.js';
import { anyKind, good, type Here } from '../entry.js';
import { sheetAsks, sheetRun, type SheetAsks } from '../run-sheet/asks.js';

type PictureData = Record<string, never>;
type Pictured = Here<PictureData, SheetAsks>;

export const stillPictureKind = anyKind<PictureData, SheetAsks>({
  name: 'still-picture',
  title: 'Picture of the still',
  about: 'kettle, plates and jars to scale, at the cursor of the run by its sheet',
  start: {},
  check: () => good({}),
  label: () => 'picture of the still',
  asks: (_data, scenario) => sheetAsks(scenario),
  cautions: () => ['kettle', 'cooling'],
  view: (here) => {
    const drawn = pictured(here);
    if (drawn === null) return html`<div class="figure-to-come"></div>`;
    return html`<kp-still
      data-figure=${here.mark('still')}
      .draw=${stillPicture}
      .still=${drawn.still}
      .moment=${drawn.moment}
      .units=${here.units}
    ></kp-still>`;
  },
  words: (here) => {
    const drawn = pictured(here);
    if (drawn === null) return '';
    return stillPicture(drawn.still, drawn.moment, here.units, { width: 608, layout: 'wide', steady: true })
      .description;
  },
});

/** The still with its moment; kept while it is far from view. */
function pictured(
  here: Pictured,
): { still: Parameters<typeof stillMoment>[0]; moment: ReturnType<typeof stillMoment> } | null {
  const { now } = here;
  if (now === undefined) return null;
  return here.rows('still', () => {
    const run = sheetRun(now);
    const { still } = run.problem;
    const at = cursorPosition(timeCursor(here.cursor, run), run);
    return { still, moment: here.once('moment', [run, at], () => stillMoment(still, run, at)) };
  });
}
