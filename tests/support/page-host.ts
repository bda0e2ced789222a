// For browser tests: a page of entries with a notebook behind it, wired as the explorer wires it, and a solver that
// answers at once, on the page's own thread. It is gone after the test.

import { onTestFinished } from 'vitest';
import { EntriesPage } from '../../explorer/pages/entries-page.js';
import { undoKey } from '../../explorer/pages/undo-keys.js';
import { setValue } from '../../explorer/state/acts.js';
import { done, redone, startHistory, undone, type History } from '../../explorer/state/history.js';
import { newNotebook, workOn, type PageRecord } from '../../explorer/state/notebook-record.js';
import { scenarioOn } from '../../explorer/state/page-scenario.js';
import { unitSystems } from '../../explorer/text/unit-systems.js';
import { solverAtHand } from './answers.js';
import { settled } from './settled.js';
import { until } from './until.js';

export class PageHost {
  readonly page: EntriesPage;
  history: History;
  readonly said: string[] = [];
  #clock = 0;
  readonly #name: string;
  readonly #stop = new AbortController();

  /** An own page with these entries. */
  constructor(entries: PageRecord['entries'], title = 'A page for a test') {
    const record = { name: 'page-1', title, promise: '', entries };
    this.#name = record.name;
    this.history = startHistory({ ...newNotebook, pages: [record] });
    this.page = Object.assign(new EntriesPage(record), {
      own: true,
      solver: solverAtHand,
    });
    this.page.addEventListener('kp-act', ({ detail: { next, deed } }) => {
      this.#go(done(this.history, next(this.history.now), { ...deed, at: this.#clock }));
      this.said.push(deed.says);
    });
    this.page.addEventListener('kp-change', ({ detail }) => {
      const { key } = detail;
      const next = setValue(this.history.now, this.#name, key, detail.value);
      this.#go(done(this.history, next, { says: key, page: null, together: key, at: this.#clock }));
    });
    addEventListener(
      'keydown',
      (event) => {
        const way = undoKey(event);
        if (way === undefined) return;
        event.preventDefault();
        if (way === 'undo') this.undo();
        else this.redo();
      },
      this.#stop,
    );
    this.#show();
    const main = document.createElement('main');
    main.append(this.page);
    document.body.append(main);
    onTestFinished(() => this.#leave());
  }

  /** Time goes by, so that what is done next is a step of its own. */
  pause(): void {
    this.#clock += 10_000;
  }

  undo(): void {
    const step = this.history.past.at(-1);
    this.#go(undone(this.history));
    if (step !== undefined) this.page.show(step.entry);
  }

  redo(): void {
    const step = this.history.future[0];
    this.#go(redone(this.history));
    if (step !== undefined) this.page.show(step.entry);
  }

  get entries(): PageRecord['entries'] {
    return this.history.now.pages[0]!.entries;
  }

  /** Waits until there is such a thing on the page, and returns it. */
  async has(selector: string): Promise<HTMLElement> {
    return until(() => this.page.querySelector<HTMLElement>(selector));
  }

  /** Waits until every entry is loaded and drawn with its numbers. */
  async drawn(): Promise<void> {
    await until(() => {
      const bodies = [...this.page.querySelectorAll('[data-entry]')];
      const empty = bodies.filter(({ children }) => [...children].every((child) => child.matches('.entry-controls')));
      const coming = this.page.querySelector('[class$=-to-come]');
      return bodies.length === this.entries.length && empty.length === 0 && coming === null;
    });
    await settled();
  }

  #leave(): void {
    this.#stop.abort();
    document.body.replaceChildren();
  }

  #go(history: History): void {
    this.history = history;
    this.#show();
  }

  #show(): void {
    const { now } = this.history;
    const record = now.pages.find(({ name }) => name === this.#name);
    const scenario = scenarioOn(now, this.#name);
    Object.assign(this.page, { scenario, units: unitSystems.metric, work: workOn(now, this.#name), notebook: now });
    if (record !== undefined) this.page.record = record;
  }
}
