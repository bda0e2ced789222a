// 'The ceiling moves' as an entry: it has a number and a ruler of its own, and no other entry waits for it.

import { html } from 'lit';
import { lineQuestions, questionAt } from '../../state/drift-rows.js';
import type { DriftQuestion } from '../../worker/kinds/drift.js';
import type { Answers } from '../../worker/questions.js';
import { anyKind, good } from '../entry.js';
import './the-ceiling-moves.js';

type Line = Readonly<Record<string, DriftQuestion>>;

const line: Line = Object.fromEntries(lineQuestions.map((question, lot) => [String(lot), question]));

export const ceilingMoves = anyKind<Readonly<Record<string, never>>, { readonly here: DriftQuestion }>({
  name: 'ceiling-moves',
  title: 'The ceiling against pressure',
  about: 'where the azeotrope stands at any pressure, with a ruler of its own',
  start: {},
  check: () => good({}),
  label: () => 'the ceiling against pressure',
  apart: true,
  asks: (_data, { asked }) => ({ here: questionAt(asked.pressure_Pa) }),
  asksLater: () => line,
  whole: true,
  cautions: () => ['vacuum'],
  view: ({ now, later, scenario, units, once }) =>
    html`<kp-ceiling-moves
      .line=${once('line', [later?.whole?.answers], () => Object.values((later?.whole?.answers ?? {}) as Answers<Line>))}
      .here=${now?.answers.here.points[0]}
      .pressure=${scenario.asked.pressure_Pa}
      .units=${units}
    ></kp-ceiling-moves>`,
  words: ({ scenario, units }) => `The ceiling asked at ${units.pressure.withUnit(scenario.asked.pressure_Pa)}.`,
});
