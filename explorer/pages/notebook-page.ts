// What every page shares: it asks the solver when its questions change, keeps the last good answers,
// holds the number in focus, the corrections and the pencil lines. A page adds its questions and words.

import { html, LitElement, nothing, type PropertyDeclarations, type PropertyValues } from 'lit';
import '../components/number/kp-setup.js';
import type { NumberChange, NumberFaultReport, NumberFocus } from '../components/number/events.js';
import type { SentencePart } from '../components/number/kp-setup.js';
import type { NumberFault } from '../components/number/number-spec.js';
import { permit } from '../entries/words.js';
import { numberSpecs, type NumberSpecs } from '../state/number-specs.js';
import type { ParameterKey, Scenario } from '../state/scenario.js';
import { correctionOf, refusalOf } from '../text/messages.js';
import type { UnitSystem } from '../text/unit-systems.js';
import { newestWins, type Lane } from '../worker/newest-wins.js';
import type { AnswerTo, Question, Reply } from '../worker/questions.js';
import type { Solver } from '../worker/solver-client.js';
import { NearView } from './near-view.js';

/** Questions by name. */
export type Questions = Readonly<Record<string, Question>>;
/** The answers to them, with the scenario they belong to. */
export interface Answered<Asked extends Questions> {
  readonly scenario: Scenario;
  readonly answers: { readonly [Name in keyof Asked]: AnswerTo<Asked[Name]> };
}
/** A page as the wiring sees it. */
export interface PageElement extends HTMLElement {
  solver: Solver;
  scenario: Scenario;
  units: UnitSystem;
  /** The page after this one; null on the last. */
  next: { readonly title: string; readonly address: string } | null;
  /** After something was undone or redone: shows the entry it was done to. */
  readonly show?: (entry: string | undefined) => void;
}

interface Request<Asked> {
  readonly scenario: Scenario;
  readonly questions: Asked;
}

const mostPencils = 3;

export abstract class NotebookPage<Asked extends Questions = Questions> extends LitElement {
  static override properties: PropertyDeclarations = {
    solver: { attribute: false },
    scenario: { attribute: false },
    units: { attribute: false },
    next: { attribute: false },
    answered: { state: true },
    pencils: { state: true },
    inFocus: { state: true },
    docked: { state: true },
    faults: { state: true },
    refusal: { state: true },
  };
  declare solver: Solver;
  declare scenario: Scenario;
  declare units: UnitSystem;
  declare next: PageElement['next'];
  /** The last good answers; undefined until the first come. */
  declare protected answered: Answered<Asked> | undefined;
  /** Answers kept as pencil lines, the oldest first. */
  declare protected pencils: readonly Answered<Asked>[];
  declare private inFocus: ParameterKey;
  declare private docked: boolean;
  declare private faults: ReadonlyMap<string, NumberFault>;
  declare private refusal: string;

  /** Which figures can be seen. */
  protected readonly near = new NearView(this);
  #lane: Lane<Request<Asked>> | undefined;
  #asked: Asked | undefined;

  constructor(first: ParameterKey = 'chargeVolume') {
    super();
    this.next = null;
    this.pencils = [];
    this.inFocus = first;
    this.docked = false;
    this.faults = new Map();
    this.refusal = '';
    this.addEventListener('kp-number-focus', ({ detail }) => this.#focus(detail));
    // A number with a ruler of its own leaves the page's ruler and correction line alone.
    const owned = (target: EventTarget | null): boolean => (target as Element).matches('.own-ruler');
    this.addEventListener('kp-fault', ({ detail, target }) => {
      if (!owned(target)) this.#note(detail);
    });
    this.addEventListener('kp-change', ({ detail, target }) => {
      if (!owned(target)) this.#changed(detail);
    });
    this.addEventListener('kp-put-back', ({ detail }) => this.#blanks(detail.key).forEach((blank) => blank.putBack()));
    this.addEventListener('kp-type', ({ detail }) => this.#blanks(detail.key)[0]?.type());
    this.addEventListener('kp-done', this.#done);
    this.addEventListener('pencil', ({ detail }) => this.#pencil(detail.action));
  }

  /** What the page asks in a scenario; the very same record when nothing it asks changes. */
  protected abstract questions(scenario: Scenario): Asked;

  protected override createRenderRoot(): this {
    return this;
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('scenario')) this.ask();
  }

  /** Asks what the page asks now; for a page whose questions depend on more than the numbers. */
  protected ask(): void {
    const questions = this.questions(this.scenario);
    if (questions === this.#asked) return;
    this.#asked = questions;
    this.#lane ??= newestWins(
      ({ questions }) => this.solver.answer(Object.values(questions)),
      (reply: Reply, request) => this.#receive(reply, request),
      () => {
        this.refusal = refusalOf([]);
      },
    );
    this.#lane.request({ scenario: this.scenario, questions });
  }

  protected get specs(): NumberSpecs {
    return numberSpecs(this.units);
  }

  /** The setup sentence with its ruler. */
  protected setup(sentence: readonly SentencePart<ParameterKey>[]): unknown {
    const wrong = [...this.faults].at(-1);
    const correction =
      wrong === undefined
        ? null
        : correctionOf(this.specs[wrong[0] as ParameterKey], wrong[1], this.scenario[wrong[0] as ParameterKey]);
    return html`<kp-setup
        .sentence=${sentence}
        .specs=${this.specs}
        .values=${this.scenario}
        .earlier=${this.pencils.at(-1)?.scenario ?? null}
        .inFocus=${this.inFocus}
        .docked=${this.docked}
        .correction=${correction}
      ></kp-setup>
      ${this.refusal === '' ? nothing : html`<p class="correction" role="alert">${this.refusal}</p>`}`;
  }

  /** The foot of a page: the way on, and what the notebook is not. */
  protected foot(): unknown {
    const { next } = this;
    return html`<footer class="page-foot">
      ${next === null ? nothing : html`<p class="next-page">Next page: <a href=${next.address}>${next.title}</a></p>`}
      ${permit}
    </footer>`;
  }

  /** The same number again, elsewhere in the text. */
  protected blank(key: ParameterKey): unknown {
    return html`<kp-blank
      .spec=${this.specs[key]}
      .value=${this.scenario[key]}
      ?current=${key === this.inFocus}
    ></kp-blank>`;
  }

  #receive(reply: Reply, { scenario, questions }: Request<Asked>): void {
    if (reply.kind === 'refused') {
      this.refusal = refusalOf(reply.faults);
      return;
    }
    const names = Object.keys(questions);
    const answers = Object.fromEntries(names.map((name, index) => [name, reply.answers[index]]));
    this.answered = { scenario, answers: answers as Answered<Asked>['answers'] };
    this.refusal = '';
  }

  #focus({ key, touch }: NumberFocus): void {
    this.inFocus = key as ParameterKey;
    if (!touch || this.docked) return;
    this.docked = true;
    void this.updateComplete.then(() => {
      const figure = this.querySelector('.setup-figure') ?? this.querySelector('kp-figure');
      figure?.scrollIntoView({ block: 'start' });
    });
  }

  #note({ key, fault }: NumberFaultReport): void {
    const faults = new Map(this.faults);
    faults.delete(key);
    if (fault !== null) faults.set(key, fault);
    this.faults = faults;
  }

  /** The ruler's number counts as in focus, wherever the change came from. */
  #changed({ key }: NumberChange): void {
    this.inFocus = key as ParameterKey;
  }

  #blanks(key: string): HTMLElementTagNameMap['kp-blank'][] {
    return [...this.querySelectorAll('kp-blank')].filter((blank) => blank.spec.key === key);
  }

  #done = (): void => {
    this.docked = false;
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
  };

  #pencil(action: 'keep' | 'rubOut'): void {
    if (action === 'rubOut') this.pencils = this.pencils.slice(0, -1);
    else if (this.answered !== undefined) this.pencils = [...this.pencils, this.answered].slice(-mostPencils);
  }
}
