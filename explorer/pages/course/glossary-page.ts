// The page 'Words': every term of the glossary with its line.

import { html, LitElement, type PropertyDeclarations } from 'lit';
import { permit } from '../../entries/words.js';
import type { Scenario } from '../../state/scenario.js';
import { glossary } from '../../text/glossary/glossary.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import type { Solver } from '../../worker/solver-client.js';
import '../../styles/course.css';
import type { PageElement } from '../page-element.js';

export class GlossaryPage extends LitElement implements PageElement {
  static override properties: PropertyDeclarations = {
    next: { attribute: false },
  };
  declare solver: Solver;
  declare scenario: Scenario;
  declare units: UnitSystem;
  declare next: PageElement['next'];

  constructor() {
    super();
    this.next = null;
  }

  protected override createRenderRoot(): this {
    return this;
  }

  protected override render(): unknown {
    return html`<header class="page-head">
        <h1>Words</h1>
        <p class="promise">The trade’s words and ours, a line each.</p>
      </header>
      ${glossary.map(
        ({ title, terms }) =>
          html`<section class="entry prose" aria-label=${title}>
            <h2>${title}</h2>
            <dl class="glossary-list">
              ${[...terms]
                .sort((a, b) => a.name.localeCompare(b.name, 'en'))
                .map(
                  ({ name, means }) =>
                    html`<dt>${name}</dt>
                      <dd>${means}</dd>`,
                )}
            </dl>
          </section>`,
      )}
      <footer class="page-foot">${permit}</footer>`;
  }
}

customElements.define('kp-glossary-page', GlossaryPage);
