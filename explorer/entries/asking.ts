// What entries share that ask the solver for themselves: they ask once a scenario has stood for a moment,
// keep the last good answers, and let the newest request win.

import { LitElement, type PropertyDeclarations, type PropertyValues } from 'lit';
import type { Scenario } from '../state/scenario.js';
import type { UnitSystem } from '../text/unit-systems.js';
import type { AnswerTo, Question } from '../worker/questions.js';
import type { Solver } from '../worker/solver-client.js';

/** Questions by name. */
export type Asks = Readonly<Record<string, Question>>;
/** The answers to them. */
export type Answers<Asked extends Asks> = { readonly [Name in keyof Asked]: AnswerTo<Asked[Name]> };

/** What an entry's numbers are made of. */
export interface Given<Asked extends Asks = Asks> {
  readonly scenario: Scenario;
  readonly answers: Answers<Asked>;
  readonly units: UnitSystem;
}

/** Quiet after the last change before the solver is asked, ms. */
const quiet_ms = 150;

export abstract class AskingEntry<Asked extends Asks = Asks> extends LitElement {
  static override properties: PropertyDeclarations = {
    solver: { attribute: false },
    scenario: { attribute: false },
    units: { attribute: false },
    answered: { state: true },
    refused: { state: true },
  };
  declare solver: Solver;
  declare scenario: Scenario;
  declare units: UnitSystem;
  /** The last good answers with their scenario; undefined until the first come. */
  declare protected answered: { readonly scenario: Scenario; readonly answers: Answers<Asked> } | undefined;

  /** Whether the solver cannot answer for the numbers that are set. */
  declare protected refused: boolean;

  #wait: ReturnType<typeof setTimeout> | undefined;

  /** What is asked in a scenario. */
  protected abstract asks(scenario: Scenario): Asked;

  protected override createRenderRoot(): this {
    return this;
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#wait);
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (!changed.has('scenario')) return;
    clearTimeout(this.#wait);
    const { scenario } = this;
    this.#wait = setTimeout(() => void this.#ask(scenario), this.answered === undefined ? 0 : quiet_ms);
  }

  /** What the entry is made of, once it is known. */
  protected get given(): Given<Asked> | undefined {
    return this.answered && { ...this.answered, units: this.units };
  }

  async #ask(scenario: Scenario): Promise<void> {
    const asked = this.asks(scenario);
    const names = Object.keys(asked);
    const reply = await this.solver.answer(Object.values(asked)).catch(() => null);
    if (scenario !== this.scenario) return;
    this.refused = reply?.kind !== 'answered';
    if (reply?.kind !== 'answered') return;
    const answers = Object.fromEntries(names.map((name, index) => [name, reply.answers[index]]));
    this.answered = { scenario, answers: answers as Answers<Asked> };
  }
}
