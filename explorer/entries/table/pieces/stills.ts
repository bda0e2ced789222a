// What each of several stills makes of one charge, a column a still.

import { html } from 'lit';
import type { StillsQuestions } from '../../../state/three-stills.js';
import { ownStills, stillsAsks } from '../../own-stills.js';
import type { Piece } from '../../pieces.js';
import { recoveredTable, resultsOf } from '../../three-stills.js';
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
