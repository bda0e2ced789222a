// What each of several stills makes of one charge, a column a still.

import { html } from 'lit';
import type { StillsQuestions } from '../../../pages/one-charge-three-stills/questions.js';
import { ownStills, stillsAsks } from '../../../pages/one-charge-three-stills/own-stills.js';
import type { Piece } from '../../pieces.js';
import { recoveredTable, resultsOf } from '../../../pages/one-charge-three-stills/words.js';
import { caution } from '../../words.js';

const weakKettle = caution(
  html`A weak kettle is a hot one: what is left can scald, and the level has sunk. Never let it run below its heating
  surface. Follow local codes and the maker’s instructions.`,
);

export const stillsTable: Piece<StillsQuestions> = {
  asks: stillsAsks,
  view: ({ units, specs, once }, now) => {
    const results = once('results', [now], () => resultsOf(now));
    return recoveredTable(now, results, ownStills(now.common), units, specs);
  },
  notes: () => weakKettle,
};
