// What is read of damaged files is drawn by the real elements: none throws, whatever the file says of run sheets, stills,
// guesses, answers and formulas.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kindNames } from '../../../explorer/entries/registry.js';
import { readNotebookFile } from '../../../explorer/keep/read-file.js';
import { EntriesPage } from '../../../explorer/pages/entries-page.js';
import { workOn, type Notebook } from '../../../explorer/state/notebook-record.js';
import { unitSystems } from '../../../explorer/text/unit-systems.js';
import type { Solver } from '../../../explorer/worker/solver-client.js';
import { anyMutation, fullFile, mutated } from '../../support/mutated-files.js';
import { settled } from '../../support/settled.js';
import { until } from '../../support/until.js';
import { scenarioOn } from '../../../explorer/state/page-scenario.js';

/** Files drawn; what the library makes of their numbers is not asked here. */
const files = 20;
/** Files damaged to find them: about one in eight is let in, rarely one in twelve. */
const tried = 1000;
const solver = { answer: () => new Promise(() => undefined) } as unknown as Solver;

/** Draws the first of the reader's own pages, and leaves it again. */
async function draw(notebook: Notebook): Promise<void> {
  const record = notebook.pages[0];
  if (record === undefined) return;
  const page = Object.assign(new EntriesPage(record), {
    own: true,
    solver,
    scenario: scenarioOn(notebook, record.name),
    units: unitSystems.metric,
    work: workOn(notebook, record.name),
  });
  document.body.append(page);
  await until(() => page.querySelector('h1') !== null);
  await settled();
  page.remove();
}

describe('a damaged file that is let in', () => {
  it('is drawn without an error', async () => {
    const errors: string[] = [];
    const note = (event: ErrorEvent | PromiseRejectionEvent): void => {
      const reason: unknown = 'reason' in event ? event.reason : event.error;
      errors.push(reason instanceof Error ? (reason.stack ?? reason.message) : String(reason));
      event.preventDefault();
    };
    addEventListener('error', note);
    addEventListener('unhandledrejection', note);
    // The entries of one kind each; figures, tables and results in words wait for the solver in the same way.
    const full = JSON.parse(await fullFile()) as { pages: { entries: unknown[] }[]; work: Record<string, unknown> };
    full.pages[0]!.entries = full.pages[0]!.entries.filter(
      (_entry, at, all) => at < kindNames.length || at >= all.length - 2,
    );
    full.work = { 'page-1': full.work['page-1'] };
    const text = JSON.stringify(full);
    let drawn = 0;
    for (const mutation of fc.sample(anyMutation, tried)) {
      if (drawn >= files) break;
      const reading = await readNotebookFile(mutated(text, mutation), [], new Date(0));
      if (reading.kind !== 'read') continue;
      drawn += 1;
      await draw(reading.notebook);
      expect(errors, JSON.stringify(mutation)).toEqual([]);
    }
    removeEventListener('error', note);
    removeEventListener('unhandledrejection', note);
    expect(drawn).toBe(files);
  });
});
