// <kp-guess-entry>: a guess by its name on a page: asks what it needs, poses it, and says what the gap comes
// to and means once the answer is out. What has been drawn is handed in and told upwards by `kp-guess`.

import { html, nothing, type PropertyDeclarations } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import '../../components/guess/kp-guess.js';
import type { GuessState } from '../../components/guess/kp-guess.js';
import type { Scenario } from '../../state/scenario.js';
import { AskingEntry, type Asks } from '../asking.js';
import type { GuessDefinition, PosedGuess } from './definition.js';
import { guessNamed } from './list.js';
import { gapInNumbers, readGuess } from './reading.js';
import { untouched } from './work.js';

export class GuessEntry extends AskingEntry {
  static override properties: PropertyDeclarations = {
    ...AskingEntry.properties,
    name: { attribute: false },
    state: { attribute: false },
  };
  /** Which guess. */
  declare name: string;
  declare state: GuessState;

  constructor() {
    super();
    this.name = '';
    this.state = untouched;
  }

  protected override asks(scenario: Scenario): Asks {
    return this.#definition.asks(scenario);
  }

  protected override render(): unknown {
    const { given } = this;
    if (given === undefined && this.refused)
      return html`<p class="entry-trouble" role="status">The solver cannot answer for these numbers: set others.</p>`;
    if (given === undefined) return html`<div class="guess-to-come"></div>`;
    const posed = this.#definition.pose(given);
    const { x, y } = this.#definition.axes(this.units);
    const { points, answered } = this.state;
    return html`<p class="guess-task">${posed.task}</p>
      ${keyed(
        this.name,
        html`<kp-guess
          .figure=${posed.figure}
          .rows=${posed.rows}
          .panel=${posed.panel}
          .x=${x}
          .y=${y}
          .start=${posed.asked.start}
          .field=${posed.field}
          .points=${points}
          .answered=${answered}
          .task=${posed.task}
          .reply=${answered ? reply(posed, this.state) : nothing}
          @kp-guess=${({ detail }: CustomEvent<GuessState>) => (this.state = detail)}
        ></kp-guess>`,
      )}`;
  }

  get #definition(): GuessDefinition {
    const definition = guessNamed(this.name);
    if (definition === undefined) throw new Error(`There is no guess called '${this.name}'.`);
    return definition;
  }
}

function reply({ asked, means }: PosedGuess, { points }: GuessState): unknown {
  const reading = readGuess(points, asked);
  const meaning = means(reading);
  return html`<p>${gapInNumbers(reading, asked)}</p>
    ${meaning === '' ? nothing : html`<p>${meaning}</p>`}`;
}

customElements.define('kp-guess-entry', GuessEntry);

declare global {
  interface HTMLElementTagNameMap {
    'kp-guess-entry': GuessEntry;
  }
}
