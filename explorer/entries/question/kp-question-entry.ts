// <kp-question-entry>: a question by its name on a page: asks what it needs, poses it and judges numbers.
// What was written is handed in and told upwards by `kp-answered`. For a leader the answer stands beside it.

import { nothing, type PropertyDeclarations } from 'lit';
import type { Scenario } from '../../state/scenario.js';
import { AskingEntry, type Asks } from '../asking.js';
import type { QuestionDefinition } from './definition.js';
import { questionNamed } from './list.js';
import { questionView } from './question-view.js';

export class QuestionEntry extends AskingEntry {
  static override properties: PropertyDeclarations = {
    ...AskingEntry.properties,
    name: { attribute: false },
    written: { attribute: false },
    leads: { attribute: false },
  };
  /** Which question. */
  declare name: string;
  /** What stands in the blank. */
  declare written: string;
  /** Whether a leader looks on. */
  declare leads: boolean;

  constructor() {
    super();
    this.name = '';
    this.written = '';
    this.leads = false;
  }

  protected override asks(scenario: Scenario): Asks {
    return this.#definition.asks(scenario);
  }

  protected override render(): unknown {
    const { given } = this;
    if (given === undefined) return nothing;
    const posed = this.#definition.pose(given);
    if (posed === null) return nothing;
    return questionView(posed, this.written, this.leads);
  }

  get #definition(): QuestionDefinition {
    const definition = questionNamed(this.name);
    if (definition === undefined) throw new Error(`There is no question called '${this.name}'.`);
    return definition;
  }
}

customElements.define('kp-question-entry', QuestionEntry);

declare global {
  interface HTMLElementTagNameMap {
    'kp-question-entry': QuestionEntry;
  }
}
