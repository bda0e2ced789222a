// The run sheet of the page, to be edited; what it comes to stands in figures, words and tables that ask for the same run.
// The sheet is shared by the page, so that all of them follow it.

import { html } from 'lit';
import './kp-run-sheet.js';
import { overruled } from '#lib/index.js';
import { stillOf } from '../../state/paths.js';
import type { SheetSet } from '../../state/scenario.js';
import { cursorX, timeCursor } from '../../state/run-cursor.js';
import { clock } from '../../text/format.js';
import { anyKind, good, type Here } from '../entry.js';
import { sheetAsks, sheetRun, type SheetAsks } from './asks.js';
import type { SheetChangedEvent } from './events.js';
import { endSaid, stepSaid } from './said.js';

type SheetData = Record<string, never>;

export const runSheet = anyKind<SheetData, SheetAsks>({
  name: 'run-sheet',
  title: 'Run sheet',
  about: 'how the still is run, step by step',
  start: {},
  check: () => good({}),
  label: () => 'run sheet',
  asks: (_data, scenario) => sheetAsks(scenario),
  cautions: () => ['heating', 'spout', 'kettle'],
  view: (here) =>
    html`<kp-run-sheet
        .given=${here.scenario}
        .units=${here.units}
        .heat=${stillOf(here.scenario).kettle.power_W}
        .running=${runningStep(here)}
        @kp-sheet=${({ detail }: SheetChangedEvent) => {
          const { sheet, says, together } = detail;
          share(here, sheet, says, together);
        }}
      ></kp-run-sheet>
      ${overruling(here)}`,
  provides: (here) => {
    const run = here.now === undefined ? undefined : sheetRun(here.now);
    const last = (column: ArrayLike<number> | undefined): number | null => column?.[(run?.rows ?? 0) - 1] ?? null;
    return [
      { name: 'runTime', label: 'time of the run by its sheet', quantity: 'time', value: last(run?.time_s) },
      { name: 'collected', label: 'collected by the sheet', quantity: 'volume', value: last(run?.collectedVolume_m3) },
      {
        name: 'pureCollected',
        label: 'pure alcohol collected by the sheet',
        quantity: 'volume',
        value: last(run?.pureAlcoholCollected_m3),
      },
    ];
  },
  words: ({ scenario, units }) =>
    scenario.sheet
      .map((step, index) => {
        const ends = step.until.map((rule) => endSaid(rule, units)).join(' or ');
        return `${String(index + 1)}. ${stepSaid(step, units)}, until ${ends}`;
      })
      .join('\n'),
});

function share(here: Here<SheetData, SheetAsks>, next: SheetSet, says: string, together?: string): void {
  const words = together === undefined ? { says } : { says, together: `run sheet ${together}` };
  if (next.jars === here.scenario.jars) here.set('sheet', next.sheet, words);
  else here.set('jars', next.jars, words);
}

/** The step that runs at the page's cursor. */
function runningStep(here: Here<SheetData, SheetAsks>): number {
  if (here.now === undefined) return -1;
  const run = sheetRun(here.now);
  const at_s = cursorX(timeCursor(here.cursor, run), run);
  return run.stepStarts.findLastIndex((row) => run.time_s[row]! <= at_s);
}

/** 'Change it from here on': the sheet overruled at the cursor. */
function overruling(here: Here<SheetData, SheetAsks>): unknown {
  if (here.now === undefined) return '';
  const run = sheetRun(here.now);
  const at_s = cursorX(timeCursor(here.cursor, run), run);
  const act = (): void => {
    const sheet = overruled(here.scenario.sheet, run, Math.min(at_s, run.time_s.at(-1)!), {});
    share(here, { sheet, jars: here.scenario.jars }, `the sheet can be changed from ${clock(at_s)} on`);
  };
  return html`<p class="words-to-press">
    <button type="button" class="word-button" @click=${act}>Do something else from ${clock(at_s)} on</button>
  </p>`;
}
