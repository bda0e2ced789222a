// 'The ceiling moves' as an entry: it has a number and a ruler of its own and asks in its own time.

import { html } from 'lit';
import { anyKind, good } from '../entry.js';
import './the-ceiling-moves.js';

export const ceilingMoves = anyKind<Readonly<Record<string, never>>, Record<string, never>>({
  name: 'ceiling-moves',
  title: 'The ceiling against pressure',
  about: 'where the azeotrope stands at any pressure, with a ruler of its own',
  start: {},
  check: () => good({}),
  label: () => 'the ceiling against pressure',
  whole: true,
  cautions: () => ['vacuum'],
  view: ({ solver, scenario, units }) =>
    html`<kp-ceiling-moves .solver=${solver} .pressure=${scenario.ceilingPressure} .units=${units}></kp-ceiling-moves>`,
  words: ({ scenario, units }) => `The ceiling asked at ${units.pressure.withUnit(scenario.ceilingPressure)}.`,
});
