// How the spout runs over the charge: strength and temperatures, kept runs in pencil, the page's cursor.

import { html } from 'lit';
import { ofRuns } from '../../../figures/run/of-runs.js';
import { runFigure } from '../../../figures/run/run-figure.js';
import type { NamedRun, RunFigureRows } from '../../../rows/run.js';
import { azeotropeRow } from '../../../state/equilibrium-rows.js';
import type { NumberSpecs } from '../../../state/number-specs.js';
import { cursorX, turned } from '../../../state/run-cursor.js';
import { runResults } from '../../../state/run-results.js';
import type { UnitSystem } from '../../../text/unit-systems.js';
import { asking, type CeilingAsks, type CeilingNow } from '../../../pages/the-ceiling/asks.js';
import { difference, measuredStrength, touchesOnly } from '../../../pages/the-ceiling/run-difference.js';
import type { FigurePiece } from '../piece.js';
import { stillOf } from '../../../state/paths.js';

type Names = 'run' | 'equilibrium';
type Now = CeilingNow<Names>;

export const run: FigurePiece<CeilingAsks<Names>> = {
  asks: asking('run', 'equilibrium'),
  keeps: true,
  cautions: ['spout'],
  draw: ({ kept, cursor: { along }, units, specs, once }, now) => ({
    figure: runFigure,
    rows: once('run', [now, ...kept, along, units, specs], () => rows(now, kept, along, units, specs)),
  }),
  cursor: {
    x: ({ cursor }, now) => cursorX(cursor, now.answers.run.solution),
    moved: ({ cursor }, x) => ({ ...cursor, x }),
  },
  words: ({ cursor, moveCursor }, now) =>
    html`<button type="button" class="word-button" @click=${() => moveCursor(turned(cursor, now.answers.run.solution))}>
      ${cursor.along === 'volume' ? 'Draw it against time' : 'Draw it against what is collected'}
    </button>`,
};

/** The run in ink, kept ones in pencil. */
function rows(
  now: Now,
  kept: readonly Now[],
  along: 'volume' | 'time',
  units: UnitSystem,
  specs: NumberSpecs,
): RunFigureRows {
  const named = (one: Now, hand: 'ink' | 'pencil'): NamedRun => {
    const label = difference(one.scenario, now.scenario, hand, specs);
    const pencilled = hand === 'pencil';
    return {
      label: pencilled ? `${label}, before` : label,
      shortLabel: pencilled ? `${label.replace(/\u00a0plates?$/u, '')} before` : label,
      hand,
      weight: pencilled ? 'pencil' : 'result',
      run: one.answers.run.solution,
    };
  };
  return ofRuns({
    panels: ['strength', 'temperature'],
    runs: [
      named(now, 'ink'),
      ...kept.filter(({ answers }) => answers.run !== now.answers.run).map((one) => named(one, 'pencil')),
    ],
    azeotrope: azeotropeRow(now.answers.equilibrium, stillOf(now.scenario).air.pressure_Pa, units.pressure),
    along,
    measure: touchesOnly(runResults(now.answers.run.solution, measuredStrength)) ? null : measuredStrength,
    strengthFrom: null,
    threshold: null,
    units,
  });
}
