// What each of several stills makes of one charge, a column a still.

import { html } from 'lit';
import { remembered } from '../../../state/memo.js';
import type { StillsQuestions } from '../../../state/three-stills.js';
import { ownStills, stillsAsks } from '../../own-stills.js';
import type { Piece } from '../../pieces.js';
import { recoveredTable, resultsOf } from '../../three-stills.js';
import { caution } from '../../words.js';

const results = remembered(resultsOf);

const weakKettle = caution(
  html`A weak kettle is a hot one: what is left can scald, and the level has sunk. Never let it run below its heating
  surface. Follow local codes and the maker’s instructions.`,
);

export const stillsTable: Piece<StillsQuestions> = {
  asks: stillsAsks,
  view: ({ units, specs }, now) => recoveredTable(now, results(now), ownStills(now.common), units, specs),
  notes: () => weakKettle,
};
