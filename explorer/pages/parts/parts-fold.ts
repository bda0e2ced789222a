// The fold at the foot of a page that tells which still, charge and sheet it uses; what is in it is loaded when it is
// first opened.

import { html, nothing } from 'lit';
import { setValue } from '../../state/acts.js';
import { usedOn, withScenario, scenarioOn } from '../../state/page-scenario.js';
import { withoutValue } from '../../state/paths.js';
import { wanted } from '../../offline/wanted.js';
import type { EntriesPage } from '../entries-page.js';

type Draw = (typeof import('./page-parts.js'))['pageParts'];

export class PartsFold {
  readonly #page: EntriesPage;
  #open = false;
  #draw: Draw | undefined;

  constructor(page: EntriesPage) {
    this.#page = page;
  }

  view(): unknown {
    const { notebook, record } = this.#page;
    const { still, charge, sheet } = usedOn(notebook, record.name);
    const toggled = (event: Event): void => {
      this.#open = (event.target as HTMLDetailsElement).open;
      if (this.#open && this.#draw === undefined) void this.#load();
      this.#page.requestUpdate();
    };
    return html`<details class="page-parts entry" ?open=${this.#open} @toggle=${toggled}>
      <summary>This page uses ${still.name}, ${charge.name}, ${sheet.name}</summary>
      ${this.#open && this.#draw !== undefined ? this.#parts(this.#draw) : nothing}
    </details>`;
  }

  async #load(): Promise<void> {
    const says = 'What this page uses cannot be shown: what draws it could not be loaded.';
    const { pageParts } = await wanted(says, () => import('./page-parts.js'));
    this.#draw = pageParts;
    this.#page.requestUpdate();
  }

  #parts(draw: Draw): unknown {
    const page = this.#page;
    const { name } = page.record;
    return draw({
      page: name,
      notebook: page.notebook,
      scenario: page.scenario,
      specs: page.desk.specs,
      act: (next, deed) => page.act(next, deed),
      set: {
        say: (path, value, label) =>
          page.act((notebook) => setValue(notebook, name, path, value), { says: `${label} set` }),
        takeBack: (path, label) =>
          page.act((notebook) => withScenario(notebook, name, withoutValue(scenarioOn(notebook, name), path)), {
            says: `${label} left to the library`,
          }),
        blank: (path) => page.desk.blank(path),
      },
    });
  }
}
